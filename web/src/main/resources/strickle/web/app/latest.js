/**
 * Tells the last of several questions from those before it, as an answer that comes late must not
 * take the place of a later one: call what this returns when asking, and what that returns when the
 * answer is there, which says whether nothing has been asked since.
 */
export function asking() {
  let last = 0;
  return () => {
    last += 1;
    const one = last;
    return () => one === last;
  };
}
