package strickle.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import strickle.shop.Published;
import strickle.shop.Shop;

/**
 * Reads problems of one machine from one file, into shops whose lateness is the weighted tardiness:
 * for each problem the minutes of all its jobs, then their weights, then their due dates, however
 * they are spread over lines.
 *
 * <p>Source: the OR-Library, files wt40, wt50 and wt100: H. A. J. Crauwels, C. N. Potts, L. N. Van
 * Wassenhove, INFORMS Journal on Computing 10 (1998) 341-350.
 */
final class TardinessFile {

  private static final int ROWS = 3;

  private TardinessFile() {}

  /**
   * Reads so many problems, which are all of one size.
   *
   * @throws strickle.book.Faulty naming the line
   */
  static List<Shop> read(Lines lines, int problems) {
    int[] all = lines.allNumbers();
    int jobs = problems == 0 ? 0 : all.length / (ROWS * problems);
    lines.must(
        jobs > 0 && all.length == ROWS * jobs * problems,
        all.length + " numbers",
        "as many minutes, weights and due dates for each of " + problems + " problems");
    List<Shop> shops = new ArrayList<>();
    for (int at = 0; at < all.length; at += ROWS * jobs) {
      int[] minutes = Arrays.copyOfRange(all, at, at + jobs);
      lines.must(Arrays.stream(minutes).allMatch(one -> one > 0), 0, "jobs of 1 minute or more");
      int[] weights = Arrays.copyOfRange(all, at + jobs, at + 2 * jobs);
      int[] dues = Arrays.copyOfRange(all, at + 2 * jobs, at + ROWS * jobs);
      shops.add(Published.oneMachine(minutes, weights, dues));
    }
    return shops;
  }
}
