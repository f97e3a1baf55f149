package strickle.safety;

import static strickle.safety.Vocabulary.list;

import java.util.Set;
import java.util.stream.Collectors;

/** The words by which a piece is known as one that somebody may eat or drink from. */
final class Foods {

  /** Pieces one may eat or drink from, and what is served in them. */
  private static final Set<String> FOOD =
      list(
          "bowl cup mug plate platter dish tray spoon board saucer jar bottle coaster trivet beaker"
              + " goblet pitcher shaker tumbler teapot jug cruet ladle tableware vessel server"
              + " holder carafe decanter cloche stand tureen ramekin cake bread cheese butter salt"
              + " pepper sugar spice fruit honey snack sauce drink serve");

  /** Of these, those that are for something else when one of the next list is named. */
  private static final Set<String> PERHAPS =
      list("vessel server holder dish tray jar bottle board stand drink");

  /** What such a piece holds or is for that nobody eats. */
  private static final Set<String> NO_FOOD =
      list(
          "candle tealight incense pen pencil brush toothbrush soap ring key card phone plant"
              + " planter flower bulb paper towel trinket jewelry jewellery watch coin desk vanity"
              + " bath bathroom sponge plinth lamp sign display");

  private Foods() {}

  /** Whether the name of a piece sounds like it. */
  static boolean isForFood(String name) {
    Set<String> found =
        Vocabulary.wordsOf(name).stream()
            .flatMap(word -> Vocabulary.plain(word, FOOD).stream())
            .collect(Collectors.toSet());
    boolean perhaps = PERHAPS.containsAll(found);
    boolean bare = found.equals(Set.of("stand"));
    return !found.isEmpty() && !bare && !(perhaps && Vocabulary.names(name, NO_FOOD));
  }
}
