package sheathwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Helps with a command, or else with the functions that speak of a word. */
@Command(
    name = "help",
    mixinStandardHelpOptions = true,
    description = "Help with a command, a library function, or the functions that speak of a word.",
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright help quote", "  sheathwright help nail"})
final class HelpCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "WORD",
      description = "a command's name, or words to look for")
  private List<String> words = List.of();

  @Override
  public Integer call() {
    CommandLine top = spec.parent().commandLine();
    if (words.isEmpty()) {
      top.usage(top.getOut());
      return 0;
    }
    CommandLine command = top.getSubcommands().get(String.join("-", words));
    if (command != null) {
      command.usage(top.getOut());
      return 0;
    }
    return top.getSubcommands().get("functions").execute(words.toArray(String[]::new));
  }
}
