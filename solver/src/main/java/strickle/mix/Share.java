package strickle.mix;

/**
 * One material's part of the wet mass.
 *
 * @param material the material's id, or {@link Recipe#WATER}
 * @param fraction its mass over the wet mass, from 0 to 1
 */
public record Share(String material, double fraction) {}
