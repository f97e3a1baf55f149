package strickle.json;

import strickle.book.LengthUnit;

/**
 * A mesh as a book names it.
 *
 * @param file the plain name of the file beside the book
 * @param unit what one unit of the mesh is
 */
record MeshField(String file, LengthUnit unit) {}
