package strickle.paper;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Which day sheets are wanted.
 *
 * @param day the one day, local to the studio; empty for every day of the plan
 * @param person id of the one person; empty for everybody
 * @param size the paper
 */
public record SheetRequest(Optional<LocalDate> day, Optional<String> person, PageSize size) {

  /** Everything, on A4. */
  public static final SheetRequest ALL =
      new SheetRequest(Optional.empty(), Optional.empty(), PageSize.A4);

  /** Refuses a missing part. */
  public SheetRequest {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(person, "person");
    Objects.requireNonNull(size, "size");
  }
}
