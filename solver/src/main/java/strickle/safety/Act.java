package strickle.safety;

import java.util.List;

/** What a step does to a piece, by the words of the trade. Steps are free text. */
public enum Act {
  /** Closes the surface: sealer, varnish, wax, oil. */
  SEAL(
      "seal",
      "seals",
      "sealing",
      "sealer",
      "sealant",
      "reseal",
      "varnish",
      "varnishing",
      "lacquer",
      "lacquering",
      "impregnate",
      "impregnating",
      "wax",
      "waxing",
      "oil",
      "oiling",
      "topcoat",
      "clearcoat",
      "primer",
      "prime",
      "priming"),
  /** Colours the surface with a film. */
  PAINT("paint", "paints", "painting", "repaint", "limewash", "stencil", "stencilling", "glaze"),
  /** Lays leaf of metal. */
  LEAF("leaf", "leafing", "gild", "gilding"),
  /** Puts on what something is to stick to; it stays open for a while only. */
  GLUE("glue", "gluing", "glueing", "adhesive", "bond", "bonding", "stick", "sticking", "size"),
  /** Lays something on a face, or a face on something. */
  LAY(
      "felt", "felting", "cork", "pad", "pads", "lay", "laying", "attach", "mount", "decal",
      "label", "stack", "wrap", "affix", "join", "joining", "inlay", "embed"),
  /** Holds what was laid against its glue. */
  PRESS("press", "presses", "pressing", "clamp", "clamps", "clamping"),
  /** Takes something off with an abrasive or a blade. */
  SAND(
      "sand",
      "sands",
      "sanding",
      "rub",
      "rubbing",
      "grind",
      "grinding",
      "polish",
      "polishing",
      "hone",
      "honing",
      "bevel",
      "bevelling",
      "beveling",
      "flatten",
      "flattening",
      "file",
      "filing",
      "drill",
      "drilling",
      "cut",
      "cutting",
      "abrade",
      "scrape",
      "buff",
      "buffing",
      "saw"),
  /** Makes the piece wet. */
  WET(
      "wash",
      "washing",
      "rinse",
      "rinsing",
      "soak",
      "soaking",
      "scrub",
      "scrubbing",
      "slurry",
      "mist",
      "misting",
      "etch",
      "etching",
      "bag",
      "grout",
      "grouting"),
  /** Handles it otherwise, which no rule minds. */
  HANDLE(
      "knock",
      "pick",
      "trim",
      "trimming",
      "deburr",
      "fettle",
      "brush",
      "wipe",
      "dust",
      "check",
      "inspect",
      "pack",
      "box",
      "sign",
      "stamp",
      "wire",
      "thread",
      "photograph",
      "weigh",
      "sort",
      "clean",
      "cure",
      "turn",
      "string");

  private final String words;

  Act(String... words) {
    this.words = String.join(" ", words);
  }

  /** The words it is recognised by, in lower case. */
  public List<String> words() {
    return List.of(words.split(" ", -1));
  }
}
