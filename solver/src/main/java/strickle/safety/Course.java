package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import strickle.book.Book;
import strickle.book.Mould;
import strickle.book.Piece;
import strickle.book.Step;
import strickle.book.Use;
import strickle.book.WaitKind;

/**
 * A piece's route as its words read, with the waits in it.
 *
 * @param path of the piece in the book
 * @param book the book it stands in
 * @param piece the piece
 * @param doings its steps in order
 * @param pieces in a typical run
 */
record Course(String path, Book book, Piece piece, List<Doing> doings, int pieces) {

  Course {
    doings = List.copyOf(doings);
  }

  /** The routes of all pieces of a book, in its order. */
  static List<Course> of(Book book) {
    List<Course> courses = new ArrayList<>();
    for (int i = 0; i < book.pieces().size(); i++) {
      courses.add(of(book, book.pieces().get(i), "$.pieces[" + i + "]"));
    }
    return courses;
  }

  /** The route of one piece of a book. */
  static Course of(Book book, Piece piece, String path) {
    List<Doing> doings =
        piece.route().stream().map(step -> Doing.of(step, usesCoating(book, step))).toList();
    int pieces = piece.typicalRun() * book.mould(piece.mould()).cavities();
    return new Course(path, book, piece, doings, pieces);
  }

  private static boolean usesCoating(Book book, Step step) {
    return step.consumes().stream()
        .map(use -> book.material(use.material()).kind())
        .anyMatch(kind -> Vocabulary.names(kind, Vocabulary.COATINGS));
  }

  /** Where a step stands. */
  String path(int step) {
    return path + ".route[" + step + "]";
  }

  int steps() {
    return doings.size();
  }

  Doing at(int step) {
    return doings.get(step);
  }

  Mould mould() {
    return book.mould(piece.mould());
  }

  /** The first step that closes the surface. */
  OptionalInt firstSeal() {
    return IntStream.range(0, steps()).filter(step -> at(step).does(Act.SEAL)).findFirst();
  }

  /** Ids of what a step uses up. */
  List<String> uses(int step) {
    return at(step).step().consumes().stream().map(Use::material).toList();
  }

  /** The fewest hours from the end of a step (−1: of the demould) to the start of a later one. */
  double hours(int from, int to) {
    return IntStream.rangeClosed(from + 1, to).mapToDouble(i -> at(i).step().after().hours()).sum();
  }

  /** The same, of cures only. */
  double cureHours(int from, int to) {
    return IntStream.rangeClosed(from + 1, to)
        .filter(i -> at(i).step().after().kind() == WaitKind.CURE)
        .mapToDouble(i -> at(i).step().after().hours())
        .sum();
  }

  /** Minutes a step takes for a typical run. */
  int minutes(int step) {
    return at(step).step().setupMinutes() + pieces * at(step).step().minutesEach();
  }
}
