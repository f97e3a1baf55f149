package strickle.plan.why;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Says what held the runs that stood in the way, in few sentences. */
final class LinkWords {

  /** Runs named with what they are for; of more the number is told. */
  private static final int MOST_NAMED = 3;

  private final Names names;
  private final Moments moments;
  private final Function<Course, HoldWords> words;

  LinkWords(Names names, Moments moments, Function<Course, HoldWords> words) {
    this.names = names;
    this.moments = moments;
    this.words = words;
  }

  /**
   * The sentences, nearest link first. If they are too many, the last of them says where it all
   * begins, and those before it only are counted.
   *
   * @param first what these links are behind
   * @param most so many sentences at most; none if less than 1
   */
  List<String> say(Hold first, List<Links.Link> links, int most) {
    List<String> all = say(first, links);
    if (all.size() <= most || most < 1) {
      return all.subList(0, Math.clamp(most, 0, all.size()));
    }
    List<String> few = new ArrayList<>(all.subList(0, most - 1));
    few.add(shortened(all.size() - most, all.getLast()));
    return few;
  }

  private static String shortened(int leftOut, String end) {
    String more = leftOut == 1 ? "one more such hold" : leftOut + " more such holds";
    return "behind that, after " + more + ": " + end;
  }

  private List<String> say(Hold first, List<Links.Link> links) {
    List<String> sentences = new ArrayList<>();
    int at = 0;
    while (at < links.size()) {
      List<Course> inARow = inARow(first, links, at);
      if (inARow.size() > 1) {
        sentences.add(oneAfterTheOther(links.get(at), inARow));
        at += inARow.size();
        // When the last of them was poured has been said.
        at += links.get(at).hold().isEmpty() && links.get(at).course().done() > 0 ? 1 : 0;
      } else {
        sentences.add(sentence(links.get(at)));
        at++;
      }
    }
    return sentences;
  }

  private String sentence(Links.Link link) {
    return link.hold()
        .map(hold -> words.apply(link.course()).sayItself(hold))
        .orElseGet(() -> root(link.course()));
  }

  /** Runs that had the same forms one after the other, each held by the next. */
  private static List<Course> inARow(Hold first, List<Links.Link> links, int from) {
    List<Course> inARow = new ArrayList<>();
    for (int i = from; i + 1 < links.size(); i++) {
      boolean same =
          links.get(i).hold().filter(hold -> isSame(hold, links, from, first)).isPresent();
      if (!same) {
        break;
      }
      inARow.add(links.get(i + 1).course());
    }
    return inARow;
  }

  private static boolean isSame(Hold hold, List<Links.Link> links, int from, Hold first) {
    Hold before = from == 0 ? first : links.get(from).hold().orElseThrow();
    return hold instanceof Hold.Taken taken
        && before instanceof Hold.Taken other
        && taken.things().equals(other.things())
        && taken.things().get(0).isForm();
  }

  private String oneAfterTheOther(Links.Link first, List<Course> holders) {
    boolean one =
        first.hold().orElseThrow() instanceof Hold.Taken taken
            && taken.units().stream().mapToInt(units -> units).sum() == 1;
    List<String> named = new ArrayList<>();
    holders.stream().limit(MOST_NAMED).map(names::run).forEach(named::add);
    if (holders.size() > MOST_NAMED) {
      named.add((holders.size() - MOST_NAMED) + " more");
    }
    int since = holders.get(holders.size() - 1).task(Chain.POUR).start();
    return "before "
        + first.course().run()
        + (one ? " it was" : " they were")
        + " with "
        + Names.list(named)
        + ", one after the other since "
        + moments.say(since);
  }

  /** Where it all begins. */
  private String root(Course course) {
    Placed pour = course.task(Chain.POUR);
    return course.done() > 0
        ? course.run() + " was poured " + moments.say(pour.start())
        : course.run() + " is poured as early as it can be, " + moments.say(pour.start());
  }
}
