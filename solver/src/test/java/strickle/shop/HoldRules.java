package strickle.shop;

import java.util.ArrayList;
import java.util.List;

/** What is held when: no more units of a resource than there are, at any minute. */
final class HoldRules {

  private HoldRules() {}

  static List<String> broken(Shop shop, List<Rules.Chain> chains) {
    int last = chains.stream().mapToInt(chain -> chain.run().done()).max().orElse(0);
    int[][] held = new int[shop.resources().size()][last + 1];
    for (Rules.Chain chain : chains) {
      for (int i = 0; i < chain.places().size(); i++) {
        for (Hold hold : chain.kind().chain().get(i).holds()) {
          int units = hold.unitsEach() * chain.run().jobs();
          for (int at = chain.place(i).start(); at < end(hold, chain); at++) {
            held[hold.resource()][at] += units;
          }
        }
      }
    }
    return tooMuch(shop, held);
  }

  private static int end(Hold hold, Rules.Chain chain) {
    Schedule.Placed closing = chain.place(hold.last());
    return switch (hold.until()) {
      case START -> closing.start();
      case END -> closing.end();
      case DONE -> closing.end() + chain.kind().tailMinutes();
    };
  }

  private static List<String> tooMuch(Shop shop, int[][] held) {
    List<String> broken = new ArrayList<>();
    for (int resource = 0; resource < held.length; resource++) {
      for (int at = 0; at < held[resource].length; at++) {
        if (held[resource][at] > shop.resources().get(resource).capacity()) {
          broken.add(held[resource][at] + " held of resource " + resource + " at " + at);
        }
      }
    }
    return broken;
  }
}
