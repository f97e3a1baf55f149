package strickle.book;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the mixes of a book need to know of their materials: that they are there, are weighed in
 * grams, and have the density and cement content that the mix is worked out from.
 */
final class MixRules {

  private final Book book;
  private final Check check;

  /** Paths already told of: a material wanting in several mixes is one fault, not several. */
  private final Set<String> told = new HashSet<>();

  MixRules(Book book, Check check) {
    this.book = book;
    this.check = check;
  }

  /** Notes every fault, mix by mix. */
  void apply() {
    for (int i = 0; i < book.mixes().size(); i++) {
      mix("$.mixes[" + i + "]", book.mixes().get(i));
    }
  }

  private void mix(String path, Mix mix) {
    for (int i = 0; i < mix.dry().size(); i++) {
      weighed(path + ".dry[" + i + "].material", mix.dry().get(i).material(), mix);
    }
    for (int i = 0; i < mix.pigment().size(); i++) {
      weighed(path + ".pigment[" + i + "].material", mix.pigment().get(i).material(), mix);
    }
    if (mix.countsCement()) {
      cement(path, mix);
    }
  }

  private void weighed(String path, String id, Mix mix) {
    Register.of(book.materials()).mustHave(check, path, id);
    Optional<Material> known = Register.of(book.materials()).find(id);
    known.ifPresent(
        material -> {
          must(
              material.unit().equals("g"),
              pathOf(material) + ".unit",
              Show.text(material.unit()),
              "\"g\", because mix " + Show.text(mix.id()) + " weighs it out");
          must(
              mix.wetDensityKgPerM3().isPresent() || material.relativeDensity().isPresent(),
              pathOf(material) + ".relativeDensity",
              Show.NOTHING,
              "a number from 0.05 to 25, because mix "
                  + Show.text(mix.id())
                  + " gives no wetDensityKgPerM3");
        });
  }

  private void cement(String path, Mix mix) {
    List<Material> dry = new ArrayList<>();
    mix.dry()
        .forEach(part -> Register.of(book.materials()).find(part.material()).ifPresent(dry::add));
    for (Material material : dry) {
      must(
          material.cementPercent().isPresent(),
          pathOf(material) + ".cementPercent",
          Show.NOTHING,
          "a number from 0 to 100, because mix "
              + Show.text(mix.id())
              + " takes a percentage of the cement");
    }
    boolean anyCement =
        dry.size() < mix.dry().size()
            || dry.stream().anyMatch(material -> material.cementPercent().orElse(1) > 0);
    must(
        anyCement,
        path + ".dry",
        "no cement in any dry material",
        "some cement, because the mix takes a percentage of it");
  }

  private String pathOf(Material material) {
    return "$.materials[" + Register.of(book.materials()).placeOf(material.id()) + "]";
  }

  private void must(boolean holds, String path, String found, String right) {
    if (!holds && told.add(path)) {
      check.fault(path, found, right);
    }
  }
}
