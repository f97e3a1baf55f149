package strickle.safety;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words of the trade that steps, materials and pieces are read by. To add one, put its plain
 * form into the text of its list, in lower case: plurals and forms with -ing follow by one rule,
 * {@link #plain}.
 */
final class Vocabulary {

  private static final Pattern GAPS = Pattern.compile("[^\\p{L}]+");
  private static final Pattern DOUBLED = Pattern.compile(".*([b-df-hj-np-tv-z])\\1");

  private static final Map<Act, Set<String>> ACTS =
      Map.of(
          Act.SEAL,
          list(
              "seal sealer sealant reseal sealcoat varnish lacquer impregnate impregnation wax beeswax"
                  + " carnauba oil linseed tung topcoat clearcoat undercoat basecoat overcoat recoat"
                  + " primer prime coat spray resin epoxy acrylic polyurethane urethane shellac"
                  + " siloxane silane repellent hydrophobe hydrophobic waterproof densify densifier"
                  + " hardener"),
          Act.PAINT,
          list(
              "paint repaint limewash whitewash stencil glaze enamel stain dye tint ink airbrush"
                  + " patina pigment color colour"),
          Act.LEAF,
          list("leaf gild foil"),
          Act.GLUE,
          list("glue superglue adhesive bond size mastic caulk silicone"),
          Act.LAY,
          list(
              "felt cork pad lay attach mount decal label sticker stack wrap affix join inlay embed"
                  + " fix fasten stick insert fit screw magnet bumper feet pin hook hanger dot movement"
                  + " stud"),
          Act.PRESS,
          list("press clamp weight"),
          Act.SAND,
          list(
              "sand rub grind polish hone bevel flatten file drill cut abrade scrape saw lap smooth"
                  + " chamfer rasp sandpaper sandblast blast tumble engrave chisel diamond rout"
                  + " router"),
          Act.WET,
          list(
              "wash rinse soak scrub slurry mist etch bag grout skim dip submerge immerse steam"
                  + " hose"),
          Act.HANDLE,
          list(
              "knock pick trim deburr fettle brush wipe dust pack box sign stamp wire thread weigh"
                  + " sort clean turn string remove strip fill patch touch buff burnish mask tape"
                  + " peel tie vacuum price"),
          Act.LOOK,
          list("check inspect look photograph photo count cure store"));

  /** Coats that are named beside what is done with them: spray glue, a coat of paint. */
  static final Set<String> COATS =
      list("coat spray resin epoxy acrylic polyurethane urethane primer oil silicone waterproof");

  /** Coats that glue as well: what is laid into them is glued. */
  static final Set<String> GLUES_TOO = list("resin epoxy polyurethane urethane");

  /** What is rubbed or wiped off again while it is wet, as it should be. */
  static final Set<String> RUBBED_OUT =
      list("wax beeswax carnauba oil linseed tung impregnate impregnation repellent");

  /** How it is rubbed out. */
  static final Set<String> RUBS_OUT = list("buff wipe polish burnish");

  /** What has to come off a coat while it is wet. */
  static final Set<String> TOO_MUCH = list("excess surplus residue haze");

  /** Of lime and water: they want a damp piece. */
  static final Set<String> LIKES_DAMP = list("limewash whitewash");

  /** Of cement: a coat of these is wet work, and closes nothing. */
  static final Set<String> CEMENT_COATS = list("slurry skim");

  /** Shades, which are put on only where the work does not say otherwise: check the colour. */
  static final Set<String> SHADES = list("color colour pigment");

  /** Edges, and what is done to nothing else by the same words. */
  static final Set<String> EDGES = list("edge corner arris rim lip");

  /** Words that take something off an edge. */
  static final Set<String> EASES = list("ease break soften");

  /** Nobody breathes the dust of these. */
  static final Set<String> SOFT =
      list("felt cork wick cord thread string ribbon tape paper tissue foam label sticker leather");

  /** With these, wax is for a candle. */
  static final Set<String> CANDLE = list("wick candle soy scent fragrance pour fill melt");

  /** Wax, which may be a coat or a candle. */
  static final Set<String> WAX = list("wax beeswax");

  /** Ways of putting something on, and nothing else when something to put on is named. */
  static final Set<String> APPLIES = list("brush wipe rub lay mist soak dab roll dip");

  /** Work that is not the putting on of the coat that is named with it: sand the leaf tray. */
  static final Set<String> STAYS =
      list(
          "sand grind hone bevel flatten file drill cut abrade scrape saw deburr fettle trim knock"
              + " pick check inspect photograph weigh sort pack box remove strip cure wash rinse"
              + " scrub etch clean photo count look mask peel price");

  /** What is named behind them is not put on, or not now. */
  static final Set<String> TURNS = list("off from away before after between until without excess");

  /** What has them in it is done to something else than the piece. */
  static final Set<String> NOT_THE_PIECE = list("form mould mold carton crate parcel envelope");

  /** These may be packaging as well as a piece. */
  static final Set<String> PERHAPS_PACKAGING = list("box lid case");

  /** Packaging that is closed, not coated. */
  static final Set<String> PACKAGING = list("carton crate parcel envelope");

  /** Words of work with water. */
  static final Set<String> WATER = list("wet water damp slurry");

  /** Powders are named otherwise. */
  static final Set<String> LIQUID = list("liquid paste slurry dispersion");

  /** Kinds of material that are a coat. */
  static final Set<String> COATINGS =
      list(
          "coating coat sealer sealant paint varnish lacquer wax oil resin epoxy primer shellac"
              + " stain glaze enamel");

  /** Kinds of material that hold cement unless they say otherwise. */
  static final Set<String> BINDERS = list("binder cement");

  private static final Map<String, Act> BY_WORD =
      ACTS.entrySet().stream()
          .flatMap(entry -> entry.getValue().stream().map(word -> Map.entry(word, entry.getKey())))
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  private Vocabulary() {}

  /** The words of a list, parted by spaces. */
  static Set<String> list(String words) {
    return Set.of(words.split(" ", -1));
  }

  /** The plain forms an act is recognised by. */
  static Set<String> words(Act act) {
    return ACTS.get(act);
  }

  /** What a word in its plain form does; empty for most words. */
  static Optional<Act> act(String plain) {
    return Optional.ofNullable(BY_WORD.get(plain));
  }

  /** The words of a text in lower case, in order. */
  static List<String> wordsOf(String text) {
    return GAPS.splitAsStream(text.toLowerCase(Locale.ROOT)).filter(w -> !w.isEmpty()).toList();
  }

  /** Whether a text has a word of a list, in any of its forms. */
  static boolean names(String text, Set<String> list) {
    return wordsOf(text).stream().anyMatch(word -> plain(word, list).isPresent());
  }

  /** A word's plain form that is in a list: dishes is dish, leaves leaf, stencilling stencil. */
  static Optional<String> plain(String word, Set<String> list) {
    if (list.contains(word)) {
      return Optional.of(word);
    }
    return word.endsWith("s") || word.endsWith("ing")
        ? forms(word).filter(list::contains).findFirst()
        : Optional.empty();
  }

  /** The plain form of a word that does something; empty for other words. */
  static Optional<String> plain(String word) {
    return plain(word, BY_WORD.keySet());
  }

  // What a word may be a form of, besides itself.
  private static Stream<String> forms(String word) {
    String ing = without(word, "ing");
    String once = DOUBLED.matcher(ing).matches() ? ing.substring(0, ing.length() - 1) : ing;
    return Stream.of(
        without(word, "s"),
        without(word, "es"),
        without(word, "ies") + "y",
        without(word, "ves") + "f",
        ing,
        ing + "e",
        once);
  }

  // A word that does not end so makes a form that no list has.
  private static String without(String word, String end) {
    return word.endsWith(end) ? word.substring(0, word.length() - end.length()) : "";
  }
}
