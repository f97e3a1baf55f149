package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.cli.Table.Column;
import strickle.price.fair.FairAnswer;
import strickle.price.fair.FairBuild;
import strickle.price.fair.FairPiece;
import strickle.price.fair.Tightened;
import strickle.price.fair.Worth;
import strickle.supply.Purchase;
import strickle.supply.Shopping;
import strickle.supply.ShoppingList;

/** A fair's build as a page of text. */
final class FairText {

  private static final int WIDEST_NAME = 26;

  private final Book book;
  private final FairAnswer answer;
  private final FairBuild build;
  private final List<String> lines = new ArrayList<>();

  private FairText(FairAnswer answer) {
    this.book = answer.book();
    this.answer = answer;
    this.build = answer.build();
  }

  /** The page, with a newline behind each line. */
  static String of(FairAnswer answer) {
    FairText text = new FairText(answer);
    text.head();
    text.pieces();
    text.money();
    text.worths();
    text.plan();
    return String.join("\n", text.lines) + "\n";
  }

  private void head() {
    lines.addAll(
        Lines.wrap(
            book.fair(build.fair()).name()
                + ": what to bring when it opens "
                + Moments.full(build.opens())
                + ", in "
                + build.currency().getCode(),
            Lines.WIDEST));
    lines.add("");
  }

  private void pieces() {
    Table table =
        new Table(
            "  ",
            Column.left(WIDEST_NAME),
            Column.right(5, 6),
            Column.right(5, 6),
            Column.right(5, 6),
            Column.right(8, 9),
            Column.right(6, 8),
            Column.right(6, 8),
            Column.right(8, 9),
            Column.right(9, 10));
    table.row("piece", "bring", "stock", "make", "price", "sold", "left", "all sold", "earns");
    for (FairPiece piece : build.pieces()) {
      table.row(
          book.piece(piece.piece()).name(),
          "" + piece.bring(),
          "" + piece.stock(),
          "" + piece.make(),
          money(piece.price()),
          tenths(piece.sold()),
          tenths(piece.left()),
          piece.bring() == 0 ? "-" : tenths(piece.sellsOutPercent()) + " %",
          money(piece.profit()));
    }
    lines.addAll(table.lines());
    lines.addAll(
        Lines.paragraph(
            "  ",
            "  ",
            "Sold, left and earned are what happens on average; what is on hand costs nothing more,"
                + " what is made its material, wages and wear."));
    List<String> more =
        build.pieces().stream()
            .filter(piece -> piece.wanted() > piece.bring())
            .map(piece -> piece.wanted() + " x " + book.piece(piece.piece()).name())
            .toList();
    if (!more.isEmpty()) {
      String text = "Worth bringing if nothing limited it: " + String.join(", ", more) + ".";
      lines.addAll(Lines.paragraph("  ", "  ", text));
    }
  }

  private void money() {
    lines.add("");
    Table table = new Table("  ", Column.left(20), Column.left(70));
    table.row("the table costs", money(build.tableCost()));
    build.packs().ifPresent(packs -> table.row("packs to buy", money(packs) + budget()));
    table.row("earned on average", money(build.profit()));
    table.row("at most", atMost());
    lines.addAll(table.lines());
  }

  private String budget() {
    return build.budget().map(money -> " of the " + money(money) + " there are").orElse("");
  }

  private String atMost() {
    return build.profitAtMost().compareTo(build.profit()) == 0
        ? "nothing more, by forms, hours, materials and money"
        : money(build.profitAtMost()) + ", by forms, hours, materials and money before planning";
  }

  private void worths() {
    List<Worth> some =
        build.worths().stream().filter(worth -> money(worth.rate()).matches(".*[1-9].*")).toList();
    lines.add("");
    lines.add("What more would earn, before planning");
    Table table = new Table("  ", Column.left(40), Column.right(9, 10), Column.left(40));
    for (Worth worth : some) {
      table.row(what(worth), money(worth.gain()), "at the margin " + money(worth.rate()));
    }
    lines.addAll(some.isEmpty() ? List.of("  no single thing would earn more") : table.lines());
  }

  private String what(Worth worth) {
    return switch (worth.what()) {
      case HOUR -> "one more hour, its wage paid";
      case FORM -> "one more " + book.form(worth.of()).name();
      case MOULD -> "one more set of forms, " + book.mould(worth.of()).name();
      case MONEY -> "one more " + build.currency().getCode() + " for packs";
    };
  }

  private void plan() {
    lines.add("");
    for (Tightened one : bounding()) {
      String name = book.piece(one.piece()).name();
      lines.addAll(
          Lines.paragraph(
              "  ",
              "    ",
              "Of " + one.asked() + " x " + name + " a plan had " + one.atMost() + " in time."));
      one.because().forEach(why -> lines.addAll(Lines.paragraph("    ", "      ", why)));
    }
    lines.addAll(Lines.wrap(ready(), Lines.WIDEST));
    lines.addAll(Lines.wrap(others(), Lines.WIDEST));
    ShoppingList list = Shopping.of(book, answer.plan(), build.orderingFrom());
    long packs = list.materials().stream().mapToLong(Purchase::packs).sum();
    if (packs > 0) {
      lines.addAll(Lines.wrap(bought(packs, list), Lines.WIDEST));
    }
  }

  /** What a plan still had too little of when all was done, the last of each piece. */
  private List<Tightened> bounding() {
    Map<String, Tightened> last = new LinkedHashMap<>();
    for (Tightened one : build.tightened()) {
      boolean fewer =
          build.pieces().stream()
              .anyMatch(piece -> piece.piece().equals(one.piece()) && piece.bring() < one.asked());
      if (fewer) {
        last.put(one.piece(), one);
      }
    }
    return List.copyOf(last.values());
  }

  private String ready() {
    return build
        .ready()
        .map(at -> "The plan has it ready " + Moments.full(at) + ".")
        .orElse("Nothing is brought.");
  }

  private String others() {
    if (build.hoursLate().signum() == 0) {
      return "All other orders are on time.";
    }
    long late = answer.plan().totals().lateOrders();
    return (late == 1 ? "1 other order is" : late + " other orders are")
        + " late, by no more than without the fair.";
  }

  private String bought(long packs, ShoppingList list) {
    String waits =
        answer.plan().orderingFrom().isPresent()
            ? "nothing begins before they can be there"
            : "something settled begins before they can be there";
    return "It takes "
        + Words.count(packs, "pack")
        + " for "
        + money(list.cost())
        + ", ordered from "
        + Moments.full(list.now())
        + " on; "
        + waits
        + ".";
  }

  private String money(BigDecimal amount) {
    int decimals = build.currency().getDecimalPlaces();
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String tenths(BigDecimal number) {
    return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
