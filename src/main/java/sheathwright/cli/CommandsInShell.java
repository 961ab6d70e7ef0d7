package sheathwright.cli;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Command;
import sheathwright.repl.show.ShellCommand;

/** What the help of the prompt tells of the commands, out of their own help. */
public final class CommandsInShell implements ShellCommand.Known {

  private static final String PROGRAM = "sheathwright ";

  @Override
  public List<ShellCommand> all() {
    return Main.COMMANDS.stream()
        .map(type -> type.getAnnotation(Command.class))
        .map(CommandsInShell::told)
        .toList();
  }

  private static ShellCommand told(Command command) {
    String description = String.join(" ", command.description());
    int end = description.indexOf(". ");
    String example =
        Arrays.stream(command.footer())
            .map(String::strip)
            .filter(line -> line.startsWith(PROGRAM))
            .findFirst()
            .orElse(PROGRAM + command.name() + " --help");
    return new ShellCommand(
        command.name(), end < 0 ? description : description.substring(0, end + 1), example);
  }
}
