package strickle.cli;

import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strickle.book.Fault;
import strickle.book.Faulty;

/**
 * Tells the faults of a mix that was written on the command line as its options say them: a mix
 * speaks of {@code .dry[0].material} and its relativeDensity, a person of {@code --dry sand} and
 * its density.
 *
 * @param dry the names of the dry materials, in order
 * @param pigment the names of the pigments, in order
 */
record RecipeFaults(List<String> dry, List<String> pigment) {

  private static final Pattern PLACE =
      Pattern.compile("^[.](dry|pigment)\\[([0-9]+)](?:[.](material|of|percent|parts))?$");
  private static final String CEMENT =
      "cement behind every --dry, as in cement=45, one of them above 0, or of=dry here";
  private static final String DENSITY =
      "density behind it, as in density=2.65, or --density of the wet mix as measured";

  /** Copies the lists. */
  RecipeFaults {
    dry = List.copyOf(dry);
    pigment = List.copyOf(pigment);
  }

  /**
   * Whatever a reading of the mix makes.
   *
   * @throws Faulty with paths that are read as options, ".dry sand" for "--dry sand"
   */
  <T> T told(Supplier<T> reading) {
    try {
      return reading.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(this::told).toList());
    }
  }

  private Fault told(Fault fault) {
    return switch (fault.path()) {
      case ".airPercent" -> new Fault(".air", fault.found(), fault.right());
      case ".wetDensityKgPerM3" -> new Fault(".density", fault.found(), Measures.WET);
      case ".water.of" -> cement(fault.path(), fault);
      default -> ofMaterial(fault);
    };
  }

  private Fault ofMaterial(Fault fault) {
    Matcher place = PLACE.matcher(fault.path());
    if (!place.matches()) {
      return fault;
    }
    String list = place.group(1);
    List<String> names = list.equals("dry") ? dry : pigment;
    String path = "." + list + " " + names.get(Integer.parseInt(place.group(2)));
    String part = place.group(3) == null ? "material" : place.group(3);
    return switch (part) {
      case "of" -> cement(path + ".of", fault);
      case "material" -> material(path, fault);
      default -> new Fault(path + "." + part, fault.found(), fault.right());
    };
  }

  private static Fault cement(String path, Fault fault) {
    boolean amount = fault.right().contains("cementPercent");
    return new Fault(path, fault.found(), amount ? CEMENT : fault.right());
  }

  private static Fault material(String path, Fault fault) {
    if (fault.found().contains("relativeDensity")) {
      return new Fault(path, "no density", DENSITY);
    }
    boolean twice = fault.right().contains("already");
    return new Fault(path, fault.found(), twice ? "each material once" : fault.right());
  }
}
