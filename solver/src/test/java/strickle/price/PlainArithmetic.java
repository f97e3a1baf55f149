package strickle.price;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Basis;
import strickle.book.Book;
import strickle.book.Channel;
import strickle.book.Dose;
import strickle.book.FormUse;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Part;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;

/**
 * The cost of a piece once more, in plain floating point and from the other end: everything that
 * one whole lot of the typical run uses up is paid, and its good pieces share the bill. Shares
 * nothing with the code under test but the book's records.
 */
final class PlainArithmetic {

  final double minutes;
  final double material;
  final double labour;
  final double wear;
  final double overhead;

  PlainArithmetic(Book book, Piece piece) {
    Mould mould = only(book.moulds().stream().filter(m -> m.id().equals(piece.mould())).toList());
    Mix mix = only(book.mixes().stream().filter(m -> m.id().equals(piece.mix())).toList());
    int castings = piece.typicalRun();
    int started = castings * mould.cavities();
    double good = started * piece.goodPercent() / 100;
    minutes = lotMinutes(piece, mould, mix, castings, started) / good;
    material = materialBill(book, piece, mould, mix, castings, started, good) / good;
    wear = wearBill(book, mould) * castings / good;
    labour = minutes / 60 * book.studio().wagePerHour().doubleValue();
    overhead =
        minutes
            / 60
            * book.studio().overheadPerMonth().doubleValue()
            / book.studio().productiveHoursPerMonth().doubleValue();
  }

  double full() {
    return material + labour + wear + overhead;
  }

  static double net(Channel channel, double price) {
    double paid = price - price * percent(channel.discountPercent().doubleValue());
    double fees =
        paid * percent(channel.percentFee().doubleValue()) + channel.fixedFee().doubleValue();
    return paid - fees;
  }

  private static double lotMinutes(Piece piece, Mould mould, Mix mix, int castings, int started) {
    int minutes = mix.mixMinutes() + mix.washMinutes();
    for (int casting = 0; casting < castings; casting++) {
      minutes += mould.prepMinutes() + mould.pourMinutes() + mould.demouldMinutes();
    }
    for (Step step : piece.route()) {
      minutes += step.setupMinutes() + started * step.minutesEach();
    }
    return minutes;
  }

  private static double materialBill(
      Book book, Piece piece, Mould mould, Mix mix, int castings, int started, double good) {
    Map<String, Double> used = new HashMap<>();
    mixGrams(book, mould, mix).forEach((id, grams) -> used.put(id, grams * castings));
    mould.consumes().forEach(use -> add(used, use, castings));
    piece.route().forEach(step -> step.consumes().forEach(use -> add(used, use, started)));
    piece.packing().forEach(use -> add(used, use, good));
    return used.entrySet().stream().mapToDouble(e -> bill(book, e.getKey(), e.getValue())).sum();
  }

  private static void add(Map<String, Double> used, Use use, double times) {
    used.merge(use.material(), use.quantity().doubleValue() * times, Double::sum);
  }

  private static double bill(Book book, String id, double quantity) {
    var pack = only(book.materials().stream().filter(m -> m.id().equals(id)).toList()).pack();
    return quantity * pack.price().doubleValue() / pack.quantity().doubleValue();
  }

  /** Grams of each bought material in one casting; the mix is made for a litre, then scaled. */
  private static Map<String, Double> mixGrams(Book book, Mould mould, Mix mix) {
    double dry = mix.dry().stream().mapToDouble(Part::parts).sum();
    double cement =
        mix.dry().stream().mapToDouble(p -> p.parts() * percent(cementPercent(book, p))).sum();
    Map<String, Double> masses = new HashMap<>();
    mix.dry().forEach(part -> masses.merge(part.material(), part.parts(), Double::sum));
    double pigment = 0;
    for (Dose dose : mix.pigment()) {
      double mass = percent(dose.percent()) * (dose.of() == Basis.DRY ? dry : cement);
      masses.merge(dose.material(), mass, Double::sum);
      pigment += mass;
    }
    double water =
        percent(mix.water().percent())
            * (mix.water().of() == Basis.CEMENT
                ? cement
                : dry + (mix.water().of() == Basis.DRY ? 0 : pigment));
    double grams = castingGrams(book, mould, mix, masses, water);
    double wet = dry + pigment + water;
    masses.replaceAll((id, mass) -> mass / wet * grams);
    return masses;
  }

  private static double castingGrams(
      Book book, Mould mould, Mix mix, Map<String, Double> masses, double water) {
    double litres = mould.volumeMl().orElseThrow() / 1000 * (1 + percent(mould.wastePercent()));
    if (mix.wetDensityKgPerM3().isPresent()) {
      return litres * mix.wetDensityKgPerM3().getAsDouble();
    }
    double volume = water;
    double mass = water;
    for (Map.Entry<String, Double> each : masses.entrySet()) {
      volume += each.getValue() / relativeDensity(book, each.getKey());
      mass += each.getValue();
    }
    double airFree = 1 - percent(mix.airPercent());
    return litres * 1000 * mass / (volume / airFree);
  }

  private static double relativeDensity(Book book, String id) {
    return only(book.materials().stream().filter(m -> m.id().equals(id)).toList())
        .relativeDensity()
        .orElseThrow();
  }

  private static double cementPercent(Book book, Part part) {
    return only(book.materials().stream().filter(m -> m.id().equals(part.material())).toList())
        .cementPercent()
        .orElse(0);
  }

  private static double wearBill(Book book, Mould mould) {
    double bill = 0;
    for (FormUse use : mould.forms()) {
      var form = only(book.forms().stream().filter(f -> f.id().equals(use.form())).toList());
      bill += use.count() * form.costEach().doubleValue() / form.lifeCastings();
    }
    return bill;
  }

  private static double percent(double percent) {
    return percent / 100;
  }

  private static <T> T only(List<T> one) {
    if (one.size() != 1) {
      throw new AssertionError("expected one, found " + one);
    }
    return one.getFirst();
  }
}
