package strickle.store;

import com.zaxxer.hikari.HikariConfig;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.sqlite.SQLiteConfig;

/** How the one file of a studio is opened. */
final class SqliteFile {

  /** The file's name in its folder. */
  static final String NAME = "strickle.db";

  private static final int BUSY_MILLIS = 10_000;
  private static final int CONNECTIONS = 6;

  private SqliteFile() {}

  /**
   * The settings for the file in a folder, which is made when it is not there.
   *
   * @throws StoreTrouble when the folder cannot be made
   */
  static HikariConfig config(Path folder) {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl("jdbc:sqlite:" + made(folder).resolve(NAME));
    config.setMaximumPoolSize(CONNECTIONS);
    config.setMinimumIdle(1);
    config.setDataSourceProperties(settings());
    return config;
  }

  // With synchronous NORMAL the last commits can go at a power cut; with deferred transactions two
  // writers can lose each other's change.
  private static Properties settings() {
    SQLiteConfig sqlite = new SQLiteConfig();
    sqlite.setJournalMode(SQLiteConfig.JournalMode.WAL);
    sqlite.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    sqlite.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    sqlite.enforceForeignKeys(true);
    sqlite.setBusyTimeout(BUSY_MILLIS);
    return sqlite.toProperties();
  }

  private static Path made(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException cannot) {
      throw Troubles.of(cannot);
    }
  }
}
