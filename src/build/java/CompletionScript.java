import java.io.PrintWriter;
import java.util.List;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import sheathwright.catalog.Catalog;
import sheathwright.cli.Main;

/**
 * Prints what a shell needs to complete commands, options and names of functions (bash, and zsh
 * with bashcompinit). Run with the program's jar on the class path.
 */
final class CompletionScript {

  private CompletionScript() {}

  public static void main(String[] arguments) {
    CommandLine commands =
        Main.commandLine(new PrintWriter(System.out), new PrintWriter(System.err));
    commands.getSubcommands().values().forEach(command -> nameFunctions(command.getCommandSpec()));
    System.out.print(AutoComplete.bash("sheathwright", commands));
  }

  /** Lets the parameter that takes a function offer their names. */
  private static void nameFunctions(CommandSpec command) {
    List<String> names =
        Catalog.shipped().cards().stream().map(card -> card.name()).sorted().toList();
    for (PositionalParamSpec parameter : List.copyOf(command.positionalParameters())) {
      if (parameter.paramLabel().equals("FUNCTION")) {
        command.remove(parameter);
        command.addPositional(
            PositionalParamSpec.builder(parameter).completionCandidates(names).build());
      }
    }
  }
}
