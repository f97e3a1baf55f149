package strickle.json;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Piece;
import strickle.json.DayAnswer.Card;
import strickle.json.DayAnswer.Doing;
import strickle.json.DayAnswer.FormUnits;
import strickle.json.DayAnswer.ReadyRun;
import strickle.json.DayAnswer.RunPart;
import strickle.json.DayAnswer.ToWeigh;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.PlanWait;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;
import strickle.plan.Wait;

/** Reads off a plan what stands in a day of it. */
final class DayParts {

  /** The step to which a plan weighs, in grams. */
  private static final double STEP_GRAMS = 0.1;

  private final Book book;
  private final Plan plan;
  private final ZoneId zone;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, Run> runs = new HashMap<>();
  private final Map<String, Wait> sets = new HashMap<>();

  /** The parts of a plan of this book. */
  DayParts(Book book, Plan plan) {
    this.book = book;
    this.plan = plan;
    this.zone = book.studio().timeZone();
    for (Lot lot : plan.lots()) {
      lots.put(lot.id(), lot);
      lot.runs().forEach(run -> runs.put(run.id(), run));
    }
    plan.waits().stream()
        .filter(wait -> wait.kind() == PlanWait.SET)
        .forEach(wait -> sets.put(wait.run(), wait));
  }

  /** The studio's date at a moment. */
  LocalDate date(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toLocalDate();
  }

  /** What somebody does on a day, by time. */
  List<Doing> tasks(String person, LocalDate date) {
    List<Doing> doings = new ArrayList<>();
    for (Task task : plan.tasks()) {
      for (int i = 0; i < task.spells().size(); i++) {
        Spell spell = task.spells().get(i);
        if (task.person().equals(person) && date(spell.start()).equals(date)) {
          doings.add(doing(task, spell, i + 1));
        }
      }
    }
    doings.sort(Comparator.comparing(doing -> doing.start().toInstant()));
    return doings;
  }

  private Doing doing(Task task, Spell spell, int part) {
    boolean pour = task.kind() == TaskKind.POUR;
    Lot lot = lots.get(task.lot());
    List<Run> about = task.run().map(id -> List.of(runs.get(id))).orElse(lot.runs());
    return new Doing(
        task.id(),
        task.kind(),
        what(task, about.get(0)),
        task.lot(),
        task.run(),
        task.step(),
        spell.start(),
        spell.end(),
        part,
        task.spells().size(),
        task.begun(),
        task.done(),
        about.stream().map(this::part).toList(),
        pour ? Optional.of(card(lot)) : Optional.empty());
  }

  private String what(Task task, Run run) {
    return switch (task.kind()) {
      case POUR -> "pour " + book.mix(lots.get(task.lot()).mix()).name();
      case DEMOULD -> "demould";
      case STEP -> book.piece(run.piece()).route().get(task.step().orElseThrow() - 1).step();
    };
  }

  private RunPart part(Run run) {
    Piece piece = book.piece(run.piece());
    List<FormUnits> forms =
        run.forms().stream()
            .map(hold -> new FormUnits(hold.form(), book.form(hold.form()).name(), hold.units()))
            .toList();
    return new RunPart(
        run.id(),
        run.piece(),
        piece.name(),
        pieces(run),
        run.castings(),
        forms,
        run.ballastGramsEach(),
        Optional.ofNullable(sets.get(run.id())).map(Wait::to));
  }

  private int pieces(Run run) {
    return run.castings() * book.mould(book.piece(run.piece()).mould()).cavities();
  }

  private Card card(Lot lot) {
    Mix mix = book.mix(lot.mix());
    List<ToWeigh> weighOut =
        lot.weighOut().stream()
            .map(one -> new ToWeigh(one.material(), name(one.material()), one.grams()))
            .toList();
    return new Card(
        lot.id(), mix.id(), mix.name(), mix.workingMinutes(), STEP_GRAMS, weighOut, lot.wetGrams());
  }

  private String name(String material) {
    return material.equals(Material.WATER) ? material : book.material(material).name();
  }

  /** What becomes ready on a day, by time. */
  List<ReadyRun> ready(LocalDate date) {
    return plan.ready().stream()
        .filter(ready -> date(ready.at()).equals(date))
        .sorted(Comparator.comparing(ready -> ready.at().toInstant()))
        .map(
            ready -> {
              Run run = runs.get(ready.run());
              String name = book.piece(run.piece()).name();
              return new ReadyRun(run.id(), run.piece(), name, pieces(run), ready.at());
            })
        .toList();
  }
}
