package strickle.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import strickle.book.Book;
import strickle.book.Piece;
import strickle.book.Studio;
import strickle.demo.Demo;
import strickle.demo.Size;
import strickle.plan.Effort;
import strickle.plan.Plan;
import strickle.plan.PlanRequest;
import strickle.plan.Planning;
import strickle.plan.Totals;

/** A book and a plan to put on paper, and what stands on paper. */
final class Papers {

  static final Book BOOK = Demo.book(Size.MEDIUM);
  static final Plan PLAN = plan(BOOK, 20);

  private Papers() {}

  static Plan plan(Book book, long schedules) {
    PlanRequest request = new PlanRequest(Demo.start(), Effort.ofSchedules(schedules), 0);
    return Planning.of(book, request, progress -> {}).run();
  }

  /** A plan of nothing. */
  static Plan empty(Book book) {
    Totals none = new Totals(java.math.BigDecimal.ZERO, 0, 0, 0, Demo.start());
    String name = book.studio().name();
    List<strickle.plan.Ready> ready = List.of();
    return new Plan(name, Demo.start(), 0, List.of(), List.of(), List.of(), ready, List.of(), none);
  }

  /** The same book with other names of its pieces and its studio. */
  static Book renamed(Book book, UnaryOperator<String> names) {
    Studio s = book.studio();
    Studio studio =
        new Studio(
            names.apply(s.name()),
            s.currency(),
            s.timeZone(),
            s.wagePerHour(),
            s.overheadPerMonth(),
            s.productiveHoursPerMonth(),
            s.batchLimitGrams(),
            s.climate());
    return new Book(
        studio,
        book.people(),
        book.stations(),
        book.forms(),
        book.moulds(),
        book.materials(),
        book.mixes(),
        book.pieces().stream().map(piece -> renamed(piece, names)).toList(),
        book.orders(),
        book.channels(),
        book.fairs(),
        book.pins());
  }

  private static Piece renamed(Piece p, UnaryOperator<String> names) {
    return new Piece(
        p.id(),
        names.apply(p.name()),
        p.mould(),
        p.mix(),
        p.goodPercent(),
        p.onHand(),
        p.typicalRun(),
        p.route(),
        p.finalDryHours(),
        p.packing(),
        p.price(),
        p.leftoverValue());
  }

  /** The text of every page, its lines parted by single newlines. */
  static List<String> pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<String> pages = new ArrayList<>();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document).replace("\r\n", "\n"));
      }
      return pages;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** All of it, with one space for whatever parts its words. */
  static String words(byte[] pdf) {
    return words(String.join("\n", pages(pdf)));
  }

  static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
