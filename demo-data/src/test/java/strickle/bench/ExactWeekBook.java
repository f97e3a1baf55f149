package strickle.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strickle.book.Book;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.SpecialDay;
import strickle.book.Step;
import strickle.book.WaitKind;
import strickle.book.Window;
import strickle.mix.CastingMass;
import strickle.mix.Recipe;
import strickle.plan.Needs;

/** Reads the figures of an exact week from a book, by the rules of formats.md alone. */
final class ExactWeekBook {

  private static final double MICROGRAMS = 1e6;
  private static final double TOLERANCE_HOURS = 1e-9;

  /** By how much a lot may exceed the studio's limit for rounding's sake. */
  private static final double TOLERANCE_GRAMS = 1e-6;

  private final Book book;
  private final List<Integer> everybody;

  private ExactWeekBook(Book book) {
    this.book = book;
    this.everybody = IntStream.range(0, book.people().size()).boxed().toList();
  }

  /** Every piece of which castings are needed, in the order of the book. */
  static List<ExactWeekKind> kinds(Book book) {
    Needs needs = Needs.of(book);
    ExactWeekBook reader = new ExactWeekBook(book);
    return book.pieces().stream()
        .filter(piece -> needs.castings(piece.id()) > 0)
        .map(piece -> reader.kind(piece, needs.castings(piece.id())))
        .toList();
  }

  /** The studio's limit for a lot; half a microgram is allowed for rounding each casting. */
  static long limitMicrograms(Book book, int castings) {
    double limit = book.studio().batchLimitGrams() + TOLERANCE_GRAMS;
    return (long) Math.floor(limit * MICROGRAMS + castings / 2.0);
  }

  /** Wet mix of one casting. */
  static double grams(Book book, Piece piece) {
    Recipe recipe = Recipe.of(book.mix(piece.mix()), book::material);
    return CastingMass.wetGrams(book.mould(piece.mould()), recipe);
  }

  private ExactWeekKind kind(Piece piece, int castings) {
    Mould mould = book.mould(piece.mould());
    Mix mix = book.mix(piece.mix());
    long micrograms = Math.round(grams(book, piece) * MICROGRAMS);
    Map<String, Integer> forms = new LinkedHashMap<>();
    for (FormUse use : mould.forms()) {
      forms.merge(use.form(), use.count(), Integer::sum);
    }
    List<ExactWeekKind.Stage> stages = stages(piece, mould);
    int most = castings;
    while (!fits(most, mould, mix, micrograms, forms, stages)) {
      most--;
    }
    int tail = ExactWeekAges.wallMinutes(piece.finalDryHours());
    return new ExactWeekKind(piece, mould, mix, castings, most, micrograms, forms, stages, tail);
  }

  /** Whether so many castings can be one run; what no lone casting can is not for a plan to say. */
  private boolean fits(
      int castings,
      Mould mould,
      Mix mix,
      long micrograms,
      Map<String, Integer> forms,
      List<ExactWeekKind.Stage> stages) {
    int fill = castings * (mould.prepMinutes() + mould.pourMinutes());
    return castings * mould.pourMinutes() <= mix.workingMinutes()
        && castings * micrograms <= limitMicrograms(book, castings)
        && mix.mixMinutes() + mix.washMinutes() + fill <= longestWindow()
        && forms.entrySet().stream().allMatch(f -> castings * f.getValue() <= units(f.getKey()))
        && stages.stream()
            .flatMap(stage -> stage.rests().stream())
            .allMatch(rest -> castings * rest.placesEach() <= places(rest.station()));
  }

  private int units(String form) {
    return book.forms().stream().filter(f -> f.id().equals(form)).findFirst().orElseThrow().count();
  }

  private int places(String station) {
    return book.stations().stream()
        .filter(s -> s.id().equals(station))
        .findFirst()
        .orElseThrow()
        .places();
  }

  private int longestWindow() {
    return book.people().stream()
        .flatMap(
            person ->
                Stream.concat(
                    person.hours().values().stream(),
                    person.exceptions().stream().map(SpecialDay::hours)))
        .flatMap(List::stream)
        .mapToInt(Window::minutes)
        .max()
        .orElse(0);
  }

  private List<ExactWeekKind.Stage> stages(Piece piece, Mould mould) {
    List<ExactWeekKind.Stage> stages = new ArrayList<>();
    stages.add(
        new ExactWeekKind.Stage(
            0,
            mould.demouldMinutes(),
            everybody,
            true,
            mould.setHours(),
            atMost(mould.setAtMostHours()),
            Optional.empty()));
    piece.route().forEach(step -> stages.add(stage(step, mould.cavities())));
    return stages;
  }

  private ExactWeekKind.Stage stage(Step step, int cavities) {
    List<String> ids = book.people().stream().map(Person::id).toList();
    return new ExactWeekKind.Stage(
        step.setupMinutes(),
        step.minutesEach() * cavities,
        step.by().isEmpty() ? everybody : step.by().stream().map(ids::indexOf).distinct().toList(),
        step.after().kind() == WaitKind.CURE,
        step.after().hours(),
        atMost(step.after().atMostHours()),
        step.restsOn()
            .map(rest -> new ExactWeekKind.Rest(rest.station(), rest.placesEach() * cavities)));
  }

  private static OptionalInt atMost(OptionalDouble hours) {
    return hours.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.floor((hours.getAsDouble() + TOLERANCE_HOURS) * 60));
  }
}
