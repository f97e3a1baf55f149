package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strickle.demo.Demo;
import strickle.demo.Generator;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.json.Meshes;

class DemoCommandTest {

  @TempDir Path folder;

  @Test
  void theBookOnStandardOutputIsTheGeneratedOne() {
    String out = Shell.run("demo", "--castings", "12", "--seed", "4").done().out();
    assertEquals(Generator.book(12, 4), BookFile.parse(out, Meshes.in(folder)));
  }

  @Test
  void theBookInAFileIsTheSameAndCanBePlanned() throws IOException {
    Path file = folder.resolve("made-up.json");
    assertEquals(
        "", Shell.run("demo", "--castings", "12", "--seed", "4", "--out", file).done().out());
    String out = Shell.run("demo", "--castings", "12", "--seed", "4").out();
    assertEquals(out, Files.readString(file));
    String check = Shell.run("check", file, "--from", "2027-03-01").done().out();
    assertTrue(check.contains("12 castings to pour"), check);
  }

  @Test
  void withoutASizeItIsTheBookOfTheDemoStudio() {
    String out = Shell.run("demo").done().out();
    assertEquals(Demo.book(Size.MEDIUM), BookFile.parse(out, Meshes.in(folder)));
  }

  @Test
  void aSeedWithoutASizeIsRefused() {
    Shell.Result result = Shell.run("demo", "--seed", "4");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("--castings"), result.err());
  }

  @Test
  void anotherSeedIsAnotherBook() {
    assertNotEquals(
        Shell.run("demo", "--castings", "12", "--seed", "4").out(),
        Shell.run("demo", "--castings", "12", "--seed", "-4").done().out());
  }
}
