package sheathwright.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import sheathwright.catalog.Nearest;
import sheathwright.cli.pipe.Dash;
import sheathwright.cli.pipe.Voice;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.PlainLetterhead;

/** Writes a letterhead to restyle. */
@Command(
    name = "letterhead",
    mixinStandardHelpOptions = true,
    description = {
      "Write a plain letterhead with every word that a document offers, to restyle in any spreadsheet program.",
      "A cell whose whole text is a word in braces is filled when the document is written; everything else stays as the office"
          + " made it. A list takes a row for each line: copy its row as often as lines are wanted.",
      "firm.csv says which letterhead is used: quote_letterhead, change_order_letterhead, invoice_letterhead."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright letterhead quote -o our-quote.xlsx",
      "  sheathwright quote demo-data/quince-hollow --letterhead our-quote.xlsx -o out"
    })
final class LetterheadCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "DOCUMENT",
      completionCandidates = Documents.class,
      converter = Documents.class,
      description = "what it is for: ${COMPLETION-CANDIDATES}")
  private LetterKind kind;

  @Option(
      names = "-o",
      paramLabel = "FILE",
      required = true,
      description = "where to write; - for standard output")
  private Path output;

  @Option(names = "--force", description = "replace the file if it exists")
  private boolean force;

  /** The documents as they are called. */
  static final class Documents implements ITypeConverter<LetterKind>, Iterable<String> {

    @Override
    public LetterKind convert(String given) {
      return Arrays.stream(LetterKind.values())
          .filter(kind -> kind.document().equals(given))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "\"%s\" is no document that has a letterhead%s"
                          .formatted(given, Nearest.instead(given, names()))));
    }

    @Override
    public Iterator<String> iterator() {
      return names().iterator();
    }

    private static List<String> names() {
      return Arrays.stream(LetterKind.values()).map(LetterKind::document).toList();
    }
  }

  @Override
  public Integer call() {
    Dash.write(output, force, () -> PlainLetterhead.bytes(kind));
    if (!Dash.is(output)) {
      say("wrote " + output);
      say(
          "next: restyle it, then ./sheathwright %s JOB --letterhead %s"
              .formatted(kind.command(), output));
    }
    return 0;
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
