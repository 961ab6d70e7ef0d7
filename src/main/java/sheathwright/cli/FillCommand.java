package sheathwright.cli;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.FillTally;
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.Watch;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.NewFile;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.fill.FilledRow;
import sheathwright.workbook.page.FillBook;

/** Fills one function down a table. */
@Command(
    name = "fill",
    mixinStandardHelpOptions = true,
    description = {
      "Fill one library function down a table: the same rows, with result columns and an error column appended.",
      "A blank cell or an absent column takes the parameter's preset. Rows that are refused say why; the others are filled.",
      "Columns named job or id, or beginning with note, are carried through as they are."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright fill nails_per_sheet cases.csv",
      "  sheathwright fill rafter_max_span cases.csv -o spans.xlsx",
      "  sort cases.csv | sheathwright fill nails_per_sheet - --json"
    })
final class FillCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FUNCTION", description = "the function's name")
  private String function;

  @Parameters(
      index = "1",
      paramLabel = "TABLE",
      description = "a CSV file whose header names parameters; - for standard input")
  private Path table;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      description =
          "write to a .csv or .json file, or to a .xlsx file with live formulas; else, or as -, to standard output")
  private Path output;

  @Option(names = "--json", description = "to standard output, one array of objects instead of CSV")
  private boolean isJson;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    Card card = card(function, spec);
    boolean isStandard = output == null || Dash.is(output);
    requireOneForm(isStandard);
    FilledLines lines = FilledLines.of(card, Dash.table(table));
    Watch watch = isStandard ? Watch.besideLines(spec) : Watch.over(spec);
    FillTally tally = new FillTally(lines, spec.commandLine().getErr(), watch);
    if (isStandard) {
      writeText(lines, spec.commandLine().getOut(), tally, isJson);
    } else if (hasEnding(".xlsx")) {
      NewFile.at(output, force).write(out -> FillBook.write(lines, out, tally));
    } else {
      NewFile.at(output, force)
          .write(
              out ->
                  writeText(
                      lines,
                      new OutputStreamWriter(out, StandardCharsets.UTF_8),
                      tally,
                      hasEnding(".json")));
    }
    tally.say();
    return tally.isClean() ? 0 : Main.REFUSED;
  }

  private void requireOneForm(boolean isStandard) {
    if (!isStandard && isJson) {
      throw new ParameterException(
          spec.commandLine(),
          "--json is for standard output; end the file's name in .json, and leave it away");
    }
    if (!isStandard && !hasEnding(".csv") && !hasEnding(".json") && !hasEnding(".xlsx")) {
      throw new ParameterException(
          spec.commandLine(),
          output + " must end in .csv, .json or .xlsx: the ending says what is written");
    }
  }

  private boolean hasEnding(String ending) {
    return output.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private static void writeText(FilledLines lines, Writer out, FillTally tally, boolean isJson)
      throws IOException {
    if (isJson) {
      JsonRows json = new JsonRows(out);
      for (FilledRow row : lines.rows()) {
        json.add(lines.named(row));
        tally.accept(row);
      }
      json.end();
    } else {
      lines.writeTo(out, tally);
    }
    out.flush();
  }

  /** The function of this name, or wrong use. */
  static Card card(String function, CommandSpec spec) {
    try {
      return Catalog.shipped().named(function);
    } catch (RefusedException unknown) {
      throw new ParameterException(spec.commandLine(), unknown.getMessage());
    }
  }
}
