package strickle.shop;

import java.util.Optional;
import java.util.Random;

/** The decoder as tests use it: a shop and an order in, a schedule out. */
final class Decodes {

  private final Tables tables;
  private final Decoder decoder;

  private Decodes(Shop shop, int fewest) {
    tables = new Tables(shop);
    decoder = new Decoder(tables, fewest);
  }

  static Decodes of(Shop shop) {
    return of(shop, Checkpoints.FEWEST_CLAIMS);
  }

  /** With checkpoints in a list of so many claims. */
  static Decodes of(Shop shop, int fewest) {
    return new Decodes(shop, fewest);
  }

  /** How many claims an order of the shop has. */
  int claims() {
    return decoder.claims().count();
  }

  Decoder decoder() {
    return decoder;
  }

  /** The schedule of an order, or nothing when it has no room. */
  Optional<Schedule> decode(int... order) {
    if (!decoder.decode(order)) {
      return Optional.empty();
    }
    return Optional.of(Reader.read(tables, decoder, value(), 1));
  }

  /** The value of the schedule of an order, or the worst there is when it has no room. */
  Value valueOf(int... order) {
    return decoder.decode(order)
        ? value()
        : new Value(Long.MAX_VALUE, Long.MAX_VALUE, Long.MAX_VALUE);
  }

  /** The claims in the order of their numbers. */
  int[] inOrder() {
    int[] order = new int[claims()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    return order;
  }

  /** The claims in any order. */
  int[] shuffled(Random random) {
    int[] order = inOrder();
    for (int i = order.length - 1; i > 0; i--) {
      int other = random.nextInt(i + 1);
      int kept = order[i];
      order[i] = order[other];
      order[other] = kept;
    }
    return order;
  }

  private Value value() {
    return new Value(decoder.late(), decoder.timetable().attended, decoder.flow());
  }
}
