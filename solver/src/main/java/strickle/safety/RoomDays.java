package strickle.safety;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import strickle.book.Book;
import strickle.book.Climate;
import strickle.cure.CoatingAir;
import strickle.cure.DewPoint;
import strickle.cure.Evaporation;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Spell;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/** What the room does to pours and coats, by the climate of the book. */
public final class RoomDays {

  private final Book book;
  private final RoomAssumption assumption;
  private final Map<String, Course> courses = new HashMap<>();

  private RoomDays(Book book, RoomAssumption assumption) {
    this.book = book;
    this.assumption = assumption;
  }

  /** Every climate of the book, as if something were poured and coated at its beginning. */
  public static List<RoomDay> of(Book book, RoomAssumption assumption) {
    RoomDays days = new RoomDays(book, assumption);
    return book.studio().climate().stream()
        .map(climate -> days.day(climate.from(), climate, true, true))
        .toList();
  }

  /**
   * The days on which a plan pours or coats; a day on which the climate changes between two such
   * tasks stands there once for each climate. Tasks before the first climate are left out; see
   * {@link #unknown}.
   */
  public static List<RoomDay> of(Book book, Plan plan, RoomAssumption assumption) {
    RoomDays days = new RoomDays(book, assumption);
    Map<LocalDateTime, RoomDay> found = new TreeMap<>();
    Map<String, Run> runs = runs(plan);
    for (Task task : plan.tasks()) {
      boolean pours = task.kind() == TaskKind.POUR;
      if (pours || days.coats(task, runs)) {
        days.add(task, pours, found);
      }
    }
    return List.copyOf(found.values());
  }

  /** The days on which a plan pours or coats before the book knows anything of the room. */
  public static List<LocalDate> unknown(Book book, Plan plan) {
    RoomDays days = new RoomDays(book, RoomAssumption.usual());
    Map<String, Run> runs = runs(plan);
    LocalDateTime known =
        book.studio().climate().stream().map(Climate::from).findFirst().orElse(LocalDateTime.MAX);
    return plan.tasks().stream()
        .filter(task -> task.kind() == TaskKind.POUR || days.coats(task, runs))
        .flatMap(task -> task.spells().stream())
        .map(spell -> days.local(spell.start()))
        .filter(start -> start.isBefore(known))
        .map(LocalDateTime::toLocalDate)
        .distinct()
        .sorted()
        .toList();
  }

  private static Map<String, Run> runs(Plan plan) {
    Map<String, Run> runs = new HashMap<>();
    for (Lot lot : plan.lots()) {
      lot.runs().forEach(run -> runs.put(run.id(), run));
    }
    return runs;
  }

  private boolean coats(Task task, Map<String, Run> runs) {
    if (task.kind() != TaskKind.STEP) {
      return false;
    }
    String piece = runs.get(task.run().orElseThrow()).piece();
    Course course = courses.computeIfAbsent(piece, id -> Course.of(book, book.piece(id), ""));
    Doing doing = course.at(task.step().orElseThrow() - 1);
    return doing.coats() || doing.does(Act.LEAF) || doing.does(Act.GLUE);
  }

  /** A task that is broken off goes on in the room of another day. */
  private void add(Task task, boolean pours, Map<LocalDateTime, RoomDay> found) {
    for (Spell spell : task.spells()) {
      LocalDateTime start = local(spell.start());
      LocalDateTime end = local(spell.end());
      for (Climate climate : book.studio().climate()) {
        LocalDateTime until = until(climate);
        if (climate.from().isBefore(end) && until.isAfter(start)) {
          LocalDateTime from = climate.from().isAfter(start) ? climate.from() : start;
          add(day(from, climate, pours, !pours), found);
        }
      }
    }
  }

  private void add(RoomDay day, Map<LocalDateTime, RoomDay> found) {
    LocalDate date = day.from().toLocalDate();
    LocalDateTime begin = date.atStartOfDay();
    LocalDateTime key = day.climate().from().isAfter(begin) ? day.climate().from() : begin;
    found.merge(key, day, this::together);
  }

  /** Two tasks under one climate on one day; the coldest piece counts for both. */
  private RoomDay together(RoomDay one, RoomDay other) {
    RoomDay first = other.from().isBefore(one.from()) ? other : one;
    return day(
        first.from(), one.climate(), one.pours() || other.pours(), one.coats() || other.coats());
  }

  private LocalDateTime local(OffsetDateTime moment) {
    return moment.atZoneSameInstant(book.studio().timeZone()).toLocalDateTime();
  }

  private LocalDateTime until(Climate climate) {
    List<Climate> all = book.studio().climate();
    int next = all.indexOf(climate) + 1;
    return next < all.size() ? all.get(next).from() : LocalDateTime.MAX;
  }

  private RoomDay day(LocalDateTime from, Climate climate, boolean pours, boolean coats) {
    return new RoomDay(from, climate, pours, coats, evaporation(climate), air(from, climate));
  }

  private Optional<Evaporation> evaporation(Climate climate) {
    double air = climate.temperatureC();
    boolean known =
        climate.humidityPercent().isPresent()
            && air >= Evaporation.COLDEST_C
            && air <= Evaporation.WARMEST_C;
    return known
        ? Optional.of(
            Evaporation.of(
                assumption.concreteC().orElse(air),
                air,
                climate.humidityPercent().getAsDouble(),
                assumption.windKmPerHour()))
        : Optional.empty();
  }

  private Optional<CoatingAir> air(LocalDateTime from, Climate climate) {
    OptionalDouble humidity = climate.humidityPercent();
    if (humidity.isEmpty()) {
      return Optional.empty();
    }
    double percent = Math.max(DewPoint.DRIEST_PERCENT, humidity.getAsDouble());
    double surface = assumption.surfaceC().orElse(coldest(from, climate));
    return Optional.of(CoatingAir.of(climate.temperatureC(), percent, surface));
  }

  private double coldest(LocalDateTime at, Climate climate) {
    LocalDateTime since = at.minusHours(RoomAssumption.COLD_KEPT_HOURS);
    List<Double> kept = new ArrayList<>(List.of(climate.temperatureC()));
    for (Climate before : book.studio().climate()) {
      if (!before.from().isAfter(at) && until(before).isAfter(since)) {
        kept.add(before.temperatureC());
      }
    }
    return kept.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
  }
}
