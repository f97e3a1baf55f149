package strickle.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** The hash of everything a database keeps of studios, but for what its queue of plans does. */
public final class StoreHash {

  private static final List<String> EVERYTHING =
      List.of(
          "select * from studio order by 1",
          "select * from entry order by 1, 2, 3",
          "select * from journal order by 1, 2",
          "select * from journal_change order by 1, 2, 3",
          "select * from snapshot order by 1, 2",
          "select * from creation order by 1, 2",
          "select * from session order by 1");

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
            handle
                .createQuery(query)
                .mapToMap()
                .forEach(row -> digest.update(row.toString().getBytes(StandardCharsets.UTF_8)));
          }
          return HexFormat.of().formatHex(digest.digest());
        });
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
