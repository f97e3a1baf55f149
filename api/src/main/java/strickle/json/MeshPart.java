package strickle.json;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A mesh as a studio keeps it beside its book: the bytes of the STL file as text. */
public final class MeshPart {

  /** The collection meshes are kept in, by the name of their file. */
  public static final String COLLECTION = "meshes";

  private static final String FIELD = "base64";

  /** A whole number of groups of three bytes, and short enough for one text. */
  private static final int BYTES_A_TEXT = 57_000;

  private MeshPart() {}

  /** The body for the bytes of an STL file. */
  public static String of(byte[] stl) {
    ArrayNode texts = JsonNodeFactory.instance.arrayNode();
    for (int from = 0; from < stl.length; from += BYTES_A_TEXT) {
      int length = Math.min(BYTES_A_TEXT, stl.length - from);
      byte[] part = new byte[length];
      System.arraycopy(stl, from, part, 0, length);
      texts.add(Base64.getEncoder().encodeToString(part));
    }
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    body.set(FIELD, texts);
    return body.toString();
  }

  /**
   * The bytes of the STL file.
   *
   * @throws strickle.book.Faulty when the body is none of a mesh
   */
  public static byte[] bytes(String body) {
    List<String> texts = new ArrayList<>();
    Tree.of(body, new Findings()).path(FIELD).forEach(text -> texts.add(text.asString("")));
    try {
      return Base64.getDecoder().decode(String.join("", texts));
    } catch (IllegalArgumentException noBase64) {
      throw Findings.refusal("bytes that are not base64", "the bytes of an STL file as base64");
    }
  }
}
