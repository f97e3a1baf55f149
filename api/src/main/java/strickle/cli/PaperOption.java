package strickle.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import strickle.book.Fault;
import strickle.paper.PageSize;

/** The option {@code --paper}. */
final class PaperOption {

  private static final String NAME = "--paper";

  @Option(
      names = NAME,
      paramLabel = "SIZE",
      description = "the paper to print on, a4 or letter; a4 when left out")
  private String given;

  /** Reads the option. */
  PageSize read(Given values) {
    if (given == null) {
      return PageSize.A4;
    }
    Optional<PageSize> size =
        Stream.of(PageSize.values()).filter(one -> name(one).equals(lower(given))).findFirst();
    if (size.isEmpty()) {
      List<String> names = Stream.of(PageSize.values()).map(PaperOption::name).toList();
      values.fault(new Fault(NAME, '"' + given + '"', String.join(" or ", names)));
    }
    return size.orElse(PageSize.A4);
  }

  private static String name(PageSize size) {
    return lower(size.name());
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
