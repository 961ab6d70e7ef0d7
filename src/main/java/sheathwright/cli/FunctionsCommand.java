package sheathwright.cli;

import java.io.IOException;
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
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.ReferenceRows;
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

  @Option(names = "--json", description = "write them as one array of objects")
  private boolean isJson;

  @Override
  public Integer call() throws IOException {
    Catalog catalog = Catalog.shipped();
    if (isJson) {
      JsonRows.write(spec.commandLine().getOut(), ReferenceRows.functions(meant(catalog)));
      return 0;
    }
    spec.commandLine()
        .getOut()
        .println(markdown ? Reference.document(catalog.cards()).stripTrailing() : text(catalog));
    return 0;
  }

  private String text(Catalog catalog) {
    List<Card> meant = meant(catalog);
    return words.size() == 1 && meant.size() == 1
        ? Reference.page(meant.get(0), Screen.PIPE.columns())
        : Reference.list(meant);
  }

  /** The functions that are meant by what was typed. */
  private List<Card> meant(Catalog catalog) {
    if (words.isEmpty()) {
      return catalog.cards();
    }
    List<Card> about = catalog.about(words);
    if (words.size() == 1) {
      try {
        return List.of(catalog.named(words.get(0)));
      } catch (RefusedException noSuchName) {
        if (about.isEmpty()) {
          throw new ParameterException(spec.commandLine(), noSuchName.getMessage());
        }
      }
    }
    if (about.isEmpty()) {
      throw new RefusedException(
          "no function speaks of all of: "
              + String.join(", ", words)
              + "; try one word, or none for the whole list");
    }
    return about;
  }
}
