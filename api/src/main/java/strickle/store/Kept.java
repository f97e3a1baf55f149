package strickle.store;

import strickle.book.Book;

/**
 * What a studio holds at one moment, as it is kept.
 *
 * @param revision goes up by one with every change, undo and redo; 1 or more
 * @param entries everything in it
 * @param book its studio book, put together from the entries
 */
public record Kept(long revision, Entries entries, Book book) {}
