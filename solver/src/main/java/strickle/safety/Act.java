package strickle.safety;

import java.util.Set;

/** What a step does to a piece; {@link Vocabulary} has the words it is recognised by. */
public enum Act {
  /** Closes the surface: sealer, varnish, wax, oil, resin. */
  SEAL,
  /** Colours the surface with a film. */
  PAINT,
  /** Lays leaf of metal. */
  LEAF,
  /** Puts on what something is to stick to; it stays open for a while only. */
  GLUE,
  /** Lays something on a face, or a face on something. */
  LAY,
  /** Holds what was laid against its glue. */
  PRESS,
  /** Takes something off with an abrasive or a blade. */
  SAND,
  /** Makes the piece wet. */
  WET,
  /** Handles it otherwise, which no rule minds but that of the wet coat. */
  HANDLE,
  /** Looks at it or leaves it as it is, which marks no coat. */
  LOOK;

  /** They leave something on the piece. */
  static final Set<Act> PUTS_ON = Set.of(SEAL, PAINT, LEAF, GLUE);

  /** They belong together: glue the felt, press the pads on. */
  static final Set<Act> LAYS = Set.of(GLUE, LAY, PRESS);
}
