package strickle.plan.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says how long the waits of a run take, as the book has them and in this room. */
final class WaitWords {

  private static final int MOST_NAMED = 4;
  private static final int LONGEST_NAMED = 3;

  /** A wait and how it is said. */
  private record Said(int minutes, String text) {}

  private final Floor floor;
  private final Course course;

  WaitWords(Floor floor, Course course) {
    this.floor = floor;
    this.course = course;
  }

  /** One sentence with every wait, or the longest of many; nothing when there is none. */
  Optional<String> say() {
    List<Said> waits = waits();
    if (waits.isEmpty()) {
      return Optional.empty();
    }
    int all = waits.stream().mapToInt(Said::minutes).sum();
    String taken = "its waits take " + Moments.lasting(all);
    boolean few = waits.size() <= MOST_NAMED;
    return Optional.of(taken + (few ? ": " + list(waits) : ", above all " + list(longest(waits))));
  }

  private static List<Said> longest(List<Said> waits) {
    int least =
        waits.stream()
            .map(Said::minutes)
            .sorted(Comparator.reverseOrder())
            .toList()
            .get(LONGEST_NAMED - 1);
    return waits.stream().filter(wait -> wait.minutes() >= least).limit(LONGEST_NAMED).toList();
  }

  private static String list(List<Said> waits) {
    return Names.list(waits.stream().map(Said::text).toList());
  }

  private List<Said> waits() {
    Chain chain = course.chain();
    List<Said> waits = new ArrayList<>();
    for (int stage = Chain.DEMOULD; stage <= chain.last(); stage++) {
      Stage what = chain.stages().get(stage);
      int from = chain.waitFrom(stage, course.task(stage - 1));
      waits.add(said(what, floor.over(what, from) - from));
    }
    String hours = Moments.hours(course.piece().finalDryHours());
    waits.add(new Said(chain.finalDryMinutes(), hours + " to dry at the end"));
    return waits.stream().filter(wait -> wait.minutes() > 0).toList();
  }

  private static Said said(Stage stage, int minutes) {
    String hours = Moments.hours(stage.waitHours()) + " to " + verb(stage);
    boolean otherwise = stage.ages() && minutes != Stage.minutes(stage.waitHours());
    String room = " at 20 °C (" + Moments.inHours(minutes) + " in this room)";
    return new Said(minutes, otherwise ? hours + room : hours);
  }

  private static String verb(Stage stage) {
    return switch (stage.kind()) {
      case SET -> "set";
      case CURE -> "cure";
      case DRY -> "dry";
      case REST -> "rest";
    };
  }
}
