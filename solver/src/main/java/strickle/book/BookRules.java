package strickle.book;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** What must hold between the parts of a book: ids are unique and whatever is named is there. */
final class BookRules {

  private final Book book;
  private final Check check;

  BookRules(Book book, Check check) {
    this.book = book;
    this.check = check;
  }

  /** Notes every fault, collection by collection. */
  void apply() {
    unique("people", book.people(), Person::id);
    unique("stations", book.stations(), Station::id);
    unique("forms", book.forms(), Form::id);
    unique("moulds", book.moulds(), Mould::id);
    each("moulds", book.moulds(), this::mould);
    unique("materials", book.materials(), Material::id);
    unique("mixes", book.mixes(), Mix::id);
    new MixRules(book, check).apply();
    unique("pieces", book.pieces(), Piece::id);
    each("pieces", book.pieces(), this::piece);
    unique("orders", book.orders(), Order::id);
    each("orders", book.orders(), this::order);
    unique("channels", book.channels(), Channel::id);
    unique("fairs", book.fairs(), Fair::id);
    each("fairs", book.fairs(), this::fair);
    each("pins", book.pins(), this::pin);
  }

  private <T> void unique(String collection, List<T> items, Function<T, String> id) {
    check.distinct("$." + collection, items, id, ".id");
  }

  private void mould(String path, Mould mould) {
    eachOf(
        path + ".forms", mould.forms(), (at, use) -> named(book.forms(), at + ".form", use.form()));
    uses(path + ".consumes", mould.consumes());
  }

  private void piece(String path, Piece piece) {
    named(book.moulds(), path + ".mould", piece.mould());
    named(book.mixes(), path + ".mix", piece.mix());
    eachOf(path + ".route", piece.route(), this::step);
    uses(path + ".packing", piece.packing());
    Register.of(book.moulds()).find(piece.mould()).ifPresent(m -> pourTakesTime(path, piece, m));
  }

  private void step(String path, Step step) {
    eachOf(path + ".by", step.by(), (at, id) -> named(book.people(), at, id));
    uses(path + ".consumes", step.consumes());
    step.restsOn()
        .ifPresent(rests -> named(book.stations(), path + ".restsOn.station", rests.station()));
  }

  private void pourTakesTime(String path, Piece piece, Mould mould) {
    Register.of(book.mixes())
        .find(piece.mix())
        .ifPresent(
            mix ->
                check.that(
                    mould.prepMinutes() + mix.mixMinutes() + mould.pourMinutes() > 0,
                    path + ".mould",
                    Show.text(mould.id()) + " with mix " + Show.text(mix.id()) + ", 0 minutes",
                    "at least 1 minute in the mould's prepMinutes and pourMinutes and the mix's"
                        + " mixMinutes together"));
  }

  private void order(String path, Order order) {
    eachOf(
        path + ".lines",
        order.lines(),
        (at, line) -> named(book.pieces(), at + ".piece", line.piece()));
  }

  private void fair(String path, Fair fair) {
    named(book.channels(), path + ".channel", fair.channel());
    eachOf(
        path + ".demand",
        fair.demand(),
        (at, demand) -> named(book.pieces(), at + ".piece", demand.piece()));
  }

  private void pin(String path, Pin pin) {
    named(book.pieces(), path + ".piece", pin.piece());
    named(book.people(), path + ".person", pin.person());
  }

  private void uses(String path, List<Use> uses) {
    eachOf(path, uses, (at, use) -> named(book.materials(), at + ".material", use.material()));
  }

  private void named(List<?> items, String path, String id) {
    Register.of(items).mustHave(check, path, id);
  }

  private static <T> void each(String collection, List<T> items, BiConsumer<String, T> rule) {
    eachOf("$." + collection, items, rule);
  }

  private static <T> void eachOf(String path, List<T> items, BiConsumer<String, T> rule) {
    for (int i = 0; i < items.size(); i++) {
      rule.accept(path + "[" + i + "]", items.get(i));
    }
  }
}
