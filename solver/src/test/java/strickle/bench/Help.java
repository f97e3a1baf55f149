package strickle.bench;

/** What the bench says about itself. */
final class Help {

  /** What the first word may be. */
  static final String COMMANDS = "rcpsp, rcpspmax, jobshop, tardiness, weeks or --help";

  /** What each command takes and tells. */
  static final String TEXT =
      """
      Usage: solver/bench COMMAND ...

      Measures the scheduling engine on published problems and on made-up weeks.

      solver/bench rcpsp DIR --best-known CSV --schedules N[,N...] [--only GLOB]
          Projects in .sm files in DIR and the folders in it. The table has columns
          instance (a file's name), cpm_lb (critical path), lb and ub. A line for each N:
            avgOverCpm    mean deviation from the critical path, in percent
            avgOverBest   mean deviation from ub, in percent
            atBest        how many are as good as ub
      solver/bench rcpspmax DIR --schedules N[,N...] [--only GLOB]
          Projects with least and most lags in .sch files in DIR and the folders in it. In
          each folder, optimum/optimum.csv says of every problem what is proved: a number,
          two with ".." between them, or unsat. 1000 schedules are plenty for 20 activities.
          A line for each N:
            avgOverCpm, avgOverBest, atBest
                          as above, of those solved; of two numbers, the larger is best
            solved        how many that have a schedule got one, of how many
            proved        how many of these are proved to a single number
            infeasible    how many have no schedule; claimed, how many of them got one
      solver/bench jobshop DIR --best-known CSV --schedules N[,N...] [--only GLOB]
          Job shops in .jss files in DIR and the folders in it. The table has columns
          instance (a file's name without .jss), lb and ub. A line for each problem, and
          one for all.
      solver/bench tardiness FILE --best-known FILE --schedules N[,N...]
          Total weighted tardiness on one machine. FILE has the minutes, the weights and
          the due dates of the first problem, then of the next; the other file has the
          best known value of each. A line for each N:
            optimal       how many are as good as the best known, of how many
            avgOverBest   mean deviation in percent, where the best known is above 0
            avgOf         of how many that is the mean
            zeroMissed    of those whose best known is 0, how many are above it
      solver/bench weeks --castings N[,N...] --seconds N [--exact N]
          Made-up books that need so many castings, 1 to 2000, each planned for so many
          seconds by a fresh Java with two searches. A line for each size:
            weightedLateHours, attendedMinutes: of the plan
            schedulesPerSecond: of one search, in a second of processor time, by the
                difference of two plannings; - when every search soon ends by itself
            firstPlanSeconds: until there is a plan
            within1PercentSeconds: from when on both figures of the plan stay within 1
                percent of the final ones
            peakMegabytes: the most memory Java has used, garbage included
          With --exact, an exact model then looks so many seconds at most for fewer late
          hours, and as many for fewer attended minutes (on Linux on amd64 only; it proves
          most weeks of up to 30 castings in a minute):
            lateHoursAboveExact: by how much the plan's weighted late hours exceed the
                fewest possible; - when those are not proved in time
            attendedAboveExact: likewise its attended minutes, in percent; - also when
                the plan is later than it need be
            exactSeconds: how long the model took

        --schedules N   how many schedules a search may generate; a pass of a
                        justification counts as one
        --only GLOB     only files with such names: '*_1.sm', '{ft*,la0?,la1?,la20}.jss'
        --seed N        where the search's chance begins, and for weeks what book is made
                        up; any whole number, 0 when left out
        --threads N     how many problems are scheduled side by side; as many as there
                        are processors when left out. Each search keeps to one thread and
                        finds the same, whatever runs beside it. Not for weeks.
        --help          this

      Best-known values are for the report only; no search is told of them. A result below
      a proved bound is an error. Exit codes: 0 done, 2 the command line or a file is
      wrong, 1 anything else.
      """;

  private Help() {}
}
