package strickle.cli;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.book.Book;
import strickle.json.AnswerFile;
import strickle.plan.Plan;
import strickle.price.Sensitivity;
import strickle.price.SensitivityCheck;
import strickle.price.SensitivityRequest;

/** {@code strickle sensitivity}: which numbers move the profit most. */
@Command(
    name = "sensitivity",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says which numbers of the book move the profit most, of one piece or of all that is ordered:"
          + " each is made smaller and larger by as many percent, all else as it is."
    },
    footer = {
      "",
      "Examples:",
      "  strickle sensitivity studio.json --channel table --piece dish-white",
      "  strickle sensitivity studio.json --channel table",
      "  strickle sensitivity studio.json --channel table --by 20 --most 1000 --json"
    })
final class SensitivityCommand implements Runnable {

  private static final String PIECE = "--piece";
  private static final String CHANNEL = "--channel";
  private static final String PRICE = "--price";
  private static final String BY = "--by";
  private static final String MOST = "--most";
  private static final int USUAL_MOST = 5;
  private static final int LARGEST_MOST = 1000;

  private static final Map<String, String> OPTIONS =
      Map.of(
          ".piece", PIECE, ".channel", CHANNEL, ".price", PRICE, ".byPercent", BY, ".most", MOST);

  private final Surroundings here;

  @Mixin private final BookArgument argument = new BookArgument();

  @Option(
      names = CHANNEL,
      paramLabel = "ID",
      required = true,
      description = "where it is sold: the id of a channel in the book")
  private String channel;

  @Option(
      names = PIECE,
      paramLabel = "ID",
      description = "what is sold: the id of a piece; all that is ordered when left out")
  private String piece;

  @Option(
      names = PRICE,
      paramLabel = "AMOUNT",
      description = "a list price in place of the piece's own")
  private String price;

  @Option(
      names = BY,
      paramLabel = "PERCENT",
      description = "by how much, above 0 and at most 50; 10 when left out")
  private String by;

  @Option(
      names = MOST,
      paramLabel = "N",
      description = "how many numbers are told, 1 to 1000; 5 when left out")
  private String most;

  /** The plan may be left out, but then all of it. */
  @ArgGroup(exclusive = false)
  private PlanOption present;

  @Option(names = "--json", description = "print the answer as JSON (strickle-sensitivity/1)")
  private boolean json;

  SensitivityCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Optional<BigDecimal> asked = values.decimal(PRICE, price);
    Optional<BigDecimal> percent = values.decimal(BY, by);
    Optional<Long> number = values.whole(MOST, most, 1, LARGEST_MOST);
    values.done();
    SensitivityRequest request =
        OptionNames.told(
            OPTIONS,
            () ->
                new SensitivityRequest(
                    Optional.ofNullable(piece),
                    channel,
                    asked,
                    percent.orElse(BigDecimal.TEN),
                    number.map(Math::toIntExact).orElse(USUAL_MOST)));
    Book book = argument.read();
    Optional<Plan> plan = Optional.ofNullable(present).map(option -> option.readUnderWay(book));
    Sensitivity answer = OptionNames.told(OPTIONS, () -> SensitivityCheck.of(book, request, plan));
    here.out()
        .print(
            json
                ? AnswerFile.write("strickle-sensitivity/1", answer)
                : SensitivityText.of(book, answer));
  }
}
