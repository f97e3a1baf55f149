package strickle.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** A new database for a test, which can be opened once more, as by another process. */
final class OpenedTwice implements AutoCloseable {

  private final Supplier<Database> first;
  private final Supplier<Database> more;
  private final List<Database> opened = new ArrayList<>();

  private OpenedTwice(Supplier<Database> first, Supplier<Database> more) {
    this.first = first;
    this.more = more;
  }

  /** A file in a folder, which belongs to the first: a second process is refused, a pool is not. */
  static OpenedTwice sqlite(Path folder) {
    return new OpenedTwice(() -> Database.inFolder(folder), () -> Database.besideAnother(folder));
  }

  /** A database of its own on the server of the tests. */
  static OpenedTwice postgresql() {
    String url = Postgres.freshDatabase();
    return new OpenedTwice(() -> Database.postgresql(url), () -> Database.postgresql(url));
  }

  /** Opens it, or opens it once more. */
  Database open() {
    opened.add((opened.isEmpty() ? first : more).get());
    return opened.get(opened.size() - 1);
  }

  @Override
  public void close() {
    opened.forEach(Database::close);
  }
}
