package strickle.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.logging.LogManager;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program {@code strickle}: finds the command that was asked for and runs it. */
@Command(
    name = "strickle",
    mixinStandardHelpOptions = true,
    version = Version.TEXT,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "Lays out a small concrete-casting studio's week of pours across moulds, cure times and"
          + " finishing steps, works out every batch, and says what a piece costs and what to ask."
    },
    footer = {
      "",
      "Examples:",
      "  strickle plan demo                   the week of a made-up studio",
      "  strickle plan studio.json            your own week, from today on",
      "  strickle replan studio.json …        the rest of the week, as things stand",
      "  strickle promise --help              when a new order can be ready",
      "  strickle what-if --help              what another form or another hour would bring",
      "  strickle bound studio.json           what no plan can beat",
      "  strickle price studio.json           what each piece costs and what to ask",
      "  strickle target --help               whether a price holds a margin, what would make it",
      "  strickle fair --help                 what to bring to a fair, planned",
      "  strickle shopping --help             what to buy for a plan, and by when",
      "  strickle sensitivity --help          which numbers move the profit most",
      "  strickle learn --help                what recorded weeks say of the book",
      "  strickle price-list --help           the prices on paper",
      "  strickle sheet --help                the plan on paper, with cards to weigh by",
      "  strickle calendar --help             the plan for a calendar program",
      "  strickle import-orders --help        orders from a spreadsheet",
      "  strickle export-orders studio.json   orders for a spreadsheet",
      "  strickle volume --help               how much a mould holds",
      "  strickle batch --help                what to weigh for it",
      "  strickle ballast --help              what to lay on a core, how hard the mix presses",
      "  strickle curing --help               how long curing takes in your room",
      "  strickle drying planter.csv          when a drying piece has dried far enough",
      "  strickle room studio.json            how pours dry and coats take in your room",
      "  strickle cautions studio.json        what to be careful of, and who says so",
      "  strickle lift --mass 25kg            how near that is to what one should lift",
      "  strickle check studio.json           whether the book can be read and planned",
      "  strickle serve                       the studio as a service on this machine",
      "  strickle plan --help                 all about one command",
      "",
      "Exit codes: 0 done, 2 the command line or the book is wrong, 1 anything else."
    })
public final class Main implements Runnable {

  private static final int HELP_WIDTH = 90;

  /** Every command by its name, in the order they are told. */
  private static final Map<String, Function<Surroundings, Object>> COMMANDS = all();

  @Spec private CommandSpec spec;

  private Main() {}

  /**
   * Runs a command on the streams of the process and ends it: 0 when done, 2 for a wrong command
   * line or book, 1 for anything else.
   *
   * @param arguments the command and what belongs to it
   */
  public static void main(String[] arguments) {
    // What libraries log is not for makers; some would write it to standard error.
    LogManager.getLogManager().reset();
    Output output = new Output(new FileOutputStream(FileDescriptor.out));
    PrintStream out = new PrintStream(new BufferedOutputStream(output), false, UTF_8);
    PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, UTF_8);
    Interruption interruption = new Interruption();
    Clock clock = Clock.systemUTC();
    Surroundings here = new Surroundings(clock, out, err, Terminal::onStandardError, interruption);
    int code = run(here, arguments);
    out.flush();
    int honest = output.failure().map(why -> unwritten(why, err)).orElse(code);
    interruption.finished(honest);
    System.exit(honest);
  }

  private static int unwritten(String why, PrintStream err) {
    return Outcome.failed("the output could not be written: " + why, err);
  }

  /**
   * Runs a command.
   *
   * @return the exit code
   */
  static int run(Surroundings here, String... arguments) {
    try {
      return commandLine(here, arguments).execute(arguments);
    } catch (Error beyondHelp) {
      return Outcome.of(beyondHelp, here.err());
    }
  }

  /** The names of all commands, in the order they are told. */
  static Set<String> commands() {
    return COMMANDS.keySet();
  }

  /** The program with all its commands and their options. */
  static CommandLine commandLine(Surroundings here) {
    return with(here, COMMANDS);
  }

  // To read the options of every command takes longer than most commands: the one that is asked for
  // is enough.
  private static CommandLine commandLine(Surroundings here, String[] arguments) {
    return Stream.of(arguments)
        .limit(1)
        .filter(COMMANDS::containsKey)
        .map(name -> with(here, Map.of(name, COMMANDS.get(name))))
        .findFirst()
        .orElseGet(() -> commandLine(here));
  }

  private static CommandLine with(
      Surroundings here, Map<String, Function<Surroundings, Object>> commands) {
    CommandLine line = new CommandLine(new Main());
    commands.values().forEach(command -> line.addSubcommand(command.apply(here)));
    // Only here, so that a mistyped command is told and not what stands behind it.
    line.getCommandSpec().parser().stopAtUnmatched(true);
    return line.setOut(new PrintWriter(new OutputStreamWriter(here.out(), UTF_8), true))
        .setErr(new PrintWriter(new OutputStreamWriter(here.err(), UTF_8), true))
        .setExpandAtFiles(false)
        .setUsageHelpWidth(HELP_WIDTH)
        .setParameterExceptionHandler(
            (wrong, given) -> Outcome.ofWrongCommandLine(wrong, here.err()))
        .setExecutionExceptionHandler((thrown, which, given) -> Outcome.of(thrown, here.err()));
  }

  private static Map<String, Function<Surroundings, Object>> all() {
    Map<String, Function<Surroundings, Object>> all = new LinkedHashMap<>();
    all.put("plan", PlanCommand::new);
    all.put("promise", PromiseCommand::new);
    all.put("what-if", WhatIfCommand::new);
    all.put("bound", BoundCommand::new);
    all.put("replan", ReplanCommand::new);
    all.put("price", PriceCommand::new);
    all.put("target", TargetCommand::new);
    all.put("sensitivity", SensitivityCommand::new);
    all.put("fair", FairCommand::new);
    all.put("shopping", ShoppingCommand::new);
    all.put("learn", LearnCommand::new);
    all.put("price-list", PriceListCommand::new);
    all.put("sheet", SheetCommand::new);
    all.put("calendar", CalendarCommand::new);
    all.put("import-orders", ImportOrdersCommand::new);
    all.put("export-orders", ExportOrdersCommand::new);
    all.put("volume", VolumeCommand::new);
    all.put("batch", BatchCommand::new);
    all.put("room", RoomCommand::new);
    all.put("coat", CoatCommand::new);
    all.put("cautions", CautionsCommand::new);
    all.put("lift", LiftCommand::new);
    all.put("ballast", BallastCommand::new);
    all.put("curing", CuringCommand::new);
    all.put("drying", DryingCommand::new);
    all.put("check", CheckCommand::new);
    all.put("demo", DemoCommand::new);
    all.put("serve", ServeCommand::new);
    return Collections.unmodifiableMap(all);
  }

  @Override
  public void run() {
    List<String> names = List.copyOf(spec.subcommands().keySet());
    String most = String.join(", ", names.subList(0, names.size() - 1));
    String right = "Missing command: " + most + " or " + names.get(names.size() - 1);
    throw new ParameterException(spec.commandLine(), right);
  }
}
