package strickle.plan.learn;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * What was really weighed out for a lot of one material.
 *
 * @param lot which lot of the plan
 * @param material id of the material, or "water"
 * @param quantity grams, above 0
 */
public record Used(String lot, String material, double quantity) {

  /**
   * Refuses what cannot have been used.
   *
   * @throws Faulty with every fault, paths relative to the record
   */
  public Used {
    List<Fault> faults = new ArrayList<>();
    if (lot == null || lot.isBlank()) {
      faults.add(new Fault(".lot", "nothing", "a lot of the plan"));
    }
    if (material == null || material.isBlank()) {
      faults.add(new Fault(".material", "nothing", "the id of a material"));
    }
    if (!(quantity > 0) || Double.isInfinite(quantity)) {
      faults.add(new Fault(".quantity", "" + quantity, "grams, a number above 0"));
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
  }
}
