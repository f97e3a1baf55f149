package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import strickle.book.Book;
import strickle.book.MeshFile;
import strickle.book.Mould;
import strickle.json.PigmentNote;
import strickle.mix.PigmentCheck;

/** What a maker should look at in a book that can be planned, beside its routes. */
final class BookNotes {

  private static final Measures METRIC = new Measures(false);

  private BookNotes() {}

  /** Sentences without their full stops: of each mix's pigment, and of each mould's mesh. */
  static List<String> of(Book book) {
    List<String> notes = new ArrayList<>(pigments(book));
    for (Mould mould : book.moulds()) {
      mould.mesh().ifPresent(mesh -> notes.add(mesh(mould, mesh)));
    }
    return List.copyOf(notes);
  }

  /** Of each mix whose pigment is too much, or cannot be checked. */
  private static List<String> pigments(Book book) {
    return book.mixes().stream()
        .flatMap(
            mix ->
                PigmentNote.of(PigmentCheck.of(mix, book::material), id -> book.material(id).name())
                    .map(note -> "mix \"" + mix.name() + "\": " + note)
                    .stream())
        .toList();
  }

  // A wrong unit shows in the volume: an inch is 16387 cubic millimetres.
  private static String mesh(Mould mould, MeshFile mesh) {
    return "mould \""
        + mould.name()
        + "\": "
        + METRIC.volume(mesh.measuredMl().orElseThrow())
        + " as measured from "
        + mesh.file()
        + ", one unit of it taken as "
        + (mesh.unit().mm() == 1 ? "1 mm" : "1 inch")
        + (mesh.mayCountTwice()
            ? "; its bodies may overlap or lie in one another, and what they share is counted"
                + " twice"
            : "");
  }
}
