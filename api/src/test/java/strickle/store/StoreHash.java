package strickle.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.List;

/** The hash of everything a database keeps of studios, but for how far its queue is with plans. */
public final class StoreHash {

  private static final List<String> EVERYTHING =
      List.of(
          "select * from studio order by 1",
          "select * from entry order by 1, 2, 3",
          "select * from journal order by 1, 2",
          "select * from journal_change order by 1, 2, 3",
          "select * from snapshot order by 1, 2",
          "select * from creation order by 1, 2",
          "select * from session order by 1",
          "select studio_id, id, number, kind, created_at, who, asked, book, present, stop_asked"
              + " from plan order by 1, 2");

  private final Database database;

  /** The hash of a database. */
  public StoreHash(Database database) {
    this.database = database;
  }

  /** What it is now. */
  public String now() {
    return database.read(
        handle -> {
          MessageDigest digest = sha256();
          for (String query : EVERYTHING) {
            add(handle.getConnection(), query, digest);
          }
          return HexFormat.of().formatHex(digest.digest());
        });
  }

  private static void add(Connection connection, String query, MessageDigest digest) {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      int columns = rows.getMetaData().getColumnCount();
      while (rows.next()) {
        for (int i = 1; i <= columns; i++) {
          String value = rows.getString(i);
          digest.update((value == null ? "-" : value.length() + ":" + value).getBytes(UTF_8));
        }
      }
    } catch (SQLException failed) {
      throw new IllegalStateException(failed);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
