package strickle.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells what a database's error means for a person. */
final class Troubles {

  /** SQLSTATE classes of PostgreSQL, or single states of them. */
  private static final String CONNECTION = "08";

  private static final String INTERVENTION = "57P";
  private static final String DATA = "22";
  private static final String DISK_FULL = "53100";
  private static final String READ_ONLY = "25006";
  private static final String NO_RIGHT = "42501";
  private static final String CONSTRAINT = "23";
  private static final String SQLITE_CONSTRAINT = "SQLITE_CONSTRAINT";

  private Troubles() {}

  /** Does something with the database; its errors come out as {@link StoreTrouble}. */
  static <T> T told(Callable<T> work) {
    try {
      return work.call();
    } catch (StoreTrouble known) {
      throw known;
    } catch (Exception thrown) {
      throw of(thrown);
    }
  }

  /** Whether a row could not be written because there is one of its key. */
  static boolean isThereAlready(Exception thrown) {
    return sql(thrown).filter(Troubles::isOfAKey).isPresent();
  }

  private static boolean isOfAKey(SQLException error) {
    return error instanceof SQLiteException sqlite
        ? sqlite.getResultCode().name().startsWith(SQLITE_CONSTRAINT)
        : Optional.ofNullable(error.getSQLState()).orElse("").startsWith(CONSTRAINT);
  }

  /** What to throw for what was thrown: trouble with the database, or the thing itself. */
  static RuntimeException of(Exception thrown) {
    Optional<RuntimeException> trouble =
        sql(thrown).map(error -> new StoreTrouble(kind(error), error.getMessage(), thrown));
    if (trouble.isPresent()) {
      return trouble.get();
    }
    if (thrown instanceof IOException io) {
      return new StoreTrouble(kind(io), io.toString(), io);
    }
    return thrown instanceof RuntimeException unchecked
        ? unchecked
        : new IllegalStateException(thrown);
  }

  private static Optional<SQLException> sql(Throwable thrown) {
    for (Throwable at = thrown; at != null; at = at.getCause()) {
      if (at instanceof SQLException error) {
        return Optional.of(error);
      }
    }
    return Optional.empty();
  }

  private static StoreTrouble.Kind kind(SQLException error) {
    if (error instanceof SQLiteException sqlite) {
      return kind(sqlite.getResultCode());
    }
    return server(Optional.ofNullable(error.getSQLState()).orElse(""));
  }

  // What a server is asked lies in no file of the studio and on no disk of this machine.
  private static StoreTrouble.Kind server(String state) {
    if (state.isEmpty() || state.startsWith(CONNECTION) || state.startsWith(INTERVENTION)) {
      return StoreTrouble.Kind.UNREACHABLE;
    }
    if (state.startsWith(DATA)) {
      return StoreTrouble.Kind.VALUE;
    }
    if (state.equals(READ_ONLY) || state.equals(NO_RIGHT)) {
      return StoreTrouble.Kind.SERVER_READ_ONLY;
    }
    return state.equals(DISK_FULL) ? StoreTrouble.Kind.SERVER_FULL : StoreTrouble.Kind.SERVER;
  }

  // Extended codes begin with the name of their primary one.
  private static StoreTrouble.Kind kind(SQLiteErrorCode code) {
    String name = code.name();
    if (name.startsWith("SQLITE_FULL")) {
      return StoreTrouble.Kind.FULL;
    }
    if (name.startsWith("SQLITE_READONLY")
        || name.startsWith("SQLITE_CANTOPEN")
        || name.startsWith("SQLITE_PERM")) {
      return StoreTrouble.Kind.READ_ONLY;
    }
    if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
      return StoreTrouble.Kind.LOCKED;
    }
    boolean damaged = name.startsWith("SQLITE_CORRUPT") || name.startsWith("SQLITE_NOTADB");
    return damaged ? StoreTrouble.Kind.CORRUPT : StoreTrouble.Kind.DEVICE;
  }

  private static StoreTrouble.Kind kind(IOException error) {
    if (error instanceof AccessDeniedException) {
      return StoreTrouble.Kind.READ_ONLY;
    }
    String said = String.valueOf(error.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("read-only")) {
      return StoreTrouble.Kind.READ_ONLY;
    }
    return said.contains("no space") ? StoreTrouble.Kind.FULL : StoreTrouble.Kind.DEVICE;
  }
}
