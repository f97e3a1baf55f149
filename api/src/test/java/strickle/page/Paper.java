package strickle.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What a room looks like printed. */
final class Paper {

  private Paper() {}

  /** Its words in their order on paper, one space between them. */
  static String words(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(document).replaceAll("\\s+", " ");
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** How many sheets it takes. */
  static int sheets(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
