package strickle.api;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import strickle.json.Message;
import strickle.store.By;
import strickle.store.Kept;
import strickle.store.StudioStore;

/** One request: what was asked, by whom, and for which studio. */
final class Call {

  /** Bytes a request may send when nothing else is said. */
  static final int USUAL_BYTES = 8 * 1024 * 1024;

  private static final int CHUNK = 16 * 1024;

  private final Context context;
  private final Access access;
  private final Duration patience;
  private Optional<StudioStore> studio = Optional.empty();

  /**
   * A request, and how to find the studio it is about.
   *
   * @param patience how long its body may take
   */
  Call(Context context, Access access, Duration patience) {
    this.context = context;
    this.access = access;
    this.patience = patience;
  }

  /**
   * Lets it in, or not.
   *
   * @throws Refusal when no studio is open to who asks
   */
  void admit() {
    studio = access.admitted(context);
  }

  /**
   * The studio it is about.
   *
   * @throws Refusal when there is none yet, or it is not open to who asks
   */
  StudioStore studio() {
    if (studio.isEmpty()) {
      studio = Optional.of(access.studio(context));
    }
    return studio.get();
  }

  /**
   * The answer to a reading that follows from what the studio holds, and from nothing else but what
   * was asked: not worked out again as long as nothing has changed.
   */
  String told(Supplier<String> answer) {
    boolean otherPlan =
        query(PresentPlan.NAME).filter(id -> !id.equals(PresentPlan.IN_USE)).isPresent();
    return otherPlan
        ? answer.get()
        : studio().now().told(context.path() + "?" + context.queryString(), answer);
  }

  /** The tag of the studio's book as it was at a moment. */
  String tag(Kept kept) {
    return Etag.of(studio().studio(), kept.stand());
  }

  /** For the journal. */
  By by(String what) {
    return new By(who(), what);
  }

  /**
   * Who asks, as they call themselves.
   *
   * @throws Refusal when it is no name
   */
  String who() {
    return Who.of(this);
  }

  /** A part of the path. */
  String path(String name) {
    return context.pathParam(name);
  }

  /** A value after the question mark; nothing when it is missing or empty. */
  Optional<String> query(String name) {
    return Optional.ofNullable(context.queryParam(name)).filter(text -> !text.isEmpty());
  }

  /**
   * A whole number after the question mark.
   *
   * @throws Refusal when it is none, or out of range
   */
  int whole(String name, int otherwise, int least, int most) {
    return query(name).map(text -> whole(name, text, least, most)).orElse(otherwise);
  }

  private static int whole(String name, String text, int least, int most) {
    if (text.matches("[0-9]{1,9}")) {
      int value = Integer.parseInt(text);
      if (value >= least && value <= most) {
        return value;
      }
    }
    throw Refusal.malformed(name, shown(text), "a whole number from " + least + " to " + most);
  }

  /**
   * Yes or no after the question mark; no when it is missing.
   *
   * @throws Refusal when it is neither true nor false
   */
  boolean flag(String name) {
    return query(name).map(text -> flag(name, text)).orElse(false);
  }

  private static boolean flag(String name, String text) {
    return switch (text) {
      case "true" -> true;
      case "false" -> false;
      default -> throw Refusal.malformed(name, shown(text), "true or false");
    };
  }

  /**
   * A number after the question mark.
   *
   * @throws Refusal when it is none of an ordinary size
   */
  Optional<BigDecimal> decimal(String name) {
    return query(name).map(text -> decimal(name, text));
  }

  private static BigDecimal decimal(String name, String text) {
    if (text.matches("-?[0-9]{1,12}([.][0-9]{1,9})?")) {
      return new BigDecimal(text);
    }
    throw Refusal.malformed(name, shown(text), "a number such as 12.5");
  }

  /** A date after the question mark. */
  Optional<LocalDate> date(String name) {
    return query(name).map(text -> date(name, text));
  }

  /** A local time after the question mark. */
  Optional<LocalDateTime> time(String name) {
    return query(name).map(text -> time(name, text));
  }

  private static LocalDateTime time(String name, String text) {
    if (text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}")) {
      try {
        return LocalDateTime.parse(text);
      } catch (DateTimeParseException none) {
        // Told below.
      }
    }
    throw Refusal.malformed(name, shown(text), "a local time such as 2027-04-05T09:00");
  }

  private static LocalDate date(String name, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException none) {
      throw Refusal.malformed(name, shown(text), "a date such as 2027-04-05");
    }
  }

  /** A text as it is told in a fault. */
  static String shown(String text) {
    return '"' + cut(text) + '"';
  }

  /** A text without what is too long of it to be told. */
  static String cut(String text) {
    String told = start(text, 60);
    return told.equals(text) ? text : told + "…";
  }

  /** The beginning of a text, so many characters at most; a letter of two stays whole. */
  static String start(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    return text.substring(0, Character.isHighSurrogate(text.charAt(most - 1)) ? most - 1 : most);
  }

  /** By which name, and port, the service was called: one it answers to. */
  String host() {
    return header("Host").orElseThrow();
  }

  /** A header; nothing when it is missing. */
  Optional<String> header(String name) {
    return Optional.ofNullable(context.header(name));
  }

  /** A header that is a list, whose values may stand in several lines (RFC 9110, 5.3). */
  Optional<String> list(String name) {
    List<String> lines = Collections.list(context.req().getHeaders(name));
    return lines.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", lines));
  }

  /** The body as text, of at most {@link #USUAL_BYTES}. */
  String body() {
    return body(USUAL_BYTES);
  }

  /**
   * The body as text.
   *
   * @param most bytes it may have
   * @throws Refusal when it is longer, or not UTF-8
   */
  String body(int most) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes(most))).toString();
    } catch (CharacterCodingException broken) {
      throw new Refusal(
          Problem.of(Status.MALFORMED, "Not a text", "The body is not UTF-8 throughout."));
    }
  }

  /** The bytes of the body. */
  byte[] bytes(int most) {
    try {
      byte[] bytes = read(context.bodyInputStream(), most + 1);
      if (bytes.length > most) {
        throw new Refusal(
            Problem.of(
                Status.TOO_LARGE, "Too large", "The body may have " + most + " bytes at most."));
      }
      return bytes;
    } catch (IOException brokenOff) {
      throw new UncheckedIOException(brokenOff);
    }
  }

  // A body that trickles in would hold the request for ever: no single wait for more is too long.
  private byte[] read(InputStream in, int most) throws IOException {
    long last = System.nanoTime() + patience.toNanos();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] some = new byte[CHUNK];
    int read = 0;
    while (read >= 0 && bytes.size() < most) {
      read = in.read(some, 0, Math.min(CHUNK, most - bytes.size()));
      bytes.write(some, 0, Math.max(0, read));
      if (System.nanoTime() > last) {
        throw new Refusal(Problem.of(Status.TOO_SLOW, "Too slow", "The body takes too long."));
      }
    }
    return bytes.toByteArray();
  }

  /** The body as a record. */
  <R extends Record> R body(Class<R> type) {
    return Message.parse(body(), type);
  }

  /** The HTTP library's own view of the request, for streams. */
  Context context() {
    return context;
  }
}
