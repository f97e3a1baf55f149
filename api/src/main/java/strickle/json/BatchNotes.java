package strickle.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import strickle.book.Book;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.mix.Batch;
import strickle.mix.BatchLine;

/** What a maker should look at before weighing. */
final class BatchNotes {

  /** Weighed further off than this, in percent, a colour or a mix shows it. */
  private static final double MUCH_PERCENT = 2;

  /** A measured density this far above what is possible is no slip of the scale. */
  private static final double LEAST_AIR_PERCENT = -0.5;

  /** Less than this, in grams, is no leftover. */
  static final double LEAST_LEFTOVER = 1;

  private final Optional<Book> book;
  private final Mix mix;
  private final Map<String, Material> materials;
  private final Batch batch;
  private final List<BatchFilling> fillings;
  private final List<String> spare;
  private final List<String> notes = new ArrayList<>();

  BatchNotes(
      Optional<Book> book,
      Mix mix,
      Map<String, Material> materials,
      Batch batch,
      List<BatchFilling> fillings,
      Collection<String> spare) {
    this.book = book;
    this.mix = mix;
    this.materials = materials;
    this.batch = batch;
    this.fillings = fillings;
    this.spare = List.copyOf(spare);
  }

  /** Every note, the weightiest first. */
  List<String> all() {
    pigment();
    density();
    batch.lines().forEach(this::scale);
    book.ifPresent(this::limits);
    spare();
    return List.copyOf(notes);
  }

  private void pigment() {
    PigmentNote.of(batch.pigment(), this::name).ifPresent(notes::add);
  }

  private String name(String id) {
    return Optional.ofNullable(materials.get(id)).map(Material::name).orElse(id);
  }

  private void density() {
    batch
        .airPercent()
        .ifPresent(
            air -> {
              if (air < LEAST_AIR_PERCENT) {
                notes.add(
                    String.format(
                        Locale.ROOT,
                        "the measured density is %.1f %% above what these materials make without"
                            + " any air: weigh a known volume again, or look at the relative"
                            + " densities",
                        -air));
              }
            });
  }

  private void scale(BatchLine line) {
    if (Math.abs(line.errorPercent()) > MUCH_PERCENT) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s is weighed %.1f %% off: use a finer scale or mix more at once",
              name(line.material()),
              line.errorPercent()));
    }
  }

  private void limits(Book studio) {
    if (batch.wetGrams() > studio.studio().batchLimitGrams()) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the batch is above the studio's limit of %.0f g: mix it in parts",
              studio.studio().batchLimitGrams()));
    }
    int minutes = 0;
    for (BatchFilling filling : fillings) {
      if (filling.mould().isPresent()) {
        Mould mould = studio.mould(filling.mould().get());
        minutes += filling.castings() * mould.pourMinutes();
        forms(studio, mould, filling.castings());
      }
    }
    boolean ofBook = studio.mixes().contains(mix);
    if (ofBook && minutes > mix.workingMinutes()) {
      notes.add(
          String.format(
              Locale.ROOT,
              "pouring takes %d min, but the mix can be worked for %d: mix it in parts",
              minutes,
              mix.workingMinutes()));
    }
  }

  private void spare() {
    if (!spare.isEmpty() && batch.leftoverGrams() < LEAST_LEFTOVER) {
      notes.add(
          "nothing is left over for "
              + String.join(", ", spare)
              + ": a batch that is rounded up is larger than it has to be");
    }
  }

  private void forms(Book studio, Mould mould, int castings) {
    boolean tooFew =
        mould.forms().stream()
            .anyMatch(use -> use.count() * castings > studio.form(use.form()).count());
    if (tooFew) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s: there are not forms enough for %d castings at once",
              mould.name(),
              castings));
    }
  }
}
