package sheathwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Units;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.Leak;
import sheathwright.life.record.Closing;
import sheathwright.life.record.JobFolder;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.paper.DeckRecordBook;
import sheathwright.workbook.paper.InvoiceBook;
import sheathwright.workbook.told.Photos;

/** Closes a job. */
@Command(
    name = "close",
    mixinStandardHelpOptions = true,
    description = {
      "The work is done: invoice.xlsx and deck-record.xlsx for the homeowner, both kept in the folder sent, and a line of what"
          + " was found in history.csv beside the job's folder.",
      "The job must be opened, and no change order be waiting for an answer. What the work cost beyond what it sold for is said"
          + " here and in neither file."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright close my-job --on 2027-05-28",
      "  sheathwright close my-job --on 2027-05-28 -o out --force"
    })
final class CloseCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Mixin private JobStep step;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into the job's own folder")
  private Path output;

  @Option(names = "--force", description = "replace the workbooks there if they exist")
  private boolean force;

  @Mixin private LetterheadOption letterhead;

  @Override
  public Integer call() {
    JobFolder job = step.job();
    Closing closing = new Closing(job, step.on());
    byte[] bill =
        letterhead.before(
            InvoiceBook.of(
                    closing.estimate(),
                    closing.invoice(),
                    closing.reconciliation(),
                    closing.invoiceNumber(),
                    step.on())
                .bytes(),
            LetterKind.INVOICE,
            job.job(),
            Told.of(job.job(), closing.invoiceNumber(), step.on().day()),
            step.folder());
    DeckRecordBook record =
        DeckRecordBook.of(
            closing.estimate(), closing.accounts(), Photos.of(job.job(), step.folder()), step.on());
    List<Path> written =
        closing.write(bill, record.bytes(), output == null ? step.folder() : output, force);
    say("wrote %s and %s".formatted(written.get(0), written.get(1)));
    say("the homeowner pays %s, %s".formatted(closing.invoice().total(), due(closing.invoice())));
    JobStep.tell("in the deck record", record.photographs(), spec);
    closing.found().forEach(this::say);
    closing.leak().ifPresent(leak -> said(leak, closing.givenAway(leak)));
    closing
        .accounts()
        .givenAway()
        .forEach(
            item ->
                say(
                    "given away above the agreed ceiling: %s, %s at the agreed price (%s)"
                        .formatted(
                            item.item().counted(item.uncharged()),
                            item.unchargedAmount(),
                            item.item().label())));
    if (closing.leak().isPresent()) {
      say(
          "line by line: the page Cost against sold of the office's workbook, which %s writes"
              .formatted(job.command("quote", "--force")));
    }
    JobStep.ask(job.job(), spec.commandLine().getErr());
    say("closed on %s; nothing more is written for this job".formatted(step.on()));
    return 0;
  }

  private static String due(Invoice invoice) {
    return invoice.due().value() < 0
        ? "and %s goes back: more was paid"
            .formatted(invoice.due().times(Figure.of(-1, Units.RATIO)).in(Units.USD))
        : "of which %s is still due".formatted(invoice.due());
  }

  private void said(Leak leak, Figure<Money> givenAway) {
    say(
        "for the office: the work on the deck cost %s and sold for %s, %s"
            .formatted(
                leak.cost(),
                leak.sold(),
                givenAway.value() > 0
                    ? "%s less than the office's overhead and margin ask for".formatted(givenAway)
                    : "no less than the office's overhead and margin ask for"));
    if (!leak.others().isEmpty()) {
      say("not compared, other tasks of the log: " + String.join(", ", leak.others()));
    }
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
