package strickle.paper;

import java.util.List;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Finds how far to the right the signs of a document reach. */
final class Edge extends PDFTextStripper {

  /** In points from the left edge of the paper. */
  float rightmost;

  int signs;

  @Override
  protected void writeString(String text, List<TextPosition> positions) {
    for (TextPosition position : positions) {
      rightmost = Math.max(rightmost, position.getXDirAdj() + position.getWidthDirAdj());
      signs++;
    }
  }
}
