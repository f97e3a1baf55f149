package strickle.plan.learn;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What records say of one number of the book.
 *
 * @param path where the number stands in the book, such as {@code $.pieces[0].goodPercent}
 * @param what in words, such as "demould, deep planter"
 * @param unit minutes or percent
 * @param records how many runs, lots or pieces it rests on
 * @param book what the book says
 * @param estimate what the records say
 * @param low above this in 95 of 100 such cases, as far as the model is right
 * @param high below this in 95 of 100
 * @param differs whether the book's number lies outside that band
 * @param offer what it would be in the book if it were taken over; empty when it does not differ or
 *     too little is recorded
 */
public record Lesson(
    String path,
    String what,
    String unit,
    long records,
    BigDecimal book,
    BigDecimal estimate,
    BigDecimal low,
    BigDecimal high,
    boolean differs,
    Optional<BigDecimal> offer) {}
