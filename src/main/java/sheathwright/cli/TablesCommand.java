package sheathwright.cli;

import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Nearest;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;

/** Lists the tables of a job, or shows one. */
@Command(
    name = "tables",
    mixinStandardHelpOptions = true,
    description = "List the tables of a job, or show what one may hold.",
    footerHeading = "%nExamples:%n",
    footer = {"  sheathwright tables", "  sheathwright tables marks"})
final class TablesCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "TABLE", description = "a table's name")
  private String name;

  @Override
  public Integer call() {
    spec.commandLine().getOut().println(name == null ? TableGuide.list() : page());
    return 0;
  }

  private String page() {
    String wanted = name.endsWith(JobTable.ENDING) ? name : name + JobTable.ENDING;
    return Stream.of(JobTable.values())
        .filter(table -> table.file().equals(wanted))
        .findFirst()
        .map(TableGuide::page)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "a job has no table \"%s\"%s"
                        .formatted(
                            name,
                            Nearest.asked(
                                wanted,
                                Stream.of(JobTable.values()).map(JobTable::file).toList()))));
  }
}
