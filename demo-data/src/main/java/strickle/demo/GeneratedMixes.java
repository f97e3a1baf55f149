package strickle.demo;

import static strickle.demo.MaterialEntry.material;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Basis;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;

/** Draws the shelf of materials and one to five mixes of them. */
final class GeneratedMixes {

  private static final List<String> NAMES = List.of("ash", "clay", "moss", "ink", "straw");
  private static final List<String> SWATCHES =
      List.of("#b7b4ae", "#a8694f", "#6f7a58", "#3d4148", "#d3bd86");
  private static final List<String> PIGMENTS = List.of("black", "red", "yellow");
  private static final List<Basis> PIGMENT_BASES = List.of(Basis.DRY, Basis.CEMENT);

  private final Dice dice;

  GeneratedMixes(Dice dice) {
    this.dice = dice;
  }

  /** The same materials in every book, at other prices and stocks. */
  List<Material> materials() {
    return List.of(
        stocked(material("cement", "cement", "binder", "g").weighs(3.1).cement(100), 20000, 22),
        stocked(
            material("blend", "casting blend", "binder", "g").weighs(2.9).cement(45), 20000, 30),
        stocked(material("sand", "dried sand", "aggregate", "g").weighs(2.65).cement(0), 25000, 11),
        stocked(material("black", "black pigment", "pigment", "g").weighs(4.6), 1000, 16),
        stocked(material("red", "red pigment", "pigment", "g").weighs(5.0), 1000, 16),
        stocked(material("yellow", "yellow pigment", "pigment", "g").weighs(4.1), 1000, 16),
        stocked(material("release-oil", "release oil", "release", "g"), 500, 9),
        stocked(material("sealer", "sealer", "coating", "ml"), 1000, 31),
        stocked(material("felt", "felt pad", "hardware", "each"), 200, 12),
        stocked(material("box", "box", "packaging", "each"), 25, 19));
  }

  private Material stocked(MaterialEntry material, int pack, int aboutPrice) {
    int cents = aboutPrice * dice.from(80, 130);
    return material
        .pack(Integer.toString(pack), cents / 100 + "." + cents / 10 % 10 + cents % 10)
        .onHand(Integer.toString(pack * dice.from(0, 15) / 10), dice.from(1, 7));
  }

  /** Mixes that can be worked long enough to pour any of the moulds from once to six times. */
  List<Mix> mixes(List<Mould> moulds) {
    int longestPour = moulds.stream().mapToInt(Mould::pourMinutes).max().orElseThrow();
    List<Mix> mixes = new ArrayList<>();
    int count = dice.from(1, Math.min(NAMES.size(), 1 + moulds.size()));
    for (int i = 0; i < count; i++) {
      mixes.add(mix(NAMES.get(i), SWATCHES.get(i), longestPour));
    }
    return mixes;
  }

  private Mix mix(String name, String swatch, int longestPour) {
    MixEntry mix = MixEntry.mix(name, name, swatch);
    if (dice.chance(50)) {
      mix.dry("blend", 100).water(dice.tenths(140, 180), Basis.DRY);
    } else {
      mix.dry("cement", 100)
          .dry("sand", dice.from(60, 200))
          .water(dice.tenths(340, 420), Basis.CEMENT);
    }
    if (dice.chance(70)) {
      mix.pigment(dice.oneOf(PIGMENTS), dice.tenths(5, 40), dice.oneOf(PIGMENT_BASES));
    }
    if (dice.chance(40)) {
      mix.measured(dice.from(2050, 2300));
    }
    int working = longestPour * dice.from(1, 6) + dice.from(0, 5);
    return mix.air(dice.tenths(10, 40)).minutes(dice.from(8, 15), working, dice.from(4, 10));
  }
}
