package strickle.plan.bound;

/** Something that so many castings have to go through: a form, or somebody's hands. */
interface Bottleneck {

  /** Whether castings of any of these kinds go through it. */
  boolean concerns(int[] castings);

  /** The minute before which so many castings of each kind are not all ready because of it. */
  int ready(int[] castings);
}
