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
    try {
      if (server == null) {
        server = EmbeddedPostgres.builder().setServerConfig("max_connections", "60").start();
      }
      String name = "studio" + databases++;
      try (Connection connection = server.getPostgresDatabase().getConnection();
          Statement statement = connection.createStatement()) {
        statement.execute("create database " + name);
      }
      return server.getJdbcUrl("postgres", name);
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    } catch (SQLException cannot) {
      throw new IllegalStateException(cannot);
    }
  }
}
