package strickle.mix;

/**
 * Grams of one material.
 *
 * @param material the material's id, or {@link Recipe#WATER}
 * @param grams how much, 0 or more
 */
public record Portion(String material, double grams) {}
