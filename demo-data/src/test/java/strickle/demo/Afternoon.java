package strickle.demo;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Person;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/** Makes up what happens in a studio from a plan's beginning to some moment. */
final class Afternoon {

  private static final int DAY = 24 * 60;

  private final Book book;
  private final Plan plan;
  private final OffsetDateTime now;
  private final Random random;
  private final List<Happening> happened = new ArrayList<>();

  /** When what is done of a lot or a run was over. */
  private final Map<String, LocalDateTime> over = new HashMap<>();

  private Afternoon(Book book, Plan plan, OffsetDateTime now, Random random) {
    this.book = book;
    this.plan = plan;
    this.now = now;
    this.random = random;
  }

  /** Some moment at which not all of a plan is done. */
  static OffsetDateTime moment(Plan plan, OffsetDateTime earliest, Random random) {
    long minutes = ChronoUnit.MINUTES.between(earliest, plan.totals().lastReady());
    return earliest.plusMinutes(1 + random.nextInt((int) Math.max(2, minutes / 2)));
  }

  /**
   * What has happened by now.
   *
   * @param trouble in percent, how often somebody is away, something breaks or is lost
   */
  static List<Happening> of(Book book, Plan plan, OffsetDateTime now, int trouble, Random random) {
    Afternoon afternoon = new Afternoon(book, plan, now, random);
    plan.tasks().stream().sorted(Comparator.comparing(Task::start)).forEach(afternoon::perhaps);
    if (random.nextInt(100) < trouble) {
      afternoon.away();
    }
    if (random.nextInt(100) < trouble) {
      afternoon.broken();
    }
    if (random.nextInt(100) < trouble) {
      afternoon.scrapped();
    }
    return afternoon.happened;
  }

  private void perhaps(Task task) {
    String of = task.run().orElse(task.lot());
    if (task.done()) {
      over.put(of, task.end().toLocalDateTime());
      return;
    }
    LocalDateTime before = task.kind() == TaskKind.POUR ? null : before(task);
    boolean can = task.kind() == TaskKind.POUR || before != null;
    LocalDateTime planned = task.start().toLocalDateTime();
    boolean punctual = random.nextInt(3) == 0;
    LocalDateTime start = punctual ? planned : planned.plusMinutes(random.nextInt(100) - 15);
    start = before != null && start.isBefore(before) ? before : start;
    LocalDateTime local = now.toLocalDateTime();
    if (!can || random.nextInt(12) == 0 || start.isAfter(local)) {
      return;
    }
    long minutes =
        punctual ? task.minutes() : Math.max(1, task.minutes() * (60 + random.nextInt(90)) / 100);
    LocalDateTime end =
        punctual && task.spells().size() > 1
            ? task.end().toLocalDateTime()
            : start.plusMinutes(minutes);
    Optional<LocalDateTime> done = end.isAfter(local) ? Optional.empty() : Optional.of(end);
    done.ifPresent(at -> over.put(of, at));
    if (done.isEmpty()) {
      over.remove(of);
    }
    boolean other = random.nextInt(8) == 0;
    String person =
        other ? book.people().get(random.nextInt(book.people().size())).id() : task.person();
    happened.add(task(task, person, start, done));
  }

  /** When the task before one was over; null when it is not. */
  private LocalDateTime before(Task task) {
    if (task.kind() == TaskKind.DEMOULD) {
      return over.get(task.lot());
    }
    boolean told =
        happened.stream()
                .anyMatch(
                    one ->
                        one.isTask() && one.task().equals(previous(task)) && one.end().isPresent())
            || plan.tasks().stream().anyMatch(one -> one.id().equals(previous(task)) && one.done());
    return told ? over.get(task.run().orElseThrow()) : null;
  }

  private static String previous(Task task) {
    int step = task.step().orElseThrow();
    return task.run().orElseThrow() + (step == 1 ? "/demould" : "/step-" + (step - 1));
  }

  private void away() {
    Person person = book.people().get(random.nextInt(book.people().size()));
    LocalDateTime from = now.toLocalDateTime().plusMinutes(random.nextInt(2 * DAY));
    LocalDateTime to = from.plusMinutes(30 + random.nextInt(3 * DAY));
    happened.add(
        new Happening(
            HappeningKind.AWAY,
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.of(person.id()),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.of(from),
            Optional.of(to)));
    if (random.nextInt(3) == 0) {
      back(person, from.plusMinutes(random.nextInt(30)));
    }
  }

  private void back(Person person, LocalDateTime at) {
    happened.add(
        new Happening(
            HappeningKind.BACK,
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.of(person.id()),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.of(at),
            Optional.empty()));
  }

  /** The only one of a form breaks no more than for a while. */
  private void broken() {
    Form form = book.forms().get(random.nextInt(book.forms().size()));
    LocalDateTime whole = now.toLocalDateTime().plusMinutes(1 + random.nextInt(6 * DAY));
    boolean told = form.count() == 1 || random.nextInt(3) == 0;
    boolean mended = told && random.nextBoolean();
    thing(HappeningKind.BROKEN, form, now.toLocalDateTime(), told && !mended, whole);
    if (mended) {
      thing(HappeningKind.MENDED, form, whole, false, whole);
    }
  }

  private void thing(
      HappeningKind kind, Form form, LocalDateTime from, boolean until, LocalDateTime whole) {
    happened.add(
        new Happening(
            kind,
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.of(form.id()),
            OptionalInt.of(1),
            Optional.of(from),
            until ? Optional.of(whole) : Optional.empty()));
  }

  private void scrapped() {
    List<Run> runs =
        plan.lots().stream()
            .filter(lot -> isPoured(lot))
            .flatMap(lot -> lot.runs().stream())
            .filter(run -> run.scrapped() == 0)
            .toList();
    if (runs.isEmpty()) {
      return;
    }
    Run run = runs.get(random.nextInt(runs.size()));
    int pieces = run.castings() * book.mould(book.piece(run.piece()).mould()).cavities();
    int lost = random.nextBoolean() ? pieces : 1 + random.nextInt(pieces);
    happened.add(
        new Happening(
            HappeningKind.SCRAPPED,
            Optional.empty(),
            Optional.of(run.id()),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.of(lost),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private boolean isPoured(Lot lot) {
    return happened.stream().anyMatch(one -> one.lot().equals(Optional.of(lot.id())))
        || plan.tasks().stream()
            .anyMatch(task -> task.id().equals(lot.id() + "/pour") && task.isHistory());
  }

  private static Happening task(
      Task task, String person, LocalDateTime start, Optional<LocalDateTime> end) {
    HappeningKind kind =
        switch (task.kind()) {
          case POUR -> HappeningKind.POURED;
          case DEMOULD -> HappeningKind.DEMOULDED;
          case STEP -> HappeningKind.STEP;
        };
    return new Happening(
        kind,
        kind == HappeningKind.POURED ? Optional.of(task.lot()) : Optional.empty(),
        task.run(),
        task.step(),
        Optional.of(person),
        Optional.of(start),
        end,
        OptionalInt.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
