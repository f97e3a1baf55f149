package strickle.plan.audit;

import static strickle.plan.audit.Reading.BOOK;
import static strickle.plan.audit.Reading.assertBreaks;
import static strickle.plan.audit.Reading.assertValid;
import static strickle.plan.audit.Reading.sample;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strickle.book.Altered;
import strickle.book.Book;
import strickle.plan.Weighed;

/**
 * What a lot is mixed from and what lies on its cores. Of 2494.3 g the mix takes 1937.320 g of
 * white, 58.120 g of black and 498.860 g of water.
 */
class WeighOutRuleTest {

  @Test
  void aWeightIsRightWithinATenthOfAGram() {
    assertValid(BOOK, weighed(white(1937.4), black(58.1), water(498.8)));
    assertBreaks(0, "lot L1", BOOK, weighed(white(1937.4), black(58.2), water(498.7)));
  }

  @Test
  void theWeightsAddUpToTheLot() {
    assertBreaks(0, "lot L1", BOOK, weighed(white(1937.3), black(58.1), water(498.8)));
  }

  @Test
  void everyMaterialOfTheMixIsWeighedOut() {
    assertBreaks(0, BOOK, weighed(white(1937.3), water(557.0)));
    assertBreaks(0, BOOK, weighed(white(2436.2), black(58.1)));
  }

  @Test
  void nothingIsWeighedOutThatTheMixDoesNotTake() {
    assertBreaks(0, "lot L1", BOOK, weighed(white(1937.3), black(58.1), water(498.9), sealer(0)));
  }

  @Test
  void noMaterialIsWeighedOutTwice() {
    assertBreaks(0, "lot L1", BOOK, weighed(white(1937.3), black(58.1), water(498.9), water(0)));
  }

  @Test
  void weightsAreGivenToATenthOfAGram() {
    assertBreaks(0, BOOK, weighed(white(1937.35), black(58.1), water(498.85)));
  }

  @Test
  void aLotWeighsWhatItsCastingsTakeToATenthOfAGram() {
    assertValid(BOOK, sample());
    assertBreaks(0, "lot L1", BOOK, wet(2494.2, 1937.3, 498.8));
    assertBreaks(0, "lot L1", BOOK, wet(2494.4, 1937.4, 498.9));
  }

  @Test
  void aLotOfTwoCastingsWeighsTwiceAsMuch() {
    PlanDraft draft = TwoAtOnce.asOneRun().lot("L1", lot -> Altered.of(lot, "wetGrams", 2494.3));
    assertBreaks(0, Books.withTwoTubs(), draft);
  }

  @Test
  void ballastIsTheNearestWholeGram() {
    // (2.0723518 g/ml x 2600 ml − 140 g) x 1.5 = 7872.17 g.
    assertBreaks(0, "run L1-1", BOOK, ballast(OptionalLong.of(7873)));
    assertBreaks(0, "run L1-1", BOOK, ballast(OptionalLong.of(7871)));
  }

  @Test
  void aCoreThatFloatsIsGivenItsBallast() {
    assertBreaks(0, "run L1-1", BOOK, ballast(OptionalLong.empty()));
  }

  @Test
  void aMouldWithoutACoreIsGivenNone() {
    Book book = Books.mould("core", Optional.empty());
    assertBreaks(0, book, sample());
    PlanDraft none = sample();
    for (String lot : List.of("L1", "L2", "L3", "L4")) {
      none.run(lot, run -> Altered.of(run, "ballastGramsEach", OptionalLong.empty()));
    }
    assertValid(book, none);
  }

  private static PlanDraft weighed(Weighed... weighOut) {
    return sample().lot("L1", lot -> Altered.of(lot, "weighOut", Arrays.asList(weighOut)));
  }

  private static PlanDraft wet(double grams, double white, double water) {
    return weighed(white(white), black(58.1), water(water))
        .lot("L1", lot -> Altered.of(lot, "wetGrams", grams));
  }

  private static PlanDraft ballast(OptionalLong grams) {
    return sample().run("L1", run -> Altered.of(run, "ballastGramsEach", grams));
  }

  private static Weighed white(double grams) {
    return new Weighed("white-blend", grams);
  }

  private static Weighed black(double grams) {
    return new Weighed("iron-black", grams);
  }

  private static Weighed water(double grams) {
    return new Weighed("water", grams);
  }

  private static Weighed sealer(double grams) {
    return new Weighed("sealer", grams);
  }
}
