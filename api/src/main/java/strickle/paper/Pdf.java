package strickle.paper;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.openhtmltopdf.extend.FSUriResolver;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * Makes a PDF of XHTML and a style sheet. The same content gives the same bytes; nothing is fetched
 * from anywhere, whatever the content asks for.
 */
final class Pdf {

  private static final int REGULAR = 400;
  private static final int BOLD = 700;

  static {
    // What libraries log is not for makers.
    XRLog.setLoggingEnabled(false);
  }

  private Pdf() {}

  /**
   * The bytes of a document.
   *
   * @param title what a reader shows above it, and of which studio
   * @param size the paper
   * @param made the moment that the document says it was made, and all it says of time
   * @param body the content of its body
   */
  static byte[] of(String title, PageSize size, Instant made, Markup body) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    FSUriResolver nowhere = (base, address) -> null;
    builder
        .useUriResolver(nowhere)
        .useExternalResourceAccessControl(
            (address, kind) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
        .useFont(Fonts::regular, Fonts.FAMILY, REGULAR, FontStyle.NORMAL, true)
        .useFont(Fonts::bold, Fonts.FAMILY, BOLD, FontStyle.NORMAL, true)
        .withHtmlContent(page(title, size, body), null);
    builder.withProducer("Strickle");
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      return bytes(renderer, title, made);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static byte[] bytes(PdfBoxRenderer renderer, String title, Instant made)
      throws IOException {
    renderer.layout();
    renderer.createPDFWithoutClosing();
    PDDocument document = renderer.getPdfDocument();
    PDDocumentInformation about = document.getDocumentInformation();
    about.setTitle(title);
    about.setCreationDate(calendar(made));
    about.setModificationDate(calendar(made));
    document.setDocumentId(made.getEpochSecond());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out, CompressParameters.DEFAULT_COMPRESSION);
    return out.toByteArray();
  }

  private static Calendar calendar(Instant made) {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC));
    calendar.setTimeInMillis(made.toEpochMilli());
    return calendar;
  }

  private static String page(String title, PageSize size, Markup body) {
    String style = new String(Fonts.read("paper.css"), UTF_8);
    String head = new Markup().leaf("title", "", title).xhtml();
    return "<html><head>"
        + head
        + "<style>@page { size: "
        + size.css()
        + "; }\n"
        + style
        + "</style></head><body>"
        + body.xhtml()
        + "</body></html>";
  }
}
