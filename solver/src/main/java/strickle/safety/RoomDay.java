package strickle.safety;

import java.time.LocalDateTime;
import java.util.Optional;
import strickle.book.Climate;
import strickle.cure.CoatingAir;
import strickle.cure.Evaporation;

/**
 * The room from a moment on, and what it does to a pour and to a coat.
 *
 * @param from when this begins: of a climate its own beginning, in a plan the first task of the day
 *     under it
 * @param climate what the book says of the room then
 * @param pours whether something is poured
 * @param coats whether something is sealed, painted or glued
 * @param evaporation from a fresh pour; empty without a humidity and outside 0 to 60 °C
 * @param air over a piece that is coated; empty without a humidity
 */
public record RoomDay(
    LocalDateTime from,
    Climate climate,
    boolean pours,
    boolean coats,
    Optional<Evaporation> evaporation,
    Optional<CoatingAir> air) {

  /** Whether a pour may lose so much water here that it has to be covered. */
  public boolean driesPours() {
    return pours && evaporation.filter(rate -> rate.level() != Evaporation.Level.LOW).isPresent();
  }

  /** Whether a coat should wait. */
  public boolean dampensCoats() {
    return coats && air.filter(over -> !over.isGood()).isPresent();
  }

  /** Whether it freezes: no pour and few coats stand that. */
  public boolean freezes() {
    return climate.temperatureC() < 0;
  }

  /** Whether nothing can be said because nobody measured the humidity, or it is freezing. */
  public boolean isUnknown() {
    return (pours && evaporation.isEmpty()) || (coats && air.isEmpty());
  }
}
