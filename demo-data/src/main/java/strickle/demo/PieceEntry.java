package strickle.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;

/** Writes one piece: mould and mix, how many turn out well, its route, its price. */
final class PieceEntry {

  private final String id;
  private final String name;
  private final List<Use> packing = new ArrayList<>();
  private String mould;
  private String mix;
  private double goodPercent = 100;
  private int onHand;
  private int typicalRun = 1;
  private List<Step> route = List.of();
  private double finalDryHours;

  private PieceEntry(String id, String name) {
    this.id = id;
    this.name = name;
  }

  /** A piece; say next what it is cast from. */
  static PieceEntry piece(String id, String name) {
    return new PieceEntry(id, name);
  }

  /** The mould and the mix. */
  PieceEntry from(String itsMould, String itsMix) {
    mould = itsMould;
    mix = itsMix;
    return this;
  }

  /** The share that turns out well, and how many castings are usually poured as one lot. */
  PieceEntry good(double percent, int usualRun) {
    goodPercent = percent;
    typicalRun = usualRun;
    return this;
  }

  /** Finished ones on the shelf. */
  PieceEntry onHand(int count) {
    onHand = count;
    return this;
  }

  /** The steps after the mould. */
  PieceEntry route(StepEntry... steps) {
    route = Arrays.stream(steps).map(StepEntry::build).toList();
    return this;
  }

  /** Hours from the last step until a buyer can have it. */
  PieceEntry finalDry(double hours) {
    finalDryHours = hours;
    return this;
  }

  /** What it is packed in. */
  PieceEntry packed(String material, String quantity) {
    packing.add(Entries.use(material, quantity));
    return this;
  }

  /** Its list price, and what one left over after a fair is still worth. */
  Piece price(String price, String leftoverValue) {
    return new Piece(
        id,
        name,
        mould,
        mix,
        goodPercent,
        onHand,
        typicalRun,
        route,
        finalDryHours,
        packing,
        Optional.of(Entries.amount(price)),
        Optional.of(Entries.amount(leftoverValue)));
  }
}
