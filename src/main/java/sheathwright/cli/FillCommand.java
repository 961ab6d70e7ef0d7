package sheathwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
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
import sheathwright.figure.RefusedException;
import sheathwright.job.file.NewFile;
import sheathwright.job.fill.FilledLines;
import sheathwright.job.table.CsvFile;
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
      "  sheathwright fill rafter_max_span cases.csv -o spans.xlsx"
    })
final class FillCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FUNCTION", description = "the function's name")
  private String function;

  @Parameters(
      index = "1",
      paramLabel = "TABLE",
      description = "a CSV file whose header names parameters")
  private Path table;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      description =
          "write to a .csv file, or to a .xlsx file with live formulas; else to standard output")
  private Path output;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  @Override
  public Integer call() throws IOException {
    Card card = card(function, spec);
    String ending = output == null ? ".csv" : output.toString().toLowerCase(Locale.ROOT);
    if (!ending.endsWith(".csv") && !ending.endsWith(".xlsx")) {
      throw new ParameterException(
          spec.commandLine(),
          output + " must end in .csv or .xlsx: the ending says what is written");
    }
    FilledLines lines = FilledLines.of(card, CsvFile.read(table));
    PrintWriter err = spec.commandLine().getErr();
    FillTally tally = new FillTally(lines, err, output != null && System.console() != null);
    if (output == null) {
      lines.writeTo(spec.commandLine().getOut(), tally);
      spec.commandLine().getOut().flush();
    } else if (ending.endsWith(".csv")) {
      NewFile.at(output, force).write(out -> writeText(lines, out, tally));
    } else {
      NewFile.at(output, force).write(out -> FillBook.write(lines, out, tally));
    }
    tally.say();
    return tally.isClean() ? 0 : Main.REFUSED;
  }

  private static void writeText(FilledLines lines, OutputStream out, FillTally tally)
      throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    lines.writeTo(text, tally);
    text.flush();
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
