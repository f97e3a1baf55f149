package strickle.price.fair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strickle.book.Book;
import strickle.book.Fair;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.json.BookFile;
import strickle.json.Meshes;
import strickle.price.fair.Programme.Level;

/** The limits of a fair, recomputed from the book by plain arithmetic. */
class FairLimitsTest {

  private static final OffsetDateTime FROM = OffsetDateTime.parse("2027-04-05T00:00-05:00");

  @Test
  void castingsTakeWhatTheBookSays() throws IOException {
    Book book = example();
    Fair fair = book.fair("spring-fair");
    FairRequest request = request("spring-fair", Optional.empty(), FROM);
    Means means = new Means(book, fair, request, Wares.of(book, fair), Map.of());
    List<Level> levels = means.programme().items().get(0);
    // The order of 4 less 1 in stock needs 3 / 0.92 = 3.26, so 4 castings; they leave 0.68 of one.
    assertEquals(4, levels.get(0).castings());
    assertEquals(0, levels.get(0).pieces());
    Level twelve = levels.stream().filter(one -> one.castings() == 12).findFirst().orElseThrow();
    // 12 x 0.92 + 1 - 4 = 8.04.
    assertEquals(8, twelve.pieces());
    // Each by itself, as there is one of each tub: 6 + 5 + 8 and 3 + 5, 5 + 4, 5 + 4 minutes.
    assertEquals(12 * (19 + 8 + 9 + 9), twelve.uses().get(0), 1e-9);
    assertEquals(List.of("tub-a", "tub-b"), means.forms());
    assertEquals(12, twelve.uses().get(1), 1e-9);
    assertEquals(12, twelve.uses().get(2), 1e-9);
    // Wet grams of a casting by the page on the files: 2494.3.
    assertEquals(12 * 2494.3, twelve.uses().get(3), 12 * 0.1);
    assertEquals(12 * 5, twelve.uses().get(4), 1e-9);
  }

  /** Net 61.844 and cost 5.7673 + 19.3297 + 0.1920 by the page on the files. */
  @Test
  void aPieceIsWorthItsNetItsLeftoverAndItsCost() throws IOException {
    Book book = example();
    Ware ware = Wares.of(book, book.fair("spring-fair")).get(0);
    assertEquals(61.844, ware.net(), 1e-9);
    assertEquals(25.289, ware.cost(), 1e-9);
    assertEquals(40, ware.leftover(), 1e-9);
    assertEquals(0, ware.stock());
    // P(D >= 8) = (11 - 7.5)^2 / (9 x 6).
    double sold = 3.5 * 3.5 / 54;
    assertEquals(61.844 * sold + 40 * (1 - sold) - 25.289, ware.worth(8), 1e-9);
  }

  @Test
  void theBuildOfASmallStudioIsTheBestOfAllThereAre() {
    Book book = Demo.book(Size.SMALL);
    for (Fair fair : book.fairs()) {
      FairRequest request = request(fair.id(), Optional.of(BigDecimal.valueOf(40)), Demo.start());
      Book others = FairOrders.without(book, fair);
      Means means = new Means(others, fair, request, Wares.of(others, fair), Map.of());
      Programme programme = means.programme();
      double best = bestOfAll(means, programme, 0, new ArrayList<>());
      assertEquals(best, programme.best().worth(), 1e-6, fair.id());
      assertTrue(best > 0, fair.id());
    }
  }

  private static double bestOfAll(Means means, Programme programme, int item, List<Level> chosen) {
    if (item == programme.items().size()) {
      return keeps(means, programme, chosen)
          ? chosen.stream().mapToDouble(Level::worth).sum()
          : Double.NEGATIVE_INFINITY;
    }
    double best = Double.NEGATIVE_INFINITY;
    for (Level level : programme.items().get(item)) {
      chosen.add(level);
      best = Math.max(best, bestOfAll(means, programme, item + 1, chosen));
      chosen.remove(chosen.size() - 1);
    }
    return best;
  }

  /** Forms, minutes with as few lots as can be, and packs bought whole, each by itself. */
  private static boolean keeps(Means means, Programme programme, List<Level> chosen) {
    int forms = means.forms().size();
    boolean keeps = true;
    for (int limit = 1; limit <= forms; limit++) {
      keeps &= used(chosen, limit) <= programme.limits().get(limit).most() + 1e-6;
    }
    double minutes = used(chosen, 0);
    for (int side = 0; side < programme.sides().size(); side++) {
      if (!programme.sides().get(side).whole()) {
        int grams = 1 + forms + 2 * side;
        List<Double> lot = programme.sides().get(side).uses();
        double lots =
            Math.max(
                used(chosen, grams) / -lot.get(grams),
                used(chosen, grams + 1) / -lot.get(grams + 1));
        minutes += lots * lot.get(0);
      }
    }
    keeps &= minutes <= programme.limits().get(0).most() + 1e-6;
    int money = means.moneyLimit().orElseThrow();
    double packs = means.leastPacks(new Programme.Chosen(chosen, List.of(), 0));
    return keeps && packs <= programme.limits().get(money).most() + 1e-6;
  }

  private static double used(List<Level> chosen, int limit) {
    return chosen.stream().mapToDouble(level -> level.uses().get(limit)).sum();
  }

  private static FairRequest request(
      String fair, Optional<BigDecimal> budget, OffsetDateTime from) {
    return new FairRequest(fair, budget, from, 100, 0);
  }

  private static Book example() throws IOException {
    try (InputStream in = FairLimitsTest.class.getResourceAsStream("/example-book.json")) {
      String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return BookFile.parse(json, Meshes.in(Path.of("")));
    }
  }
}
