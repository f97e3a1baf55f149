package strickle.api;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import strickle.json.BookFile;
import strickle.store.Kept;
import strickle.store.Stand;
import strickle.store.StudioStore;

/** The book of each studio as it was written last: it is read far more often than changed. */
final class BookTexts {

  private record Written(Stand stand, String text) {}

  private final Map<String, Written> newest = new ConcurrentHashMap<>();

  /** The book of a studio as JSON. */
  String of(StudioStore studio, Kept now) {
    String id = studio.studio().id();
    Written known = newest.get(id);
    if (known != null && known.stand().equals(now.stand())) {
      return known.text();
    }
    Written written = new Written(now.stand(), BookFile.write(now.book()));
    newest.put(id, written);
    return written.text();
  }
}
