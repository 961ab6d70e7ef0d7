package sheathwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Interruption;
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.NamedValues;
import sheathwright.cli.pipe.Voice;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.NewFile;
import sheathwright.job.solve.SolvedTable;
import sheathwright.job.solve.Solver;
import sheathwright.job.table.CsvFile;

/** Solves a whole table at once. */
@Command(
    name = "solve",
    mixinStandardHelpOptions = true,
    description = {
      "Solve a whole table at once. The answer goes to standard output as CSV, its summary to standard error: what was"
          + " found, what no plan can beat, and \"proven\" where the two meet, else \"open\"; and where half a saw cut less on"
          + " each piece would save something, what it would save.",
      "The same table gives the same plan. At the limit of seconds the best plan of cuts found by then is given, and Ctrl-C"
          + " gives the best found so far, with what no plan can beat."
    },
    footerHeading = "%nSolvers:%n",
    footer = {
      "  cut_sheets  pieces out of the fewest sheets, by cuts from edge to edge",
      "    columns   width_in (along the strength axis), height_in, count, label",
      "    options   sheet_width_in=96 sheet_height_in=48 kerf_in=1/8 seconds=10",
      "              on_hand_in=48x24,30x30 (offcuts, used before a sheet is bought)",
      "              certificate=FILE (the plan with its proof, for verify)",
      "    answer    a line for each piece; it is never turned",
      "  cut_stock   pieces out of the cheapest sticks of several lengths",
      "    columns   length_in, count, label",
      "    options   stock_ft=8,10,12 stock_usd=4.10,5.35,6.60 kerf_in=1/8",
      "              trim_in=0 (off each end) on_hand_in=60,35 seconds=10",
      "              certificate=FILE (the plan with its proof, for verify)",
      "    answer    a line for each stick; waste_in is what every cut leaves",
      "              between the trims; labels, if there are any, as pieces has them",
      "  level_plane the flat plane over sagged rafters that needs least build-up",
      "    columns   x_in (across the rafters), y_in (up the slope), z_in (height",
      "              above the string, low wood negative), lo_in, hi_in (build-up",
      "              at this place), notes of any other name",
      "    options   objective=total (of all build-up) or largest (build-up)",
      "              cap_in= (no build-up above this) target=plane or lines",
      "              (a straight line over each rafter, flat across or not)",
      "    answer    the same lines with build_up_in; of equal planes the one",
      "              least steep across, then up",
      "  forecast    bad places of a roof whose zones are not alike",
      "    columns   zone, places, seen, seen_bad, odds (1), seen_share_pct (100:",
      "              bad places that show as bad to whoever looks)",
      "    options   alpha= beta= (of the firm's history, see fit) pmf=FILE",
      "    answer    a line for each zone and one for all",
      "  fit         what finished jobs say of the next: alpha and beta",
      "    columns   as history.csv has them: job, closed_on, sheets, bad",
      "    options   roof_sheets=44 (to compare by) by=COLUMN seed=20260101",
      "    answer    all jobs, and each class of 8 or more: two fits, their",
      "              range, and how often the forecasts would have held",
      "  pooled_stock sheets for several houses at once",
      "    columns   job, sheets, seen, seen_bad, and others",
      "    options   alpha= beta= or history=FILE percentile=90 by=COLUMN",
      "    answer    a line for each delivery: one by one, and together",
      "",
      "Examples:",
      "  sheathwright solve cut_sheets pieces.csv kerf_in=1/8 seconds=5",
      "  sheathwright solve cut_stock blocks.csv stock_ft=8,12 stock_usd=4.10,6.60",
      "  sheathwright solve level_plane readings.csv objective=largest cap_in=3/4",
      "  sheathwright solve fit history.csv roof_sheets=60",
      "  sheathwright solve forecast zones.csv alpha=1.47 beta=21.8"
    })
final class SolveCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "SOLVER",
      description = "cut_sheets, cut_stock, level_plane, forecast, fit or pooled_stock")
  private String name;

  @Parameters(index = "1", paramLabel = "TABLE", description = "a CSV file; - for standard input")
  private Path table;

  @Parameters(
      index = "2..*",
      arity = "0..*",
      paramLabel = "OPTION=VALUE",
      description = "the solver's options")
  private List<String> options = new ArrayList<>();

  @Option(names = "--json", description = "one array of objects instead of CSV")
  private boolean isJson;

  @Override
  public Integer call() throws IOException {
    Solver solver = solver();
    Map<String, String> given = NamedValues.of(options, "option=value", spec);
    CsvFile file = Dash.table(table);
    Watch watch = Watch.over(spec);
    try (Interruption interruption = new Interruption(watch)) {
      SolvedTable answer = solver.solve(file, given, interruption::lasting);
      watch.clear();
      if (answer.beside().isPresent()) {
        write(answer.beside().get());
      }
      say(answer);
      if (interruption.hasCome()) {
        spec.commandLine().getErr().println("stopped: this is the best that was found so far");
      }
    }
    return 0;
  }

  private void say(SolvedTable answer) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (isJson) {
      JsonRows.write(out, answer.named());
    } else {
      answer.writeTo(out);
    }
    out.flush();
    Voice.sayBeside(spec, answer.summary());
    answer.nearMiss().ifPresent(line -> Voice.sayBeside(spec, line));
  }

  /** A second table goes to a file that is not there yet. */
  private static void write(SolvedTable.Beside beside) throws IOException {
    StringBuilder text = new StringBuilder();
    beside.table().writeTo(text);
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    NewFile.once(Path.of(beside.file()), "name another, or move it elsewhere")
        .write(out -> out.write(bytes));
  }

  private Solver solver() {
    try {
      return Solver.named(name);
    } catch (RefusedException unknown) {
      throw new ParameterException(spec.commandLine(), unknown.getMessage());
    }
  }
}
