package strickle.cli;

import java.io.PrintStream;
import java.time.Clock;
import java.util.function.BooleanSupplier;

/**
 * What a command knows of the world around it.
 *
 * @param clock what time it is; the zone is the studio's business
 * @param out where the answer goes
 * @param err where faults and progress go
 * @param terminal whether {@code err} is a terminal, on which a line can be written over
 * @param interruption how Ctrl-C is heard
 */
record Surroundings(
    Clock clock,
    PrintStream out,
    PrintStream err,
    BooleanSupplier terminal,
    Interruption interruption) {}
