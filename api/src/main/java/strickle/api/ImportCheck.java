package strickle.api;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;
import strickle.json.BookPart;
import strickle.json.MeshPart;
import strickle.json.Message;
import strickle.mix.StlMesh;

/** Refuses drying logs and meshes of a studio file that could not have been put in one by one. */
final class ImportCheck {

  private final List<Fault> faults = new ArrayList<>();

  private ImportCheck() {}

  /**
   * The same parts, once they are found to be right.
   *
   * @throws Faulty with every fault, paths from the whole file
   */
  static List<BookPart> of(List<BookPart> parts) {
    ImportCheck check = new ImportCheck();
    Map<String, Integer> places = new HashMap<>();
    for (BookPart part : parts) {
      int place = places.merge(part.collection(), 1, Integer::sum) - 1;
      check.look(part, "$.beside." + part.collection() + "[" + place + "]");
    }
    if (!check.faults.isEmpty()) {
      throw new Faulty(check.faults);
    }
    return parts;
  }

  private void look(BookPart part, String path) {
    if (part.collection().equals(Collection.DRYING.name())) {
      told(path + ".body", true, () -> log(part));
    } else if (part.collection().equals(MeshPart.COLLECTION)) {
      told(
          path + ".id",
          false,
          () -> new MeshFile(part.id(), LengthUnit.MM, OptionalDouble.empty()));
      told(path + ".body", false, () -> StlMesh.read(MeshPart.bytes(part.body())));
    }
  }

  private static void log(BookPart part) {
    DryingNote note = Message.parse(part.body(), DryingNote.class);
    if (!note.id().equals(part.id())) {
      String right = "the id of the whole, \"" + part.id() + '"';
      throw new Faulty(List.of(new Fault("$.id", '"' + note.id() + '"', right)));
    }
  }

  /** Does a part of the work; the paths of its faults lead on from here, or are this one. */
  private void told(String path, boolean inner, Runnable work) {
    try {
      work.run();
    } catch (Faulty faulty) {
      faulty.faults().stream()
          .map(
              one ->
                  new Fault(
                      inner ? path + one.path().replaceFirst("^\\$", "") : path,
                      one.found(),
                      one.right()))
          .forEach(faults::add);
    }
  }
}
