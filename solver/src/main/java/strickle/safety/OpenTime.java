package strickle.safety;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strickle.book.Book;

/**
 * How long a glue can be laid into, where somebody says so: "glue, open 15 min" in the words of the
 * step, or in the name of what it uses up.
 *
 * @param minutes above 0
 * @param basis who says so
 */
record OpenTime(double minutes, String basis) {

  /** Few glues are open for longer, in minutes; common practice, no source. */
  static final double USUAL_MINUTES = 60;

  private static final Pattern OPEN =
      Pattern.compile("open(?:\\s+time)?\\s*:?\\s*([0-9]{1,4}(?:[.][0-9]+)?)\\s*(min|h)");

  private static final double MINUTES_PER_HOUR = 60;

  /** What is said of the glue of a step. */
  static Optional<OpenTime> of(Course course, int step) {
    Book book = course.book();
    List<String> names = course.uses(step).stream().map(id -> book.material(id).name()).toList();
    return Stream.concat(
            read(course.at(step).step().step(), "the words of the step").stream(),
            names.stream().flatMap(name -> read(name, "the name of \"" + name + "\"").stream()))
        .findFirst();
  }

  /** What is usual, for want of a better figure. */
  static OpenTime usual() {
    return new OpenTime(USUAL_MINUTES, "common practice, no source: few glues are open for longer");
  }

  private static Optional<OpenTime> read(String words, String basis) {
    Matcher open = OPEN.matcher(words.toLowerCase(Locale.ROOT));
    if (!open.find()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(open.group(1));
    double minutes = "h".equals(open.group(2)) ? number * MINUTES_PER_HOUR : number;
    return Optional.of(new OpenTime(minutes, basis));
  }
}
