package strickle.store;

import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import strickle.book.Book;

/** What a studio holds at one moment, as it is kept, and what has been worked out of it. */
public final class Kept {

  private static final int MOST_TOLD = 50;

  /** A longer answer is not remembered, so that fifty of them are some megabytes at most. */
  private static final int LONGEST_TOLD = 200_000;

  private final Stand stand;
  private final Entries entries;
  private final Book book;
  private final Map<Class<?>, Object> workedOut = new ConcurrentHashMap<>();
  private final Map<String, String> told = new ConcurrentHashMap<>();

  /**
   * What a studio holds.
   *
   * @param stand how far it had come then
   * @param entries everything in it
   * @param book its studio book, put together from the entries
   */
  Kept(Stand stand, Entries entries, Book book) {
    this.stand = stand;
    this.entries = entries;
    this.book = book;
  }

  /** Goes up by one with every change, undo and redo; 1 or more. */
  public long revision() {
    return stand.revision();
  }

  /** How far it has come; the same for nothing else. */
  public Stand stand() {
    return stand;
  }

  /** Everything in it. */
  public Entries entries() {
    return entries;
  }

  /** Its studio book. */
  public Book book() {
    return book;
  }

  /**
   * Something that follows from what is kept and from nothing else: worked out when it is first
   * asked for, and known as long as nothing changes. Who asks at the same time may work it out too.
   * What {@code how} throws is thrown, and tried again the next time.
   */
  public <T> T workedOut(Class<T> what, Function<Kept, T> how) {
    Object known = workedOut.get(what);
    if (known == null) {
      // Not in one step with the looking: one thing may be worked out of another.
      Object worked = how.apply(this);
      Object before = workedOut.putIfAbsent(what, worked);
      known = before == null ? worked : before;
    }
    return what.cast(known);
  }

  /**
   * The answer to a question that follows from what is kept and from nothing else but the question:
   * a page asks the same again and again. The last few are known as long as nothing changes.
   *
   * @param question the same for nothing else
   */
  public String told(String question, Supplier<String> answer) {
    String known = told.get(question);
    if (known != null) {
      return known;
    }
    String worked = answer.get();
    if (told.size() >= MOST_TOLD) {
      told.clear();
    }
    if (question.length() + worked.length() <= LONGEST_TOLD) {
      told.put(question, worked);
    }
    return worked;
  }

  /** Whether it holds the same at the same stand, whatever has been worked out of it. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Kept kept
        && kept.stand.equals(stand)
        && kept.entries.equals(entries)
        && kept.book.equals(book);
  }

  @Override
  public int hashCode() {
    return Objects.hash(stand, entries, book);
  }
}
