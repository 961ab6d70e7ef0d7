package sheathwright.cli;

import java.io.IOException;
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
import sheathwright.job.CsvFile;
import sheathwright.job.FilledTable;
import sheathwright.job.NewFile;
import sheathwright.job.ProblemLines;
import sheathwright.workbook.FillBook;

/** Fills one function down a table. */
@Command(
    name = "fill",
    mixinStandardHelpOptions = true,
    description = {
      "Fill one library function down a table: the same rows, with result columns and an error column appended.",
      "A blank cell or an absent column takes the parameter's preset. Rows that are refused say why; the others are filled."
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
    FilledTable filled = FilledTable.of(card, CsvFile.read(table));
    if (output == null) {
      filled.writeTo(spec.commandLine().getOut());
      spec.commandLine().getOut().flush();
    } else if (ending.endsWith(".csv")) {
      StringBuilder text = new StringBuilder();
      filled.writeTo(text);
      NewFile.at(output, force).write(text.toString().getBytes(StandardCharsets.UTF_8));
    } else {
      NewFile.at(output, force).write(FillBook.bytes(filled));
    }
    ProblemLines.of(filled.problems()).forEach(spec.commandLine().getErr()::println);
    return filled.problems().isEmpty() ? 0 : Main.REFUSED;
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
