package strickle.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;
import strickle.json.AnswerFile;
import strickle.json.RoomAnswer;
import strickle.plan.Plan;
import strickle.safety.RoomAssumption;
import strickle.safety.RoomDay;
import strickle.safety.RoomDays;

/** {@code strickle room}: how fast a pour dries, and whether a coat may go on. */
@Command(
    name = "room",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says what the room does to a fresh pour (water leaving its face, which can crack it) and to"
          + " a coat (dew on the piece): for every climate of a book, for the days on which a plan"
          + " pours or coats, or without a book for an air that is given.",
      "Evaporation is an estimate that may be 40 %% off; 3 °C above the dew point is a rule of"
          + " thumb."
    },
    footer = {
      "",
      "Examples:",
      "  strickle room studio.json --plan week.json",
      "  strickle room demo --wind-km-h 10",
      "  strickle room --air-c 22 --humidity-percent 78",
      "  strickle room --air-c 80F --humidity-percent 50 --mix-c 87F --wind-km-h 12mph --units us"
    })
final class RoomCommand implements Runnable {

  private final Surroundings here;

  @ArgGroup(exclusive = false)
  private BookArgument argument;

  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Mixin private final RoomOptions options = new RoomOptions();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(names = "--json", description = "print the answer as JSON (strickle-room/1), metric")
  private boolean json;

  RoomCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    RoomWords words = new RoomWords(units.read(values).us());
    RoomAssumption assumption = options.assumption(values);
    mustBeOne();
    if (argument == null) {
      air(values, assumption, words);
    } else {
      values.done();
      room(argument.read(), assumption, words);
    }
  }

  private void mustBeOne() {
    String right = "a book, or " + RoomOptions.AIR + " and " + RoomOptions.HUMIDITY;
    if (argument != null && options.hasAir()) {
      throw new Faulty(List.of(new Fault("room", "a book and an air", right)));
    }
    if (argument == null && (present != null || !options.hasAir())) {
      String found = present != null ? "a plan without its book" : "neither a book nor an air";
      throw new Faulty(List.of(new Fault("room", found, right)));
    }
    if (argument == null && !options.missing().isEmpty()) {
      throw new Faulty(options.missing());
    }
  }

  private void room(Book book, RoomAssumption assumption, RoomWords words) {
    mustHaveClimate(book);
    Optional<Plan> plan = Optional.ofNullable(present).map(option -> option.read(book));
    List<LocalDate> dark = plan.map(one -> RoomDays.unknown(book, one)).orElse(List.of());
    List<RoomDay> days =
        plan.map(one -> RoomDays.of(book, one, assumption))
            .orElseGet(() -> RoomDays.of(book, assumption));
    double wind = assumption.windKmPerHour();
    here.out()
        .print(
            json
                ? AnswerFile.write(RoomAnswer.FORMAT, RoomAnswer.of(wind, days, dark))
                : page(book, days, dark, words, wind));
  }

  private static void mustHaveClimate(Book book) {
    if (book.studio().climate().isEmpty()) {
      String right = "at least one climate, or " + RoomOptions.AIR + " in place of a book";
      throw new Faulty(List.of(new Fault("$.studio.climate", "an empty list", right)));
    }
  }

  private static String page(
      Book book, List<RoomDay> days, List<LocalDate> dark, RoomWords words, double windKmPerHour) {
    List<String> lines = new ArrayList<>();
    String wind = windKmPerHour == 0 ? "in still air" : "wind " + words.wind(windKmPerHour);
    String title = book.studio().name() + ": what the room does to pours and coats, " + wind;
    lines.addAll(Lines.wrap(title, Lines.WIDEST));
    lines.add("");
    if (!days.isEmpty()) {
      lines.addAll(RoomText.table(days, words));
    } else if (dark.isEmpty()) {
      lines.add("There is nothing to pour or coat.");
    }
    RoomText.dark(dark).ifPresent(line -> lines.addAll(Lines.paragraph("  ", "    ", line)));
    lines.add("");
    lines.addAll(Lines.wrap(RoomText.NOTE, Lines.WIDEST));
    return String.join("\n", lines) + "\n";
  }

  private void air(Given values, RoomAssumption assumption, RoomWords words) {
    double airC = options.air(values);
    double percent = options.humidity(values);
    values.done();
    double concreteC = assumption.concreteC().orElse(airC);
    double wind = assumption.windKmPerHour();
    Evaporation rate = Evaporation.of(concreteC, airC, percent, wind);
    CoatingAir air = CoatingAir.of(airC, percent, assumption.surfaceC().orElse(airC));
    if (json) {
      here.out()
          .print(AnswerFile.write(RoomAnswer.FORMAT, RoomAnswer.ofAir(airC, percent, assumption)));
    } else {
      double least = Evaporation.windReaching(Evaporation.RAISED, concreteC, airC, percent);
      here.out().print(text(words, rate, least, air));
    }
  }

  private static String text(RoomWords words, Evaporation rate, double wind, CoatingAir air) {
    List<String> lines = new ArrayList<>();
    add(lines, "evaporation  ", words.estimate(rate) + ": " + words.advice(rate));
    if (0 < wind && wind <= Evaporation.MOST_WIND_KM_PER_HOUR) {
      String enough = "a wind of " + words.wind(wind) + " makes it ";
      add(lines, "             ", enough + words.limit(Evaporation.RAISED));
    }
    String margin = words.degrees(Math.abs(air.marginC()));
    String side = air.marginC() < 0 ? " below it: " : " above it: ";
    String dew = words.temperature(air.dewPointC()) + "; a piece of ";
    String piece = words.temperature(air.surfaceC()) + " is " + margin + side;
    add(lines, "dew point    ", dew + piece + words.advice(air));
    lines.add("");
    lines.addAll(Lines.wrap(RoomText.NOTE, Lines.WIDEST));
    return String.join("\n", lines) + "\n";
  }

  private static void add(List<String> lines, String label, String text) {
    lines.addAll(Lines.paragraph(label, "             ", text));
  }
}
