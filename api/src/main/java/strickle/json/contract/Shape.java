package strickle.json.contract;

/** What a body looks like. */
public sealed interface Shape {

  /** The media type of such a body. */
  String mediaType();

  /**
   * A record as JSON.
   *
   * @param type the record
   * @param format the word in its first field, such as {@code strickle-book/1}; empty for none
   */
  record Of(Class<? extends Record> type, String format) implements Shape {
    @Override
    public String mediaType() {
      return "application/json";
    }
  }

  /**
   * One page of a list, as JSON.
   *
   * @param item what stands in the list
   * @param numbered whether the things have no id of their own, so that their ids stand beside them
   */
  record PageOf(Shape item, boolean numbered) implements Shape {
    @Override
    public String mediaType() {
      return "application/json";
    }
  }

  /**
   * A JSON object of which only this is said.
   *
   * @param description what it is
   */
  record Anything(String description) implements Shape {
    @Override
    public String mediaType() {
      return "application/json";
    }
  }

  /**
   * A text.
   *
   * @param mediaType such as {@code text/csv}
   */
  record Text(String mediaType) implements Shape {}

  /**
   * Bytes.
   *
   * @param mediaType such as {@code application/pdf}
   */
  record Bytes(String mediaType) implements Shape {}

  /** A record as JSON, without a word for its format. */
  static Shape of(Class<? extends Record> type) {
    return new Of(type, "");
  }
}
