package strickle.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** A PostgreSQL server for the tests of one process; it ends with the process. */
public final class Postgres {

  private static EmbeddedPostgres server;
  private static int databases;

  private Postgres() {}

  /** The JDBC address of a database of one's own. */
  public static synchronized String freshDatabase() {
    String name = "studio" + databases++;
    run("create database " + name);
    return server().getJdbcUrl("postgres", name);
  }

  /** Ends every connection to a database. */
  public static void cutOff(String url) {
    run(
        "select pg_terminate_backend(pid) from pg_stat_activity where datname = '"
            + name(url)
            + "'");
  }

  /** Lets nobody connect to a database any more, and ends every connection to it. */
  public static void shut(String url) {
    run("alter database " + name(url) + " allow_connections false");
    cutOff(url);
  }

  /** Lets them again. */
  public static void open(String url) {
    run("alter database " + name(url) + " allow_connections true");
  }

  private static String name(String url) {
    return url.replaceFirst(".*/([a-z0-9]+)[?].*", "$1");
  }

  private static void run(String statement) {
    try (Connection connection = server().getPostgresDatabase().getConnection();
        Statement running = connection.createStatement()) {
      running.execute(statement);
    } catch (SQLException cannot) {
      throw new IllegalStateException(cannot);
    }
  }

  private static synchronized EmbeddedPostgres server() {
    try {
      if (server == null) {
        server = EmbeddedPostgres.builder().setServerConfig("max_connections", "60").start();
      }
      return server;
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }
}
