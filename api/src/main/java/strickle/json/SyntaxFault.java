package strickle.json;

import strickle.book.Faulty;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.TokenStreamContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/**
 * Says in plain words what is wrong with a text that is not JSON: what stands where, and what would
 * be right there. The parser's own messages speak of its settings; they only serve to tell the
 * cases apart.
 */
final class SyntaxFault {

  private SyntaxFault() {}

  /** A refusal for what stopped the parser. */
  static Faulty of(TextPlaces places, JsonParser parser, JacksonException stop) {
    long offset = offset(parser, stop);
    String message = stop.getOriginalMessage();
    if (stop instanceof StreamConstraintsException) {
      Excess excess = Excess.of(message);
      return Findings.refusal(excess.found() + places.at(offset), excess.right());
    }
    Slip slip = Slip.of(message);
    if (stop instanceof UnexpectedEndOfInputException && slip != Slip.OPEN_TEXT) {
      return Findings.refusal(places.word(offset), rest(parser.streamReadContext()));
    }
    return Findings.refusal(found(slip, places, offset), slip.right());
  }

  /** A refusal for something after the end of the value. */
  static Faulty trailing(TextPlaces places, long offset) {
    return Findings.refusal(places.word(offset), "nothing after the end of the first value");
  }

  /** Where the parser stopped, as characters from the start. */
  static long offset(JsonParser parser, JacksonException stop) {
    TokenStreamLocation told = stop.getLocation();
    return told == null ? parser.currentLocation().getCharOffset() : told.getCharOffset();
  }

  private static String found(Slip slip, TextPlaces places, long offset) {
    if (slip.insideText()) {
      return places.character(offset);
    }
    boolean late = slip.noticedLate() && places.endsWord(offset);
    return places.word(late ? offset - 1 : offset);
  }

  private static String rest(TokenStreamContext inside) {
    if (inside.inRoot()) {
      return Slip.NO_VALUE.right();
    }
    return "the rest, up to the closing " + (inside.inObject() ? "}" : "]");
  }
}
