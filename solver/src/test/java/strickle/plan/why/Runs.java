package strickle.plan.why;

import java.util.List;
import strickle.book.SampleBook;

/** A run of the sample's piece for tests in which only its tasks matter, or not even those. */
final class Runs {

  private Runs() {}

  static Course course(List<Placed> tasks) {
    return course("L1-1", tasks);
  }

  static Course course(String run, List<Placed> tasks) {
    Chain chain = Chain.of(SampleBook.example(), SampleBook.planterSlate(), 1);
    return new Course(run.substring(0, run.indexOf('-')), run, chain, false, tasks, 0);
  }
}
