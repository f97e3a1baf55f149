package strickle.mix;

import java.util.OptionalDouble;

/**
 * One material of a batch.
 *
 * @param material its id, or {@link Recipe#WATER}
 * @param exactGrams what the recipe asks for
 * @param grams what to weigh, in the scale's steps
 * @param errorGrams how far that is off: weighed less exact
 * @param errorPercent the same in percent of the exact grams; 0 when those are 0
 * @param volumeMl what it fills by itself, without pores; empty when its relative density is
 *     unknown
 * @param percentOfDry what is weighed, as are all percentages here, of all dry materials, pigment
 *     not counted
 * @param percentOfCement of the cement; empty when that is unknown or there is none
 * @param percentOfWater of the water; empty when there is none
 * @param percentOfTotal of the wet mass
 */
public record BatchLine(
    String material,
    double exactGrams,
    double grams,
    double errorGrams,
    double errorPercent,
    OptionalDouble volumeMl,
    double percentOfDry,
    OptionalDouble percentOfCement,
    OptionalDouble percentOfWater,
    double percentOfTotal) {}
