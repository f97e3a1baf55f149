package strickle.paper;

/** The paper that is printed on. */
public enum PageSize {
  /** 210 x 297 mm. */
  A4("A4"),
  /** US Letter, 8.5 x 11 in. */
  LETTER("letter");

  private final String css;

  PageSize(String css) {
    this.css = css;
  }

  /** Its name in CSS 2.1 paged media. */
  String css() {
    return css;
  }
}
