package strickle.book;

/**
 * A solid that a mould's shape is put together from. Every length is in millimetres, above 0 and at
 * most {@value #LONGEST_MM}; an end of a frustum may be 0 (a cone, a pyramid). Constructors throw
 * {@link Faulty} with every fault, its path relative to the solid.
 */
public sealed interface Solid {

  /** The longest length taken, in millimetres: more is a slip of the unit, not a mould. */
  double LONGEST_MM = 100_000;

  /**
   * How far the proportions of a pyramid frustum's ends may differ, as a fraction: room for
   * measures that were rounded, with which the volume formula is off by no more than about a
   * millionth.
   */
  double PROPORTION_TOLERANCE = 0.005;

  /** A box with right angles. */
  record Box(double lengthMm, double widthMm, double heightMm) implements Solid {

    /** Throws {@link Faulty} unless every length is above 0. */
    public Box {
      Check check = new Check();
      check.positive(".lengthMm", lengthMm, LONGEST_MM);
      check.positive(".widthMm", widthMm, LONGEST_MM);
      check.positive(".heightMm", heightMm, LONGEST_MM);
      check.done();
    }
  }

  /** An upright cylinder. */
  record Cylinder(double radiusMm, double heightMm) implements Solid {

    /** Throws {@link Faulty} unless both lengths are above 0. */
    public Cylinder {
      Check check = new Check();
      check.positive(".radiusMm", radiusMm, LONGEST_MM);
      check.positive(".heightMm", heightMm, LONGEST_MM);
      check.done();
    }
  }

  /** A cone with its tip cut off parallel to the base; one radius may be 0 (a whole cone). */
  record ConeFrustum(double bottomRadiusMm, double topRadiusMm, double heightMm) implements Solid {

    /** Throws {@link Faulty} unless the height and at least one radius are above 0. */
    public ConeFrustum {
      Check check = new Check();
      check.number(".bottomRadiusMm", bottomRadiusMm, 0, LONGEST_MM);
      check.number(".topRadiusMm", topRadiusMm, 0, LONGEST_MM);
      check.positive(".heightMm", heightMm, LONGEST_MM);
      check.that(
          bottomRadiusMm != 0 || topRadiusMm != 0,
          ".bottomRadiusMm",
          "0, and 0 at the top as well",
          "a radius above 0 at one end at least");
      check.done();
    }
  }

  /**
   * A pyramid with its tip cut off parallel to its rectangular base, so that both ends have the
   * same proportions; one end may be 0 by 0 (a whole pyramid).
   */
  record PyramidFrustum(
      double bottomLengthMm,
      double bottomWidthMm,
      double topLengthMm,
      double topWidthMm,
      double heightMm)
      implements Solid {

    /** Throws {@link Faulty} unless height and one end are above 0 and both ends are similar. */
    public PyramidFrustum {
      Check check = new Check();
      check.number(".bottomLengthMm", bottomLengthMm, 0, LONGEST_MM);
      check.number(".bottomWidthMm", bottomWidthMm, 0, LONGEST_MM);
      check.number(".topLengthMm", topLengthMm, 0, LONGEST_MM);
      check.number(".topWidthMm", topWidthMm, 0, LONGEST_MM);
      check.positive(".heightMm", heightMm, LONGEST_MM);
      check.that(
          bottomLengthMm * bottomWidthMm != 0 || topLengthMm * topWidthMm != 0,
          ".bottomLengthMm",
          "no area at either end",
          "a length and a width above 0 at one end at least");
      check.done();
      similar(check, bottomLengthMm, bottomWidthMm, topLengthMm, topWidthMm);
      check.done();
    }
  }

  /** A slice off a sphere; its height is at most the sphere's diameter (then it is the sphere). */
  record SphericalCap(double sphereRadiusMm, double heightMm) implements Solid {

    /** Throws {@link Faulty} unless both lengths are above 0 and the height fits the sphere. */
    public SphericalCap {
      Check check = new Check();
      check.positive(".sphereRadiusMm", sphereRadiusMm, LONGEST_MM);
      check.positive(".heightMm", heightMm, LONGEST_MM);
      check.that(
          !(sphereRadiusMm > 0 && heightMm > 2 * sphereRadiusMm),
          ".heightMm",
          Show.number(heightMm),
          "at most the sphere's diameter, " + Show.number(2 * sphereRadiusMm));
      check.done();
    }
  }

  /** Half a sphere. */
  record Hemisphere(double radiusMm) implements Solid {

    /** Throws {@link Faulty} unless the radius is above 0. */
    public Hemisphere {
      Check check = new Check();
      check.positive(".radiusMm", radiusMm, LONGEST_MM);
      check.done();
    }
  }

  /** A ring: a tube whose middle line is a circle of the ring radius. */
  record Torus(double ringRadiusMm, double tubeRadiusMm) implements Solid {

    /**
     * Throws {@link Faulty} unless both radii are above 0 and the tube is no thicker than the ring.
     */
    public Torus {
      Check check = new Check();
      check.positive(".ringRadiusMm", ringRadiusMm, LONGEST_MM);
      check.positive(".tubeRadiusMm", tubeRadiusMm, LONGEST_MM);
      check.that(
          !(ringRadiusMm > 0 && tubeRadiusMm > ringRadiusMm),
          ".tubeRadiusMm",
          Show.number(tubeRadiusMm),
          "at most the ring's radius, " + Show.number(ringRadiusMm));
      check.done();
    }
  }

  /** An ellipsoid by its three half axes. */
  record Ellipsoid(double semiAMm, double semiBMm, double semiCMm) implements Solid {

    /** Throws {@link Faulty} unless every half axis is above 0. */
    public Ellipsoid {
      Check check = new Check();
      check.positive(".semiAMm", semiAMm, LONGEST_MM);
      check.positive(".semiBMm", semiBMm, LONGEST_MM);
      check.positive(".semiCMm", semiCMm, LONGEST_MM);
      check.done();
    }
  }

  private static void similar(
      Check check, double bottomLength, double bottomWidth, double topLength, double topWidth) {
    double one = bottomLength * topWidth;
    double other = bottomWidth * topLength;
    check.that(
        Math.abs(one - other) <= PROPORTION_TOLERANCE * Math.max(one, other),
        ".topWidthMm",
        Show.number(topWidth),
        "ends of the same proportions (length to width), as a pyramid frustum has; "
            + "for other ends give the mould's volumeMl or a mesh");
  }
}
