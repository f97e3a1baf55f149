package strickle.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The database, open and brought to the newest tables: one SQLite file in a folder, or a PostgreSQL
 * server. Everything that goes wrong in it comes out as {@link StoreTrouble}.
 */
public final class Database implements AutoCloseable {

  private static final int CONNECTIONS = 10;

  /** So many write on a server at a time; the connections left over are for those who read. */
  private static final int WRITERS = 6;

  private static final String MIGRATIONS = "classpath:strickle/store/migration";

  private final HikariDataSource source;
  private final Jdbi jdbi;
  private final Runnable release;
  private final Optional<Path> folder;

  /**
   * SQLite lets one write at a time, and on a server those who write in one studio wait for each
   * other; who waits here is served in turn, never times out, and holds no connection.
   */
  private final Semaphore writing;

  private final boolean oneWriter;

  private Database(
      HikariConfig config, boolean oneWriter, Optional<Path> folder, Runnable release) {
    this.folder = folder;
    this.source = Troubles.told(() -> new HikariDataSource(config));
    this.jdbi = Jdbi.create(source);
    this.oneWriter = oneWriter;
    this.writing = new Semaphore(oneWriter ? 1 : WRITERS, true);
    this.release = release;
  }

  /**
   * Opens the file {@value SqliteFile#NAME} in a folder; makes both when they are not there.
   *
   * @throws StoreTrouble when that cannot be done, or another program serves the same folder
   */
  public static Database inFolder(Path folder) {
    return inFolder(folder, Clock.systemUTC());
  }

  /**
   * The same.
   *
   * @param clock says what day it is (UTC), so that of a damaged file the newest copy can be named
   */
  public static Database inFolder(Path folder, Clock clock) {
    FolderLock lock = FolderLock.of(folder);
    try {
      return sound(folder, lock);
    } catch (StoreTrouble trouble) {
      lock.close();
      throw DamagedFile.told(folder, trouble, LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    } catch (RuntimeException failed) {
      lock.close();
      throw failed;
    }
  }

  private static Database sound(Path folder, FolderLock lock) {
    Database database =
        new Database(SqliteFile.config(folder), true, Optional.of(folder), lock::close);
    try {
      database.read(
          handle -> {
            DamagedFile.refuse(handle);
            return folder;
          });
    } catch (RuntimeException failed) {
      database.close();
      throw failed;
    }
    return migrated(database);
  }

  /** Opens the file of a folder that this process serves already, with connections of its own. */
  static Database besideAnother(Path folder) {
    return migrated(new Database(SqliteFile.config(folder), true, Optional.empty(), () -> {}));
  }

  /**
   * Opens a PostgreSQL database.
   *
   * @param url its JDBC address, beginning with {@code jdbc:postgresql:}
   * @throws StoreTrouble when it cannot be reached or brought up to date
   */
  public static Database postgresql(String url) {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url);
    config.setMaximumPoolSize(CONNECTIONS);
    config.setConnectionTimeout(10_000);
    return migrated(new Database(config, false, Optional.empty(), () -> {}));
  }

  private static Database migrated(Database database) {
    try {
      Troubles.told(
          () ->
              Flyway.configure()
                  .dataSource(database.source)
                  .locations(MIGRATIONS)
                  .load()
                  .migrate());
      return database;
    } catch (RuntimeException failed) {
      database.close();
      throw failed;
    }
  }

  /** For libraries that keep tables of their own in the same database. */
  public DataSource source() {
    return source;
  }

  /** Whether no other process can have it open. */
  boolean isOnesOwn() {
    return oneWriter;
  }

  /** The folder its file lies in; nothing when it is on a server. */
  Optional<Path> folder() {
    return folder;
  }

  /** Writes the whole file anew, as it is at this moment, where there must be none yet. */
  void copyTo(Path file) {
    Troubles.told(
        () ->
            jdbi.withHandle(
                handle ->
                    handle
                        .createUpdate("vacuum into :file")
                        .bind("file", file.toString())
                        .execute()));
  }

  /** Runs statements that only read; each of them sees what was committed before it. */
  <T> T read(Function<Handle, T> work) {
    return Troubles.told(() -> jdbi.withHandle(work::apply));
  }

  /**
   * Runs statements in one transaction: all of it happens or, when something is thrown, nothing.
   */
  <T> T write(Function<Handle, T> work) {
    writing.acquireUninterruptibly();
    try {
      return Troubles.told(() -> jdbi.inTransaction(work::apply));
    } finally {
      writing.release();
    }
  }

  /** Closes every connection. */
  @Override
  public void close() {
    source.close();
    release.run();
  }
}
