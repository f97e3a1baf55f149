package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: signals, streams and exit codes of the operating system. */
@Tag("slow")
class ProcessTest {

  private static final long PATIENCE_SECONDS = 60;

  private static final Path SIGNALS = Path.of("/proc/self/status");

  /** Signal 2 is the second bit of the mask, which is written in hexadecimal. */
  private static final Predicate<String> IGNORES_CTRL_C =
      Pattern.compile("SigIgn:\\s+[0-9a-f]*[2367abef]").asMatchPredicate();

  @TempDir Path folder;

  @Test
  void ctrlCWhilePlanningPrintsTheBestSoFarAndEndsWell() throws Exception {
    Path plan = folder.resolve("plan.json");
    Path loaded = folder.resolve("loaded");
    ProcessBuilder builder = builder("plan", "demo", "--seconds", "3600", "--out", plan.toString());
    builder.command().add(1, "-Xlog:class+load:file=" + loaded);
    heedsCtrlC(builder);
    Process process = captured(builder);
    waitForSearch(process, loaded);
    interrupt(process);
    ended(process, 0);
    String out = Files.readString(folder.resolve("out"));
    assertTrue(out.startsWith("Gannet Row Studio: plan from"), out);
    assertTrue(out.endsWith("The plan is written to " + plan + ".\n"), out);
    assertTrue(Files.readString(plan).endsWith("}\n"));
    String err = Files.readString(folder.resolve("err"));
    assertEquals("strickle: stopped early; this is the best plan found so far\n", err);
  }

  @Test
  void anEndIsTheExitCodeOfTheProcess() throws Exception {
    ended(start("check", "none.json"), 2);
    assertTrue(Files.readString(folder.resolve("err")).startsWith("$: found no file"));
    assertEquals("", Files.readString(folder.resolve("out")));
  }

  @Test
  void aReaderThatLeavesEarlyIsNoError() throws Exception {
    ProcessBuilder builder = builder("price", "demo", "--json");
    Process process = builder.redirectError(folder.resolve("err").toFile()).start();
    process.getInputStream().close();
    ended(process, 0);
    assertEquals("", Files.readString(folder.resolve("err")));
  }

  @Test
  void whatIsPrintedIsUtf8WhateverTheSystemsLanguage() throws Exception {
    String json = Shell.example("\"deep planter, slate\"", "\"tiefer Übertopf, Schiefer\"");
    Path book = Shell.file(folder, "book.json", json);
    ProcessBuilder builder = builder("price", book.toString());
    builder.command().addAll(1, List.of("-Dstdout.encoding=US-ASCII", "-Duser.language=de"));
    ended(captured(builder), 0);
    String out = Files.readString(folder.resolve("out"), UTF_8);
    assertTrue(out.contains("tiefer Übertopf"), out);
    assertTrue(out.contains("29.18"), out);
  }

  private Process start(String... arguments) throws IOException {
    return captured(builder(arguments));
  }

  private Process captured(ProcessBuilder builder) throws IOException {
    return builder
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile())
        .start();
  }

  private static ProcessBuilder builder(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add("strickle.cli.Main");
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  // Nothing that is printed tells when the search begins; its library, used by nothing before,
  // does.
  private static void waitForSearch(Process process, Path loaded) throws Exception {
    long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!Files.exists(loaded) || !Files.readString(loaded).contains("ai.timefold.")) {
      assertFalse(process.waitFor(100, TimeUnit.MILLISECONDS), "ended by itself");
      assertTrue(System.nanoTime() < deadline, "never began to search");
    }
  }

  /** What runs behind a shell's back is started deaf to it, and so would be what it starts. */
  private static void heedsCtrlC(ProcessBuilder builder) throws IOException {
    if (Files.exists(SIGNALS) && Files.readAllLines(SIGNALS).stream().anyMatch(IGNORES_CTRL_C)) {
      builder.command().addAll(0, List.of("env", "--default-signal=INT"));
    }
  }

  private static void interrupt(Process process) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/kill")) || Files.exists(Path.of("/usr/bin/kill")));
    new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
  }

  private static void ended(Process process, int code) throws InterruptedException {
    boolean ended = process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertTrue(ended, "did not end");
    assertEquals(code, process.exitValue());
  }
}
