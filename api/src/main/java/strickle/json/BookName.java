package strickle.json;

import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** The name of a book, read from the beginning of a studio file: the rest may be megabytes. */
public final class BookName {

  /** So many characters of a file hold the name, however it is escaped. */
  public static final int LENGTH = 2000;

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String PLACE = "/book/studio/name";

  private BookName() {}

  /**
   * The name of the studio.
   *
   * @param beginning the first {@link #LENGTH} characters of what {@link StudioFile#write} made
   * @return an empty text where there is none in it
   */
  public static String of(String beginning) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), beginning)) {
      while (parser.nextToken() != null) {
        if (parser.currentToken() == JsonToken.VALUE_STRING && isHere(parser)) {
          return parser.getString();
        }
      }
    } catch (JacksonException cutOff) {
      return "";
    }
    return "";
  }

  private static boolean isHere(JsonParser parser) {
    return parser.streamReadContext().pathAsPointer().toString().equals(PLACE);
  }
}
