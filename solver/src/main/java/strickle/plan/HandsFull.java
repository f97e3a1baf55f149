package strickle.plan;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strickle.book.Fault;
import strickle.plan.replan.Happening;
import strickle.plan.replan.HappeningKind;

/**
 * Finds where one person is told to have been in two places: at two pours at once, as a pour is
 * never left, or at work while away. Other tasks may be left for a while and gone on with later.
 */
final class HandsFull {

  private static final String EITHER = "another person or another time in one of the two";

  private final List<Happening> happened;
  private final Map<String, Task> history;
  private final StudioTime time;
  private final int now;
  private final List<Fault> faults = new ArrayList<>();

  private HandsFull(
      List<Happening> happened, Map<String, Task> history, StudioTime time, int nowMinute) {
    this.happened = happened;
    this.history = history;
    this.time = time;
    this.now = nowMinute;
  }

  /**
   * What nobody can have done.
   *
   * @param history what has happened by task, with what the plan knew before
   * @param nowMinute the minute until which somebody who is still at it has been at it
   */
  static List<Fault> faults(
      List<Happening> happened, Map<String, Task> history, StudioTime time, int nowMinute) {
    HandsFull hands = new HandsFull(happened, history, time, nowMinute);
    for (int i = 0; i < happened.size(); i++) {
      if (happened.get(i).isTask()) {
        hands.read(i);
      }
    }
    return hands.faults;
  }

  private void read(int i) {
    Happening one = happened.get(i);
    for (int j = 0; j < happened.size(); j++) {
      Happening other = happened.get(j);
      boolean same = other.person().equals(one.person());
      boolean twoPours = j < i && isPour(one) && isPour(other);
      if (same && twoPours && start(one) < end(other) && start(other) < end(one)) {
        String where = "$.happened[" + j + "] has them at the pour of " + other.lot().orElseThrow();
        refuse(i, one, where + span(start(other), end(other)));
      }
      if (same && other.kind() == HappeningKind.AWAY && isAtWork(one, other)) {
        refuse(i, one, "$.happened[" + j + "] has them away" + span(from(other), to(other)));
      }
    }
    if (isPour(one)) {
      known(i, one);
    }
  }

  private static boolean isPour(Happening one) {
    return one.kind() == HappeningKind.POURED;
  }

  /** Pours that the plan knows to be done already, and that are not told again. */
  private void known(int i, Happening one) {
    for (Task task : history.values()) {
      boolean told =
          happened.stream()
              .anyMatch(other -> other.isTask() && other.task().equals(Tasks.idOf(task)));
      int start = minute(task.start().toLocalDateTime());
      int end = minute(task.end().toLocalDateTime());
      boolean pour = task.kind() == TaskKind.POUR && task.done() && !told;
      boolean same = task.person().equals(one.person().orElseThrow());
      if (pour && same && start(one) < end && start < end(one)) {
        refuse(i, one, "the plan has them at the pour of " + task.lot() + span(start, end));
      }
    }
  }

  /** A pour is all in one; of other tasks the beginning and the end are work for certain. */
  private boolean isAtWork(Happening task, Happening away) {
    int from = from(away);
    int to = to(away);
    boolean begins = from <= start(task) && start(task) < to;
    boolean ends = task.end().isPresent() && from < end(task) && end(task) <= to;
    boolean through = isPour(task) && start(task) < to && from < end(task);
    return begins || ends || through;
  }

  private void refuse(int i, Happening one, String where) {
    String found = one.person().orElseThrow() + span(start(one), end(one)) + ", when " + where;
    faults.add(new Fault("$.happened[" + i + "].person", found, EITHER));
  }

  private String span(int from, int to) {
    return " from " + time.local(from) + " to " + time.local(to);
  }

  private int start(Happening one) {
    return minute(one.start().orElseThrow());
  }

  private int end(Happening one) {
    return one.end().map(this::minute).orElse(Math.max(now, start(one) + 1));
  }

  private int from(Happening away) {
    return minute(away.from().orElseThrow());
  }

  /** When an absence ended: when it was to, or sooner if they are told to be back. */
  private int to(Happening away) {
    int to = minute(away.to().orElseThrow());
    return happened.stream()
        .filter(one -> one.kind() == HappeningKind.BACK && one.person().equals(away.person()))
        .mapToInt(this::from)
        .filter(back -> from(away) <= back && back < to)
        .min()
        .orElse(to);
  }

  private int minute(LocalDateTime at) {
    return (int) time.minute(at);
  }
}
