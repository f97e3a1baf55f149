package strickle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import strickle.book.Dose;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Part;

/** Cautions for one act at the bench, with no book: each once, where the act is. */
public final class BenchCautions {

  /** Doses of other kinds, such as admixtures, are liquids as a rule. */
  private static final Set<String> POWDERS = Vocabulary.list("pigment material powder");

  private BenchCautions() {}

  /**
   * What weighing and mixing a batch calls for; lifting where all of it is heavy.
   *
   * @param materials finds the materials of the mix
   */
  public static List<Shown> ofBatch(
      Mix mix, Function<String, Material> materials, double wetGrams) {
    List<Material> dry = mix.dry().stream().map(Part::material).map(materials).toList();
    Stream<Material> doses =
        mix.pigment().stream()
            .map(Dose::material)
            .map(materials)
            .filter(dose -> Vocabulary.names(dose.kind(), POWDERS))
            .filter(dose -> !Vocabulary.names(dose.name(), Vocabulary.LIQUID));
    boolean cement = dry.stream().anyMatch(one -> one.cementPercent().orElse(1) > 0);
    List<Shown> shown = new ArrayList<>();
    add(shown, Caution.WET_CEMENT, cement ? Stream.of("mix and pour it") : Stream.of());
    add(
        shown,
        Caution.DRY_DUST,
        Stream.concat(dry.stream(), doses).map(Material::name).map("weigh "::concat));
    shown.addAll(ofLoads(List.of(new Load("all of it", wetGrams))));
    return List.copyOf(shown);
  }

  /** What putting on a coat calls for, whichever it is. */
  public static List<Shown> ofCoats() {
    List<String> where = List.of("the coat");
    return List.of(new Shown(Caution.COATS, where), new Shown(Caution.VENTILATION, where));
  }

  /** Lifting, where one of some loads is heavy; none otherwise. */
  public static List<Shown> ofLoads(List<Load> loads) {
    List<Shown> shown = new ArrayList<>();
    add(shown, Caution.LIFTING, Cautions.heavy(loads));
    return List.copyOf(shown);
  }

  private static void add(List<Shown> shown, Caution caution, Stream<String> where) {
    List<String> once = where.distinct().toList();
    if (!once.isEmpty()) {
      shown.add(new Shown(caution, once));
    }
  }
}
