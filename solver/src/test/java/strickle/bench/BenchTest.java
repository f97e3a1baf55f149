package strickle.bench;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir private Path folder;

  @BeforeEach
  void problemsAndTheirBestKnown() throws IOException {
    Files.createDirectory(folder.resolve("deep"));
    Files.createDirectory(folder.resolve("optimum"));
    Files.writeString(folder.resolve("LAGS.SCH"), Tiny.LAGS);
    Files.writeString(folder.resolve("none.sch"), Tiny.LAGS_WITHOUT_SCHEDULE);
    optima("6..8", "unsat");
    Files.writeString(folder.resolve("tiny.sm"), Tiny.PROJECT);
    Files.writeString(folder.resolve("tiny.txt"), Tiny.ONE_MACHINE);
    Files.writeString(folder.resolve("tiny.best"), " 2\n 0\n");
    Files.writeString(folder.resolve("deep").resolve("one.jss"), Tiny.JOB_SHOP);
    Files.writeString(folder.resolve("deep").resolve("two.jss"), Tiny.JOB_SHOP);
    Files.writeString(
        folder.resolve("best.csv"), "instance,cpm_lb,lb,ub\ntiny.sm,6,8,8\none,1,7,7\ntwo,1,1,5\n");
  }

  private void optima(String lags, String none) throws IOException {
    Path table = folder.resolve("optimum").resolve("optimum.csv");
    Files.writeString(table, "problem,optimum\nlags.sch," + lags + "\nnone.sch," + none + "\n");
  }

  private int run(String... words) {
    try (PrintStream to = new PrintStream(out, true, UTF_8);
        PrintStream errors = new PrintStream(err, true, UTF_8)) {
      return Bench.run(to, errors, words);
    }
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  /** What was printed, with the time it took taken away. */
  private String printed() {
    return out.toString(UTF_8).replaceAll(" seconds=[0-9]+[.][0-9]{3}\n", "\n");
  }

  @Test
  void projectsAreMeasuredAgainstCriticalPathAndBestKnownAtEveryLimit() {
    assertEquals(
        0, run("rcpsp", file(""), "--best-known", file("best.csv"), "--schedules", "20,50"));
    // 9 is 50 % over 6 and 12.5 % over 8, which stands in the table as if it could be reached.
    assertEquals(
        """
        schedules=20 instances=1 avgOverCpm=50.000 avgOverBest=12.500 atBest=0
        schedules=50 instances=1 avgOverCpm=50.000 avgOverBest=12.500 atBest=0
        """,
        printed());
  }

  @Test
  void jobShopsAreToldOneByOneAndTogether() {
    run("jobshop", file("deep"), "--best-known", file("best.csv"), "--schedules", "50");
    // 7 is 40 % over 5, which stands in the table as if it could be reached.
    assertEquals(
        """
        schedules=50 instance=one found=7 best=7 overBest=0.000
        schedules=50 instance=two found=7 best=5 overBest=40.000
        schedules=50 instances=2 avgOverBest=20.000 atBest=1
        """,
        printed());
  }

  @Test
  void onlyFilesWhoseNamesMatchAreMeasured() {
    String[] words = {"--best-known", file("best.csv"), "--schedules", "50", "--only", "{t,x}w*"};
    run("jobshop", file(""), words[0], words[1], words[2], words[3], words[4], words[5]);
    assertEquals(
        """
        schedules=50 instance=two found=7 best=5 overBest=40.000
        schedules=50 instances=1 avgOverBest=40.000 atBest=0
        """,
        printed());
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 5})
  void whatIsFoundDependsOnTheSeedAndNotOnTheThreads(int threads) {
    List<Instance> shops =
        Stream.of("a", "b", "c")
            .map(name -> new Instance(name, JobShopFile.read(Lines.of(name, Tiny.FT06)), 55, 55))
            .toList();
    // So few that the proved best is not always found.
    List<Long> alone = found(new Runner(1, 7), shops);
    assertEquals(alone, found(new Runner(threads, 7), shops));
    assertEquals(1, alone.stream().distinct().count());
    long seeds =
        LongStream.range(0, 20).mapToObj(s -> found(new Runner(2, s), shops)).distinct().count();
    assertTrue(seeds > 1, "twenty seeds find the same");
  }

  private static List<Long> found(Runner runner, List<Instance> instances) {
    return runner.run(instances, 200, result -> {}).stream().map(Result::found).toList();
  }

  @Test
  void laggedProjectsAreMeasuredAndThoseWithoutAScheduleCounted() {
    assertEquals(0, run("rcpspmax", file(""), "--schedules", "50"));
    // 9 is 28.571 % over 7 and 12.5 % over 8, which stands in the table as if it could be reached.
    assertEquals(
        """
        schedules=50 instances=2 avgOverCpm=28.571 avgOverBest=12.500 atBest=0 solved=1/1 \
        proved=0 infeasible=1 claimed=0
        """,
        printed());
  }

  @Test
  void aLaggedProjectThatIsNotSolvedIsNotMeasured() throws IOException {
    optima("9", "10");
    assertEquals(0, run("rcpspmax", file(""), "--schedules", "50"));
    assertEquals(
        """
        schedules=50 instances=2 avgOverCpm=28.571 avgOverBest=0.000 atBest=1 solved=1/2 \
        proved=2 infeasible=0 claimed=0
        """,
        printed());
  }

  @Test
  void aScheduleWhereThereIsNoneIsAnError() throws IOException {
    optima("unsat", "unsat");
    assertEquals(1, run("rcpspmax", file(""), "--schedules", "50"));
    String error = "bench: LAGS.SCH: found 9, where it is proved that there is no schedule\n";
    assertEquals(error, err.toString(UTF_8));
  }

  @Test
  void tardinessIsMeasuredWhereTheBestIsAboveZero() {
    run("tardiness", file("tiny.txt"), "--best-known", file("tiny.best"), "--schedules", "50");
    // 3 found, as worked out by hand, and 2 stands in the file.
    assertEquals(
        "schedules=50 instances=2 optimal=1/2 avgOverBest=50.000 avgOf=1 zeroMissed=0\n",
        printed());
  }

  @Test
  void aResultBelowAProvedBoundIsAnError() throws IOException {
    Files.writeString(folder.resolve("best.csv"), "instance,cpm_lb,lb,ub\ntiny.sm,6,10,10\n");
    assertEquals(1, run("rcpsp", file(""), "--best-known", file("best.csv"), "--schedules", "9"));
    String error = "bench: tiny.sm: found 9, which is below the proved bound 10\n";
    assertEquals(error, err.toString(UTF_8));
  }

  @Test
  void everythingWrongWithTheCommandLineIsToldAtOnce() {
    assertEquals(2, run("rcpsp", "--schedules", "5,x", "--seed", "1.5", "--fast", "--threads"));
    assertEquals(
        """
        bench: --fast: found an option that is not known; right would be --best-known, --only, \
        --schedules, --seed, --threads
        bench: --threads: found nothing after it; right would be its value
        bench: DIR: found nothing; right would be just one
        bench: --best-known: found nothing; right would be a value
        bench: --schedules: found "x"; right would be a whole number from 1 to 2147483647
        bench: --seed: found "1.5"; right would be a whole number from \
        -9223372036854775808 to 9223372036854775807
        """,
        err.toString(UTF_8));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "measure",
        "rcpsp nowhere --best-known {}/best.csv --schedules 9",
        "rcpsp {} --best-known nowhere --schedules 9",
        "rcpsp {} --best-known {} --schedules 9",
        "rcpsp {}/deep --best-known {}/best.csv --schedules 9",
        "rcpsp {} --best-known {}/best.csv --schedules 9 --only [",
        "rcpsp {} --best-known {}/best.csv --schedules 9 --only *_1.sm",
        "rcpsp {} --best-known {}/best.csv --schedules 0",
        "rcpsp {} --best-known {}/best.csv --schedules 9,",
        "rcpsp {} --schedules 9 --best-known --seed 5",
        "rcpsp {} {} --best-known {}/best.csv --schedules 9",
        "rcpsp {} --best-known {}/best.csv --schedules 9 --schedules 10",
        "rcpspmax {}/deep --schedules 9",
        "rcpspmax {} --schedules 9 --best-known {}/best.csv",
        "rcpspmax {} --only *.sm --schedules 9",
        "tardiness {}/tiny.txt --best-known {}/tiny.best --schedules 9 --only *",
        "tardiness {}/tiny.txt --best-known {}/best.csv --schedules 9",
        "weeks --castings 2001 --seconds 1",
        "weeks --castings 10",
        "weeks all --castings 10 --seconds 1",
        "weeks --castings 10 --seconds 1 --exact 0",
      })
  void whatIsWrongIsToldInOneLine(String line) {
    String words = line.replace("{}", folder.toString());
    assertEquals(2, run(Lines.cells(words, " ")));
    assertEquals("", printed());
    assertEquals(1, err.toString(UTF_8).lines().count(), () -> err.toString(UTF_8));
  }

  @Test
  void helpSaysWhatThereIs() {
    assertEquals(0, run("--help"));
    assertEquals(Help.TEXT, out.toString(UTF_8));
  }
}
