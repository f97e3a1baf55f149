package strickle.demo;

import static strickle.demo.MaterialEntry.material;
import static strickle.demo.MixEntry.mix;

import java.util.List;
import java.util.stream.Stream;
import strickle.book.Basis;
import strickle.book.Material;
import strickle.book.Mix;

/** What things are made of: the materials, and three mixes of them. */
final class DemoMixes {

  private DemoMixes() {}

  static List<Material> materials() {
    return Stream.of(poured(), used(), counted()).flatMap(List::stream).toList();
  }

  /** What is poured, in grams with its relative density. */
  private static List<Material> poured() {
    return List.of(
        material("grey-cement", "grey cement", "binder", "g")
            .weighs(3.12)
            .cement(100)
            .pack("20000", "16.50")
            .onHand("12000", 1),
        material("white-cement", "white cement", "binder", "g")
            .weighs(3.08)
            .cement(100)
            .pack("20000", "34.00")
            .onHand("9000", 4),
        material("fine-sand", "fine dried sand", "aggregate", "g")
            .weighs(2.65)
            .cement(0)
            .pack("25000", "12.00")
            .onHand("15000", 1),
        material("glass-fibre", "chopped glass fibre", "fibre", "g")
            .weighs(2.68)
            .cement(0)
            .pack("1000", "19.00")
            .onHand("400", 6),
        material("iron-black", "iron oxide black", "pigment", "g")
            .weighs(4.6)
            .pack("1000", "17.00")
            .onHand("350", 5),
        material("iron-red", "iron oxide red", "pigment", "g")
            .weighs(5.0)
            .pack("1000", "17.00")
            .onHand("500", 5));
  }

  /** What is brushed and rubbed on. */
  private static List<Material> used() {
    return List.of(
        material("release-wax", "release wax", "release", "g")
            .pack("500", "14.00")
            .onHand("180", 3),
        material("sealer", "water-based sealer", "coating", "ml")
            .pack("1000", "38.00")
            .onHand("600", 4),
        material("finish-wax", "finishing wax", "coating", "g")
            .pack("200", "19.00")
            .onHand("120", 4));
  }

  /** What is counted out: fittings and boxes. */
  private static List<Material> counted() {
    return List.of(
        material("brass-hook", "brass screw hook", "hardware", "each")
            .pack("50", "46.00")
            .onHand("20", 7),
        material("felt-pad", "felt pad", "hardware", "each").pack("200", "14.00").onHand("90", 2),
        material("box-s", "small box", "packaging", "each").pack("25", "13.00").onHand("12", 3),
        material("box-m", "medium box", "packaging", "each").pack("25", "21.00").onHand("10", 3),
        material("box-l", "large box", "packaging", "each").pack("10", "17.00").onHand("3", 3));
  }

  static List<Mix> mixes() {
    return List.of(basalt(), brick(), fog());
  }

  private static Mix basalt() {
    return mix("basalt", "basalt", "#4b4e52")
        .dry("grey-cement", 100)
        .dry("fine-sand", 100)
        .pigment("iron-black", 5, Basis.CEMENT)
        .water(37, Basis.CEMENT)
        .air(2)
        .minutes(12, 25, 8);
  }

  private static Mix brick() {
    return mix("brick", "brick", "#9c5a45")
        .dry("white-cement", 60)
        .dry("grey-cement", 40)
        .dry("fine-sand", 120)
        .pigment("iron-red", 2.5, Basis.DRY)
        .water(17, Basis.DRY_AND_PIGMENT)
        .air(2.5)
        .minutes(14, 28, 9);
  }

  private static Mix fog() {
    return mix("fog", "fog", "#c9cbc6")
        .dry("white-cement", 100)
        .dry("fine-sand", 110)
        .dry("glass-fibre", 1)
        .water(18, Basis.DRY)
        .air(3)
        .measured(2190)
        .minutes(12, 22, 7);
  }
}
