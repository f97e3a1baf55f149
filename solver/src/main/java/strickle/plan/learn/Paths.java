package strickle.plan.learn;

import strickle.book.Book;

/** Where things stand in a book. */
final class Paths {

  private Paths() {}

  static String mix(Book book, String id) {
    return "$.mixes[" + book.mixes().indexOf(book.mix(id)) + "]";
  }

  static String mould(Book book, String id) {
    return "$.moulds[" + book.moulds().indexOf(book.mould(id)) + "]";
  }

  static String piece(Book book, String id) {
    return "$.pieces[" + book.pieces().indexOf(book.piece(id)) + "]";
  }

  /** A step of a piece's route, counted from 1. */
  static String step(Book book, String piece, int step) {
    return piece(book, piece) + ".route[" + (step - 1) + "]";
  }
}
