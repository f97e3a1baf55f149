package strickle.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Piece;

/**
 * A piece to be cast, in figures.
 *
 * @param piece the piece
 * @param mould its mould
 * @param mix its mix
 * @param castings how many are needed, 1 or more
 * @param mostInRun the most castings that one lot, its forms and the stations after it can take
 * @param microgramsEach wet mix of one casting
 * @param formsEach units of each form one casting holds, by the form's id
 * @param stages its attended tasks after the pour: the demould and the steps
 * @param tailMinutes from the end of the last stage to ready
 */
record ExactWeekKind(
    Piece piece,
    Mould mould,
    Mix mix,
    int castings,
    int mostInRun,
    long microgramsEach,
    Map<String, Integer> formsEach,
    List<Stage> stages,
    int tailMinutes) {

  /**
   * A demould or a step.
   *
   * @param setupMinutes once for the run
   * @param eachMinutes for each casting
   * @param people who may do it, as places in the book
   * @param cures whether the wait before it runs at the pace of the room
   * @param hours the least wait before it
   * @param atMostMinutes the most that may lie before it
   * @param rests where the run lies from its start on
   */
  record Stage(
      int setupMinutes,
      int eachMinutes,
      List<Integer> people,
      boolean cures,
      double hours,
      OptionalInt atMostMinutes,
      Optional<Rest> rests) {

    int minutes(int castings) {
      return setupMinutes + eachMinutes * castings;
    }
  }

  /**
   * Places taken at a station.
   *
   * @param station id of the station
   * @param placesEach for each casting
   */
  record Rest(String station, int placesEach) {}

  /** Minutes to prepare and fill one casting. */
  int fillMinutes() {
    return mould.prepMinutes() + mould.pourMinutes();
  }

  /** Minutes of a lot that come once. */
  int lotMinutes() {
    return mix.mixMinutes() + mix.washMinutes();
  }

  /** Minutes of a run that come once, beside the lot's. */
  int setupMinutes() {
    return stages.stream().mapToInt(Stage::setupMinutes).sum();
  }
}
