package strickle.plan.learn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;

/** A book with the numbers that lessons offer. */
public final class Revision {

  private final Book book;
  private final Map<String, BigDecimal> offers = new HashMap<>();

  private Revision(Book book, Lessons lessons) {
    this.book = book;
    lessons.offers().forEach(one -> offers.put(one.path(), one.offer().orElseThrow()));
  }

  /** The book with every offer taken over; nothing else in it changes. */
  public static Book of(Book book, Lessons lessons) {
    return new Revision(book, lessons).revised();
  }

  private Book revised() {
    return new Book(
        book.studio(),
        book.people(),
        book.stations(),
        book.forms(),
        book.moulds().stream().map(this::mould).toList(),
        book.materials(),
        book.mixes().stream().map(this::mix).toList(),
        book.pieces().stream().map(this::piece).toList(),
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }

  private int whole(String path, int now) {
    return offers.containsKey(path) ? offers.get(path).intValueExact() : now;
  }

  private double number(String path, double now) {
    return offers.containsKey(path) ? offers.get(path).doubleValue() : now;
  }

  private Mould mould(Mould mould) {
    String path = Paths.mould(book, mould.id());
    return new Mould(
        mould.id(),
        mould.name(),
        mould.forms(),
        mould.cavities(),
        mould.volumeMl(),
        mould.shape(),
        mould.mesh(),
        number(path + ".wastePercent", mould.wastePercent()),
        mould.prepMinutes(),
        mould.pourMinutes(),
        whole(path + ".demouldMinutes", mould.demouldMinutes()),
        mould.setHours(),
        mould.setAtMostHours(),
        mould.core(),
        mould.consumes());
  }

  private Mix mix(Mix mix) {
    return new Mix(
        mix.id(),
        mix.name(),
        mix.swatch(),
        mix.dry(),
        mix.pigment(),
        mix.water(),
        mix.airPercent(),
        mix.wetDensityKgPerM3(),
        whole(Paths.mix(book, mix.id()) + ".mixMinutes", mix.mixMinutes()),
        mix.workingMinutes(),
        mix.washMinutes());
  }

  private Piece piece(Piece piece) {
    String path = Paths.piece(book, piece.id());
    List<Step> route = new ArrayList<>();
    for (int i = 0; i < piece.route().size(); i++) {
      route.add(step(piece.route().get(i), path + ".route[" + i + "]"));
    }
    return new Piece(
        piece.id(),
        piece.name(),
        piece.mould(),
        piece.mix(),
        number(path + ".goodPercent", piece.goodPercent()),
        piece.onHand(),
        piece.typicalRun(),
        route,
        piece.finalDryHours(),
        piece.packing(),
        piece.price(),
        piece.leftoverValue());
  }

  private Step step(Step step, String path) {
    return new Step(
        step.step(),
        whole(path + ".setupMinutes", step.setupMinutes()),
        whole(path + ".minutesEach", step.minutesEach()),
        step.after(),
        step.by(),
        step.consumes(),
        step.restsOn());
  }
}
