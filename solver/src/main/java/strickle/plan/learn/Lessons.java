package strickle.plan.learn;

import java.util.List;

/**
 * What recorded weeks say of a book.
 *
 * @param lessons a lesson for each number that something is recorded of at least twice
 */
public record Lessons(List<Lesson> lessons) {

  /** Copies the list. */
  public Lessons {
    lessons = List.copyOf(lessons);
  }

  /** Those that can be taken over. */
  public List<Lesson> offers() {
    return lessons.stream().filter(lesson -> lesson.offer().isPresent()).toList();
  }
}
