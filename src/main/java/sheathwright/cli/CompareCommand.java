package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Dash;
import sheathwright.job.table.Printable;
import sheathwright.workbook.audit.Issues;

/** Tells two issues of one job apart. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "What changed between two issues of one job: its marks, quantities, prices and dollars, in words and as a table.",
      "Both files are read as they are; `audit` says whether somebody changed one of them."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright compare my-job/sent/QH-01-issue-1.xlsx my-job/sent/QH-01-issue-2.xlsx",
      "  sheathwright compare my-job/sent/QH-01-issue-1-estimate.xlsx my-job/estimate.xlsx"
    })
final class CompareCommand implements Callable<Integer> {

  private static final String BETWEEN = "  ";

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "A",
      description = "the earlier workbook; - for standard input")
  private Path first;

  @Parameters(index = "1", paramLabel = "B", description = "the later one")
  private Path second;

  @Override
  public Integer call() throws IOException {
    Issues issues =
        Issues.of(Dash.name(first), Dash.bytes(first), Dash.name(second), Dash.bytes(second));
    issues.words().forEach(this::say);
    if (!issues.rows().isEmpty()) {
      say("");
      table(issues.rows());
    }
    return 0;
  }

  private void table(List<Issues.Row> rows) {
    List<List<String>> lines =
        Stream.concat(
                Stream.of(List.of("what", "before", "now", "more by")),
                rows.stream().map(row -> List.of(row.what(), row.before(), row.after(), row.by())))
            .toList();
    int[] widths =
        IntStream.range(0, 4)
            .map(i -> lines.stream().mapToInt(line -> line.get(i).length()).max().orElse(0))
            .toArray();
    for (List<String> line : lines) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        text.append(line.get(i)).append(" ".repeat(widths[i] - line.get(i).length()));
        text.append(BETWEEN);
      }
      say(text.toString().stripTrailing());
    }
  }

  private void say(String line) {
    spec.commandLine().getOut().println(Printable.line(line));
  }
}
