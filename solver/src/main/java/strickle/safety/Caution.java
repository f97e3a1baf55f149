package strickle.safety;

/** What can hurt somebody, said where the act is, each with its source. No advice by a doctor. */
public enum Caution {
  /** At every pour, and until the concrete is hard. */
  WET_CEMENT(
      "wet cement",
      "wet cement is caustic and burns skin and eyes, often without pain at first: gloves, eye"
          + " protection, water at hand",
      "It is abrasive too, draws water from the skin and holds traces of chromate; some"
          + " people become allergic to it for good. Wash splashes off at once, change what is"
          + " soaked, and use a soap that is neutral or slightly acid.",
      "OSHA guidance 3351; HSE CIS26 as quoted: 5 to 10 % of construction workers may be"
          + " sensitised"),
  /** Whenever dry materials are weighed and mixed. */
  DRY_DUST(
      "dry dust",
      "dust of cement, sand and pigment harms the lungs: wear a fitting mask when weighing, never"
          + " sweep dry",
      "Fine quartz does it slowly and for good. Open bags low over the bucket, add powder to water"
          + " where the recipe lets you, and wipe up wet. How much you breathe cannot be worked out"
          + " from a book.",
      "OSHA 29 CFR 1926.1153 as quoted: 50 µg/m³ of respirable quartz over 8 hours, action from 25"
          + " on; NIOSH recommends 50 at most over up to"
          + " 10 hours"),
  /** Where hardened concrete is worked without water. */
  SANDING(
      "sanding",
      "dust of hardened concrete is fine quartz: sand wet, or with a fitting mask and extraction",
      "A brush or a blower only puts it back into the air.",
      "OSHA 29 CFR 1926.1153 as quoted: 50 µg/m³ of respirable quartz over 8 hours, action from 25"
          + " on"),
  /** Where something heavy has to be carried. */
  LIFTING(
      "lifting",
      "lift with two, or make it smaller",
      "At the very best 23 kg (51 lb), from the floor at arm's length with a poor grip about 9 kg"
          + " (19 lb); for a steady load, held with both hands. A mould full of fluid mix and a bag"
          + " that is half full are not steady: stay well below. Loads are told of from 0.8 of that"
          + " limit on (common practice, no source). What the forms weigh comes on top.",
      "NIOSH lifting equation, DHHS (NIOSH) 94-110: 23 kg at the very best; its other factors"
          + " second-hand, the one for a poor grip a value from memory"),
  /** Where resin, solvent, sealer, paint or glue is used. */
  COATS(
      "resins and solvents",
      "resins, solvents, sealers and glues may burn, poison and sensitise: gloves of the kind the"
          + " sheet names, no flame",
      "Spread rags with drying oil flat to dry: crumpled up they can catch fire by themselves. What"
          + " is wrong on the skin once may be wrong for good.",
      "common practice, no source"),
  /** While coats are put on and dry. */
  VENTILATION(
      "ventilation",
      "air the room while coats and glue are put on and dry",
      "A fan on a fresh pour dries its face and cracks it: cover the pour, then air the room.",
      "common practice, no source"),
  /** Where a piece might be eaten or drunk from. */
  FOOD(
      "food contact",
      "not for food or drink, unless the makers of your mix and sealer, and the law where you sell,"
          + " say so in writing",
      "A sealer called food-safe is so as a whole film on what it was tested on; on bare concrete"
          + " that is not said. Sell it as decorative.",
      "21 CFR 175.300(a): a continuous film over metal, or one that is a functional barrier on a"
          + " suitable substrate"),
  /** Where cement is stored. */
  CHROMATE(
      "chromate",
      "what keeps chromate in cement harmless has a shelf life: write the bag's date on it and keep"
          + " it dry",
      "Cement is sold with no more than 2 ppm of soluble chromate as long as its reducing agent"
          + " works; past the date on the bag it may not.",
      "cemnet.com, Chromium VI in cement: 2 ppm at most, the reducing agent has a shelf life");

  /** What stands under all cautions. */
  public static final String FOLLOW = "Follow your local codes and the product's sheet.";

  private final String title;
  private final String brief;
  private final String more;
  private final String source;

  Caution(String title, String brief, String more, String source) {
    this.title = title;
    this.brief = brief;
    this.more = more;
    this.source = source;
  }

  /** What it is about, in a few words. */
  public String title() {
    return title;
  }

  /** What to do, in one clause without a full stop. */
  public String brief() {
    return brief;
  }

  /** Why, and what else to mind, in sentences. */
  public String more() {
    return more;
  }

  /** Where it is from. */
  public String source() {
    return source;
  }
}
