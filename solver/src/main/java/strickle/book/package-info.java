/**
 * The studio book: what a casting studio owns, makes and owes, as immutable records that check
 * themselves and tell all that is wrong at once. Everything else reads from here; nothing here
 * knows of files, plans or money made.
 */
package strickle.book;
