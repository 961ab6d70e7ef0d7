package sheathwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.cli.pipe.NamedValues;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;

/** Calls one function and shows its working. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Call one library function and show its working, step by step, with sources.",
    footerHeading = "%nExample:%n",
    footer = {
      "  sheathwright explain nails_per_sheet support_spacing_in=16 edge_spacing_in=6 field_spacing_in=12"
    })
final class ExplainCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FUNCTION", description = "the function's name")
  private String function;

  @Parameters(
      index = "1..*",
      paramLabel = "PARAMETER=VALUE",
      description = "a parameter and its value, as it would stand in a table")
  private List<String> values = List.of();

  @Override
  public Integer call() {
    Card card = FillCommand.card(function, spec);
    List<Traced> results = card.answer(arguments(card));
    results.forEach(Traced::plain);
    spec.commandLine().getOut().println(Working.of(results));
    return 0;
  }

  private List<Traced> arguments(Card card) {
    Map<String, String> given = NamedValues.of(values, "parameter=value", spec);
    List<String> wrong = new ArrayList<>();
    List<Traced> arguments = new ArrayList<>();
    for (Parameter parameter : card.parameters()) {
      String text = given.remove(parameter.column());
      try {
        arguments.add(parameter.read(text == null ? "" : text, Source.GIVEN));
      } catch (RefusedException unreadable) {
        wrong.add(unreadable.getMessage());
      }
    }
    given
        .keySet()
        .forEach(
            name ->
                wrong.add(card.name() + " has no parameter " + name + "; it has " + names(card)));
    if (!wrong.isEmpty()) {
      throw new RefusedException(String.join("\n", wrong));
    }
    return arguments;
  }

  private static String names(Card card) {
    return String.join(", ", card.parameters().stream().map(Parameter::column).toList());
  }
}
