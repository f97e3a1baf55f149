package strickle.bench;

/** Small problems in the published formats, typed in. */
final class Tiny {

  /**
   * Made up, in the format of PSPLIB's single-mode projects. By hand: job 2 takes all three units
   * for 2 minutes, and 3 and 4 two units each for 3 and 4, one after the other: 9, where the
   * longest path has only 2 + 4.
   */
  static final String PROJECT =
      """
      ************************************************************************
      file with basedata            : made up
      initial value random generator: 1
      ************************************************************************
      projects                      :  1
      jobs (incl. supersource/sink ):  5
      horizon                       :  9
      RESOURCES
        - renewable                 :  2   R
        - nonrenewable              :  0   N
        - doubly constrained        :  0   D
      ************************************************************************
      PROJECT INFORMATION:
      pronr.  #jobs rel.date duedate tardcost  MPM-Time
          1      3      0        6        0        6
      ************************************************************************
      PRECEDENCE RELATIONS:
      jobnr.    #modes  #successors   successors
         1        1          2           2   3
         2        1          1           4
         3        1          1           5
         4        1          1           5
         5        1          0
      ************************************************************************
      REQUESTS/DURATIONS:
      jobnr. mode duration  R 1  R 2
      ------------------------------------------------------------------------
        1      1     0       0    0
        2      1     2       3    0
        3      1     3       2    1
        4      1     4       2    0
        5      1     0       0    0
      ************************************************************************
      RESOURCEAVAILABILITIES:
        R 1  R 2
          3    1
      ************************************************************************
      """;

  /**
   * H. Fisher, G. L. Thompson, Probabilistic learning combinations of local job-shop scheduling
   * rules, in: Industrial Scheduling (1963) 225-251, instance 6x6; proved best 55.
   */
  static final String FT06 =
      """
      #+++++++++++++++++++++++++++++
      # Fisher and Thompson 6x6 instance
      6 6
      2  1  0  3  1  6  3  7  5  3  4  6
      1  8  2  5  4 10  5 10  0 10  3  4
      2  5  3  4  5  8  0  9  1  1  4  7
      1  5  0  5  2  5  3  3  4  8  5  9
      2  9  1  3  4  5  5  4  0  3  3  1
      1  3  3  3  5  9  0 10  4  4  2  1
      """;

  /** Made up. By hand: machine 0 is needed for 3 + 4 minutes, and 7 are enough. */
  static final String JOB_SHOP = "# made up\n2 2\n0 3 1 2\n1 2 0 4\n";

  /**
   * Made up, in the format of the OR-Library's wt40: two problems of three jobs. By hand: of the
   * first, minutes 2 3 4, weights 1 5 1, due at 2 3 20: the second job first, then the first, 3
   * late, 3 in all (in the order of the jobs 10). Of the second everything can be on time.
   */
  static final String ONE_MACHINE =
      """
           2     3
           4     1     5     1
           2     3    20
           1     1     1     1     1     1     9     9     9
      """;

  /**
   * Made up, in the format of projects with lags. By hand: 1 runs for 5 and takes one of three
   * units, 2 starts 1 to 3 after it and takes the other two for 2, and 3 takes all three for 4, 2
   * after the start of 2 or later: it begins when 1 has ended, at 5, and all ends at 9, where the
   * longest path has only 1 + 2 + 4. If 2 took all three units too, it could not start in time.
   */
  static final String LAGS =
      """
      3\t2\t0\t0
      0\t1\t1\t1\t[0]
      1\t1\t2\t2\t4\t[1]\t[5]
      2\t1\t2\t1\t3\t[-3]\t[2]
      3\t1\t1\t4\t[4]
      4\t1\t0
      0\t1\t0\t0\t0
      1\t1\t5\t1\t0
      2\t1\t2\t2\t0
      3\t1\t4\t3\t1
      4\t1\t0\t0\t0
      3\t1
      """;

  /** {@link #LAGS}, but 2 takes all three units. */
  static final String LAGS_WITHOUT_SCHEDULE = LAGS.replace("2\t1\t2\t2\t0", "2\t1\t2\t3\t0");

  private Tiny() {}
}
