package sheathwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Reference;
import sheathwright.figure.RefusedException;
import sheathwright.repl.show.Screen;

/** Lists the library functions, or shows one. */
@Command(
    name = "functions",
    mixinStandardHelpOptions = true,
    description =
        "List the library functions, show one by its name, or find those that speak of some words.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright functions",
      "  sheathwright functions nails_per_sheet",
      "  sheathwright functions sister nails"
    })
final class FunctionsCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "WORD",
      description = "a function's name, or words to look for")
  private List<String> words = List.of();

  @Option(names = "--markdown", description = "write every function as one Markdown document")
  private boolean markdown;

  @Override
  public Integer call() {
    Catalog catalog = Catalog.shipped();
    spec.commandLine()
        .getOut()
        .println(markdown ? Reference.document(catalog.cards()).stripTrailing() : text(catalog));
    return 0;
  }

  private String text(Catalog catalog) {
    if (words.isEmpty()) {
      return Reference.list(catalog.cards());
    }
    if (words.size() == 1) {
      try {
        return Reference.page(catalog.named(words.get(0)), Screen.PIPE.columns());
      } catch (RefusedException noSuchName) {
        List<Card> about = catalog.about(words);
        if (about.isEmpty()) {
          throw new ParameterException(spec.commandLine(), noSuchName.getMessage());
        }
        return about.size() == 1
            ? Reference.page(about.get(0), Screen.PIPE.columns())
            : Reference.list(about);
      }
    }
    List<Card> about = catalog.about(words);
    if (about.isEmpty()) {
      throw new RefusedException(
          "no function speaks of all of: "
              + String.join(", ", words)
              + "; try one word, or none for the whole list");
    }
    return Reference.list(about);
  }
}
