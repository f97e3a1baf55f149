package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.json.BookFile;
import strickle.json.PlanFile;
import strickle.json.WhatIfFile;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.whatif.Answer;
import strickle.plan.whatif.Change;
import strickle.plan.whatif.ChangeText;
import strickle.plan.whatif.Ideas;
import strickle.plan.whatif.Together;
import strickle.plan.whatif.Tried;
import strickle.plan.whatif.WhatIf;

/** {@code strickle what-if}: tries changes of the studio on its present plan. */
@Command(
    name = "what-if",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Tries on the present plan what the reasons of late orders name, and what one more of each"
          + " contended form, an opening window, a second pair of hands for a day, a warmer room, a"
          + " larger batch limit or more places would bring; says what happens to lateness,"
          + " handwork and the last piece, and what it costs.",
      "While it tries, Ctrl-C ends it and shows the best so far."
    },
    footer = {
      "",
      "Examples:",
      "  strickle what-if studio.json --plan week.json",
      "  strickle what-if studio.json --plan week.json --try form:tub-a+1",
      "  strickle what-if studio.json --plan week.json --try helper:2027-04-10 --try room:20",
      "  strickle what-if studio.json --plan week.json --try hours:ana:2027-04-10T09:00-12:00"
          + " --out new.json --book-out new-studio.json"
    })
final class WhatIfCommand implements Runnable {

  private static final String TRY = "--try";

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();
  @Mixin private final PlanOption present = new PlanOption();
  @Mixin private final WhatIfEffort efforts = new WhatIfEffort();

  @Option(
      names = TRY,
      paramLabel = "CHANGE",
      description = {
        "try this and nothing else: form:ID+N, hours:ID:DATETIME-TIME, helper:DATE or"
            + " helper:DATETIME-TIME (does what anybody may do), room:+N by so many degrees,"
            + " room:N to so many, batch:GRAMS, places:ID+N; several are tried one by one and all"
            + " together"
      })
  private List<String> tries = new ArrayList<>();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "where the search's chance begins, any whole number; 0 when left out")
  private String seed;

  @Option(names = "--json", description = "print the answer as JSON (strickle-what-if/1)")
  private boolean json;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "write the plan with what was tried, all together, to this file as JSON")
  private String out;

  @Option(
      names = "--book-out",
      paramLabel = "FILE",
      description = "write the book with what was tried, all together, to this file")
  private String bookOut;

  WhatIfCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<Effort> effort = efforts.read(values);
    long chance = values.whole("--seed", seed, Long.MIN_VALUE, Long.MAX_VALUE).orElse(0L);
    values.must(out == null || !tries.isEmpty(), "--out", out, "--out beside --try");
    values.must(bookOut == null || !tries.isEmpty(), "--book-out", bookOut, "it beside --try");
    List<Change> changes = changes(values);
    values.done();
    Book book = argument.read();
    Plan plan = present.read(book);
    Optional<OutFile> planFile = file("--out", out);
    Optional<OutFile> bookFile = file("--book-out", bookOut);
    planFile.ifPresent(one -> bookFile.ifPresent(other -> other.mustNotBe(one)));
    List<Change> tried = tries.isEmpty() ? Ideas.of(book, plan) : changes;
    Answer answer = answer(book, plan, tried, effort, chance);
    tell(book, answer, planFile, bookFile);
  }

  /** Each change by itself and, when there are several, all of them together. */
  private List<Change> changes(Given values) {
    List<Change> changes = new ArrayList<>();
    for (String text : tries) {
      try {
        changes.add(ChangeText.read(text));
      } catch (Faulty faulty) {
        values.must(false, TRY, text, faulty.faults().get(0).right());
      }
    }
    if (changes.size() > 1) {
      changes.add(new Together(changes));
    }
    return changes;
  }

  private Optional<OutFile> file(String option, String given) {
    Optional<OutFile> file = Optional.ofNullable(given).map(path -> OutFile.at(option, path));
    file.ifPresent(one -> argument.file().ifPresent(book -> one.mustNotBe(book, "book")));
    file.ifPresent(one -> one.mustNotBe(present.file(), "plan"));
    return file;
  }

  private Answer answer(
      Book book, Plan plan, List<Change> changes, Optional<Effort> effort, long chance) {
    ProgressLine line = new ProgressLine(here.err());
    WhatIf whatIf = ready(book, plan, changes, effort, chance, listener(line, changes));
    here.interruption().arm(whatIf::stop);
    try {
      Answer answer = whatIf.run();
      answer.tried().forEach(tried -> Audited.plan(tried.book(), tried.plan()));
      Audited.plan(book, answer.alone());
      return tries.isEmpty() ? answer.withoutNeedless() : answer;
    } finally {
      line.clear();
      here.interruption().disarm();
      if (here.interruption().came()) {
        here.err().println("strickle: stopped early; this is the best found so far");
      }
    }
  }

  private static WhatIf ready(
      Book book,
      Plan plan,
      List<Change> changes,
      Optional<Effort> effort,
      long chance,
      IntConsumer listener) {
    try {
      return WhatIf.of(book, plan, changes, effort, chance, listener);
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(WhatIfCommand::named).distinct().toList());
    }
  }

  private static Fault named(Fault fault) {
    String path = fault.path().startsWith(".changes") ? TRY : "--plan";
    return new Fault(path, fault.found(), fault.right());
  }

  private IntConsumer listener(ProgressLine line, List<Change> changes) {
    String all = WhatIf.searches(changes) + " searches";
    return here.terminal().getAsBoolean()
        ? done -> line.tell("trying… " + done + " of " + all)
        : done -> {};
  }

  // What cannot be written is shown all the same.
  private void tell(
      Book book, Answer answer, Optional<OutFile> planFile, Optional<OutFile> bookFile) {
    try {
      planFile.ifPresent(file -> file.write(PlanFile.write(all(answer).plan())));
      bookFile.ifPresent(file -> file.write(BookFile.write(all(answer).book())));
    } finally {
      here.out().print(json ? WhatIfFile.write(answer) : WhatIfText.of(book, answer));
    }
    if (!json) {
      planFile.ifPresent(
          file -> here.out().print("\nThe plan is written to " + file.text() + ".\n"));
      bookFile.ifPresent(
          file -> here.out().print("\nThe book is written to " + file.text() + ".\n"));
    }
  }

  /** What was tried last on the command line: the only change, or all of them together. */
  private static Tried all(Answer answer) {
    return answer.tried().stream()
        .filter(tried -> answer.tried().size() == 1 || tried.change() instanceof Together)
        .findFirst()
        .orElseThrow();
  }
}
