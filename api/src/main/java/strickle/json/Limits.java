package strickle.json;

import tools.jackson.core.StreamReadConstraints;

/** How much a file may hold; what is larger is refused before it costs time or memory. */
final class Limits {

  private static final int MEGABYTE = 1024 * 1024;

  /** Bytes of a book, a plan or a message. */
  static final int FILE_BYTES = 8 * MEGABYTE;

  /** Bytes of a whole studio with its meshes. */
  static final int STUDIO_BYTES = 64 * MEGABYTE;

  /** Levels of { and [ inside each other; a book has nine. */
  static final int DEPTH = 40;

  /** Characters of a field name. */
  static final int NAME_LENGTH = 200;

  /** Characters of a number; the smallest double written out without an exponent has 345. */
  static final int NUMBER_LENGTH = 400;

  /** Characters of one text. */
  static final int TEXT_LENGTH = 100_000;

  /** Names, values and brackets of a file; a dense file of the full size has fewer. */
  static final int TOKENS = 3_000_000;

  /** Faults told at once; nobody reads more. */
  static final int FAULTS = 1000;

  private Limits() {}

  /** The limits that the parser itself keeps. */
  static StreamReadConstraints ofParser() {
    return StreamReadConstraints.builder()
        .maxNestingDepth(DEPTH)
        .maxNameLength(NAME_LENGTH)
        .maxNumberLength(NUMBER_LENGTH)
        .maxStringLength(TEXT_LENGTH)
        .maxTokenCount(TOKENS)
        .build();
  }

  /** A number of bytes in words, from one MB on in MB, rounded up to one decimal. */
  static String megabytes(long bytes) {
    if (bytes < MEGABYTE) {
      return bytes + " bytes";
    }
    long tenths = Math.ceilDiv(bytes * 10, MEGABYTE);
    return tenths % 10 == 0 ? tenths / 10 + " MB" : tenths / 10 + "." + tenths % 10 + " MB";
  }
}
