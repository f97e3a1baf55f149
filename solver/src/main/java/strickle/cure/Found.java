package strickle.cure;

import java.util.List;

/**
 * A casting that was found ready: the hours it had had until then, and at which temperatures.
 *
 * @param casting what the studio calls it
 * @param stretches in the order of time, at least one
 */
public record Found(String casting, List<Stretch> stretches) {

  /**
   * Checks the record.
   *
   * @throws strickle.book.Faulty when there is no stretch
   */
  public Found {
    stretches = List.copyOf(stretches);
    Checks checks = new Checks();
    checks.that(!stretches.isEmpty(), ".stretches", "none", "at least one");
    checks.done();
  }

  /** All its hours. */
  public double hours() {
    return stretches.stream().mapToDouble(Stretch::hours).sum();
  }

  /** Its mean temperature in °C, each hour counted alike. */
  public double meanC() {
    return stretches.stream().mapToDouble(one -> one.hours() * one.temperatureC()).sum() / hours();
  }
}
