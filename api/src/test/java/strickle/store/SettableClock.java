package strickle.store;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that says what it is told. */
public final class SettableClock extends Clock {

  private volatile Instant now;

  /** A clock that stands at a moment. */
  public SettableClock(Instant now) {
    this.now = now;
  }

  /** Puts the clock to another moment. */
  public void set(Instant moment) {
    now = moment;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
