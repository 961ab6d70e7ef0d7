package sheathwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Card;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Voice;
import sheathwright.figure.RefusedException;
import sheathwright.workbook.calculator.CalculatorBook;

/** Writes library functions as pages of a workbook that work. */
@Command(
    name = "calculators",
    mixinStandardHelpOptions = true,
    description = {
      "Write a workbook in which each library function is a live page: inputs with drop-downs and ranges, results, source,"
          + " cautions, and every step of the working.",
      "Its first page leads to all others by task, and says how to ask for what no cell can answer."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright calculators -o calculators.xlsx",
      "  sheathwright calculators sheets_by_area rafter_check -o two.xlsx"
    })
final class CalculatorsCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "FUNCTION",
      description = "only these functions, in this order; all of them if none is named")
  private List<String> functions = new ArrayList<>();

  @Option(
      names = "-o",
      paramLabel = "FILE",
      required = true,
      description = "where to write, .xlsx; - for standard output")
  private Path output;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  @Override
  public Integer call() {
    if (!Dash.is(output) && !output.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw new ParameterException(
          spec.commandLine(), output + " must end in .xlsx: a workbook is written");
    }
    List<Card> cards = functions.stream().map(name -> FillCommand.card(name, spec)).toList();
    Dash.write(output, force, () -> cards.isEmpty() ? CalculatorBook.ofAll() : some(cards));
    if (!Dash.is(output)) {
      Voice.say(spec, "wrote " + output);
    }
    return 0;
  }

  private byte[] some(List<Card> cards) {
    try {
      return CalculatorBook.of(cards);
    } catch (RefusedException solved) {
      throw new ParameterException(spec.commandLine(), solved.getMessage());
    }
  }
}
