package strickle.store;

/**
 * Who does something to a studio, and what in a few words: it stands in the journal.
 *
 * @param who a person's name, or what they are known by; up to 200 characters
 * @param what such as "order O-12 created"; up to 500 characters
 */
public record By(String who, String what) {

  private static final int LONGEST_WHO = 200;
  private static final int LONGEST_WHAT = 500;

  /** Shortens what is too long for the journal. */
  public By {
    who = shortened(who, LONGEST_WHO);
    what = shortened(what, LONGEST_WHAT);
  }

  private static String shortened(String text, int longest) {
    return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
  }
}
