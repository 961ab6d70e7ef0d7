package sheathwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.catalog.Nearest;
import sheathwright.cli.pipe.JsonRows;
import sheathwright.cli.pipe.ReferenceRows;
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

  @Option(names = "--json", description = "write them as one array of objects")
  private boolean isJson;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (isJson) {
      JsonRows.write(out, name == null ? ReferenceRows.tables() : ReferenceRows.columns(table()));
    } else {
      out.println(name == null ? TableGuide.list() : TableGuide.page(table()));
    }
    return 0;
  }

  private JobTable table() {
    String wanted = name.endsWith(JobTable.ENDING) ? name : name + JobTable.ENDING;
    return Stream.of(JobTable.values())
        .filter(table -> table.file().equals(wanted))
        .findFirst()
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
