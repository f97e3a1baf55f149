package strickle.demo;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Dose;
import strickle.book.FormUse;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Part;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;
import strickle.plan.Lot;
import strickle.plan.Plan;
import strickle.plan.Run;
import strickle.plan.Task;
import strickle.plan.TaskKind;

/**
 * What the pieces of a book cost, in plain floating point, from nothing but the records of book and
 * plan: what castings use up is billed and divided by the good pieces that come of them.
 */
final class PlainCosts {

  private final Book book;

  PlainCosts(Book book) {
    this.book = book;
  }

  /** Good pieces of so many castings. */
  double good(Piece piece, int castings) {
    return castings * mould(piece).cavities() * piece.goodPercent() / 100;
  }

  /** Minutes of a good piece in its typical run. */
  double standardMinutes(Piece piece) {
    Mould mould = mould(piece);
    Mix mix = book.mix(piece.mix());
    int n = piece.typicalRun();
    double minutes = mix.mixMinutes() + mix.washMinutes();
    minutes += n * (mould.prepMinutes() + mould.pourMinutes() + mould.demouldMinutes());
    for (Step step : piece.route()) {
      minutes += step.setupMinutes() + n * mould.cavities() * step.minutesEach();
    }
    return minutes / good(piece, n);
  }

  /** Minutes of a good piece in a plan: its tasks, and its part of the pours by wet mass. */
  double plannedMinutes(Piece piece, Plan plan) {
    double minutes = 0;
    for (Lot lot : plan.lots()) {
      for (Run run : lot.runs()) {
        if (run.piece().equals(piece.id())) {
          minutes += inPour(lot, run, plan) + afterPour(run, plan);
        }
      }
    }
    return minutes / good(piece, castings(piece, plan));
  }

  /** Castings of a piece in a plan. */
  static int castings(Piece piece, Plan plan) {
    return plan.lots().stream()
        .flatMap(lot -> lot.runs().stream())
        .filter(run -> run.piece().equals(piece.id()))
        .mapToInt(Run::castings)
        .sum();
  }

  private double inPour(Lot lot, Run run, Plan plan) {
    double shared = 0;
    for (Task task : plan.tasks()) {
      if (task.kind() == TaskKind.POUR && task.lot().equals(lot.id())) {
        shared += task.minutes();
      }
    }
    double mass = 0;
    for (Run one : lot.runs()) {
      shared -= own(one);
      mass += mass(one);
    }
    return own(run) + shared * mass(run) / mass;
  }

  private double own(Run run) {
    Mould mould = mould(book.piece(run.piece()));
    return run.castings() * (double) (mould.prepMinutes() + mould.pourMinutes());
  }

  private double mass(Run run) {
    return run.castings() * castingGrams(book.piece(run.piece()));
  }

  private static double afterPour(Run run, Plan plan) {
    double minutes = 0;
    for (Task task : plan.tasks()) {
      if (task.run().isPresent() && task.run().get().equals(run.id())) {
        minutes += task.minutes();
      }
    }
    return minutes;
  }

  /** Material of a good piece. */
  double material(Piece piece) {
    double casting = 0;
    double wet = castingGrams(piece);
    Map<String, Double> masses = masses(book.mix(piece.mix()));
    double all = masses.values().stream().mapToDouble(m -> m).sum();
    for (Map.Entry<String, Double> one : masses.entrySet()) {
      if (!one.getKey().equals("water")) {
        casting += wet * one.getValue() / all * unitPrice(one.getKey());
      }
    }
    casting += bill(mould(piece).consumes());
    double route = 0;
    for (Step step : piece.route()) {
      route += bill(step.consumes());
    }
    double started = casting / mould(piece).cavities() + route;
    return started / (piece.goodPercent() / 100) + bill(piece.packing());
  }

  private double bill(List<Use> uses) {
    return uses.stream()
        .mapToDouble(use -> use.quantity().doubleValue() * unitPrice(use.material()))
        .sum();
  }

  private double unitPrice(String material) {
    Material one = book.material(material);
    return one.pack().price().doubleValue() / one.pack().quantity().doubleValue();
  }

  /** Masses of a mix on the scale of its parts, water among them. */
  private Map<String, Double> masses(Mix mix) {
    Map<String, Double> masses = new HashMap<>();
    double dry = 0;
    double cement = 0;
    for (Part part : mix.dry()) {
      masses.merge(part.material(), part.parts(), Double::sum);
      dry += part.parts();
      cement += part.parts() * book.material(part.material()).cementPercent().orElse(0) / 100;
    }
    for (Dose dose : mix.pigment()) {
      double of = dose.of() == Basis.CEMENT ? cement : dry;
      masses.merge(dose.material(), of * dose.percent() / 100, Double::sum);
    }
    double of = mix.water().of() == Basis.CEMENT ? cement : dry;
    masses.put("water", of * mix.water().percent() / 100);
    return masses;
  }

  private double castingGrams(Piece piece) {
    Mix mix = book.mix(piece.mix());
    Mould mould = mould(piece);
    double litres = mould.volumeMl().orElseThrow() / 1000 * (1 + mould.wastePercent() / 100);
    if (mix.wetDensityKgPerM3().isPresent()) {
      return litres * mix.wetDensityKgPerM3().getAsDouble();
    }
    double mass = 0;
    double volume = 0;
    for (Map.Entry<String, Double> one : masses(mix).entrySet()) {
      boolean isWater = one.getKey().equals("water");
      mass += one.getValue();
      volume +=
          one.getValue()
              / (isWater ? 1 : book.material(one.getKey()).relativeDensity().orElseThrow());
    }
    return litres * 1000 * mass * (1 - mix.airPercent() / 100) / volume;
  }

  /** What a good piece wears out of its forms. */
  double wear(Piece piece) {
    double casting = 0;
    for (FormUse use : mould(piece).forms()) {
      double each = book.form(use.form()).costEach().doubleValue();
      casting += use.count() * each / book.form(use.form()).lifeCastings();
    }
    return casting / mould(piece).cavities() / (piece.goodPercent() / 100);
  }

  /** Wages of so many minutes. */
  double labour(double minutes) {
    return minutes / 60 * book.studio().wagePerHour().doubleValue();
  }

  /** Overhead of so many minutes. */
  double overhead(double minutes) {
    double perHour =
        book.studio().overheadPerMonth().doubleValue()
            / book.studio().productiveHoursPerMonth().doubleValue();
    return minutes / 60 * perHour;
  }

  /** What a channel leaves of a list price. */
  static double net(Channel channel, double price) {
    double paid = paid(channel, price);
    double fee = paid * channel.percentFee().doubleValue() / 100;
    return paid - fee - channel.fixedFee().doubleValue();
  }

  /** What the buyer or the shop pays of a list price. */
  static double paid(Channel channel, double price) {
    return price - price * channel.discountPercent().doubleValue() / 100;
  }

  private Mould mould(Piece piece) {
    return book.mould(piece.mould());
  }
}
