package strickle.book;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A fair to bring pieces to.
 *
 * @param id 1 to 64 characters
 * @param name 1 to 200 characters
 * @param opens local time by which all that is brought must be ready, in whole minutes
 * @param tableCost what the table costs, in the book's currency, 0 or more
 * @param channel id of the channel the fair sells through
 * @param demand what may sell, each piece once
 */
public record Fair(
    String id,
    String name,
    LocalDateTime opens,
    BigDecimal tableCost,
    String channel,
    List<Demand> demand) {

  /**
   * Checks the fair and copies its list.
   *
   * @throws Faulty with every fault, paths relative to the fair
   */
  public Fair {
    Check check = new Check();
    check.id(".id", id);
    check.name(".name", name);
    check.moment(".opens", opens);
    check.amount(".tableCost", tableCost);
    check.id(".channel", channel);
    demand = check.list(".demand", demand);
    check.distinct(".demand", demand, Demand::piece, ".piece");
    check.done();
  }
}
