package strickle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import strickle.json.AnswerFile;
import strickle.json.VolumeAnswer;

/** {@code strickle volume}: how much a mould holds. */
@Command(
    name = "volume",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    description = {
      "Says how much a mould holds: from solids added and taken away, a vessel of an outer and an"
          + " inner solid, a closed STL mesh, the water that fills it, or a known pour. It needs no"
          + " book.",
      "Solids: box:length,width,height; cylinder:radius,height;"
          + " cone-frustum:bottom-radius,top-radius,height;"
          + " pyramid-frustum:bottom-length,bottom-width,top-length,top-width,height;"
          + " spherical-cap:sphere-radius,height; hemisphere:radius;"
          + " torus:ring-radius,tube-radius; ellipsoid:semi-a,semi-b,semi-c."
          + " A diameter may stand for a radius. Lengths are mm, or carry their unit (4in, 12cm)."
    },
    footer = {
      "",
      "Examples:",
      "  strickle volume --add box:length=200,width=150,height=25",
      "  strickle volume --add cylinder:diameter=4in,height=6in --units us",
      "  strickle volume --outer hemisphere:radius=75 --inner hemisphere:radius=65",
      "  strickle volume --mesh bowl.stl --mesh-unit mm",
      "  strickle volume --water-grams 1180 --water-c 18"
    })
final class VolumeCommand implements Runnable {

  private final Surroundings here;

  @Mixin private final VolumeWays ways = new VolumeWays();
  @Mixin private final UnitsOption units = new UnitsOption();

  @Option(names = "--json", description = "print the answer as JSON (strickle-volume/1), metric")
  private boolean json;

  VolumeCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public void run() {
    Given values = new Given();
    Measures measures = units.read(values);
    VolumeAnswer answer = ways.read(values);
    here.out().print(json ? AnswerFile.write(VolumeAnswer.FORMAT, answer) : text(answer, measures));
  }

  private static String text(VolumeAnswer answer, Measures measures) {
    List<String> lines = new ArrayList<>();
    lines.add("volume  " + measures.volume(answer.volumeMl()));
    for (VolumeAnswer.Part part : answer.parts()) {
      String sign = part.subtract() ? "less " : "";
      String text = sign + part.solid() + ": " + measures.volume(part.volumeMl());
      lines.addAll(Lines.paragraph("  ", "    ", text));
    }
    answer
        .wallMm()
        .ifPresent(mm -> lines.add("wall    " + measures.length(mm) + " at its thinnest"));
    answer.floorMm().ifPresent(mm -> lines.add("floor   " + measures.length(mm)));
    answer.triangles().ifPresent(n -> lines.addAll(mesh(answer, n)));
    answer
        .waterKgPerM3()
        .ifPresent(density -> lines.add(String.format(Locale.ROOT, "water   %.2f kg/m³", density)));
    return String.join("\n", lines) + "\n";
  }

  private static List<String> mesh(VolumeAnswer answer, int triangles) {
    int bodies = answer.bodies().orElse(1);
    String of = bodies == 1 ? "1 body" : bodies + " bodies";
    String twice =
        answer.mayCountTwice().orElse(false)
            ? ". Bodies may overlap or lie in one another: what they share is counted twice"
            : "";
    String text = "closed, " + Words.count(triangles, "triangle") + ", " + of + twice;
    return Lines.paragraph("mesh    ", "        ", text);
  }
}
