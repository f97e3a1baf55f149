package strickle.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.book.Material;
import strickle.cli.Table.Column;
import strickle.supply.Purchase;
import strickle.supply.ShoppingList;
import strickle.supply.TooEarly;

/** A shopping list as a page of text. */
final class ShoppingText {

  private static final int WIDEST_NAME = 28;

  private final Book book;
  private final ShoppingList list;
  private final List<String> lines = new ArrayList<>();

  private ShoppingText(Book book, ShoppingList list) {
    this.book = book;
    this.list = list;
  }

  /** The page, with a newline behind each line. */
  static String of(Book book, ShoppingList list) {
    ShoppingText text = new ShoppingText(book, list);
    String head = ": what to buy for the plan, ordering from " + Moments.full(list.now()) + " on";
    text.lines.addAll(Lines.wrap(book.studio().name() + head, Lines.WIDEST));
    text.buy();
    text.enough();
    text.early();
    return String.join("\n", text.lines) + "\n";
  }

  private void buy() {
    lines.add("");
    List<Purchase> bought = list.materials().stream().filter(one -> one.packs() > 0).toList();
    if (bought.isEmpty()) {
      lines.add("Nothing: the stock is enough.");
      return;
    }
    lines.add("Buy");
    Table table =
        new Table(
            "  ",
            Column.left(WIDEST_NAME),
            Column.left(24),
            Column.right(7, 10),
            Column.left(16),
            Column.left(22));
    table.row("material", "packs", "cost", "order by", "runs out");
    for (Purchase one : bought) {
      table.row(
          name(one.material()),
          Words.count(one.packs(), "pack") + " of " + pack(one),
          money(one.cost()),
          one.orderBy().map(Moments::day).orElse(""),
          one.runsOut().map(Moments::full).orElse(""));
    }
    table.row("all together", "", money(list.cost()) + " " + list.currency().getCode());
    lines.addAll(table.lines());
  }

  private void enough() {
    if (list.materials().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Used and left");
    Table table = new Table("  ", Column.left(WIDEST_NAME), Column.right(10, 14), Column.left(50));
    for (Purchase one : list.materials()) {
      String unit = book.material(one.material()).unit();
      String left = "of " + plain(one.onHand()) + " in stock; " + plain(one.left()) + " left";
      table.row(
          name(one.material()),
          plain(one.needed()) + " " + unit,
          one.packs() > 0 ? left + " with what is bought" : left);
    }
    lines.addAll(table.lines());
  }

  private void early() {
    if (list.tooEarly().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Begins before its material can be there");
    for (TooEarly one : list.tooEarly()) {
      String missing = plain(one.missing()) + " " + book.material(one.material()).unit();
      String text =
          one.what()
              + " "
              + Moments.full(one.at())
              + ": "
              + missing
              + " of "
              + name(one.material())
              + " missing, which can be there "
              + Moments.day(one.arrives())
              + " at the earliest";
      lines.addAll(Lines.paragraph("  ", "    ", text));
    }
  }

  private String pack(Purchase one) {
    Material material = book.material(one.material());
    return plain(material.pack().quantity()) + " " + material.unit();
  }

  private String name(String material) {
    return book.material(material).name();
  }

  private String money(BigDecimal amount) {
    int decimals = list.currency().getDecimalPlaces();
    return amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
