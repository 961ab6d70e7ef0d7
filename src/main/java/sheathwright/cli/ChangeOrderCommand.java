package sheathwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Printable;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.LaterOption;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Ordering;
import sheathwright.life.record.SentDocument;
import sheathwright.life.record.Unsettled;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.paper.ChangeOrderBook;
import sheathwright.workbook.told.Photos;

/** Asks the owner for what was found besides what was agreed. */
@Command(
    name = "change-order",
    mixinStandardHelpOptions = true,
    description = {
      "Ask for what was found besides what was agreed, at the agreed prices: change-order-01.xlsx for the owner, kept in the"
          + " folder sent, its lines in orders.csv and order_lines.csv as offered. An order is never written over.",
      "The job must be opened: opened_on in job.csv. What became of an order, the office writes into orders.csv."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright change-order my-job --on 2027-05-18",
      "  sheathwright change-order my-job --on 2027-05-18 -o out"
    })
final class ChangeOrderCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Mixin private JobStep step;

  @Option(
      names = "-o",
      paramLabel = "FOLDER",
      description = "where to write; else into the job's own folder")
  private Path output;

  @Mixin private LetterheadOption letterhead;

  @Override
  public Integer call() {
    JobFolder job = step.job();
    Ordering ordering = new Ordering(job, step.on());
    NextOrder order = ordering.order();
    if (order.isEmpty()) {
      say("nothing was found besides what is agreed and ordered: no change order is written");
    } else {
      Path place = output == null ? step.folder() : output;
      ChangeOrderBook book =
          ChangeOrderBook.of(
              ordering.estimate(), order, Photos.of(job.job(), step.folder()), step.on());
      byte[] document =
          letterhead.before(
              book.bytes(),
              LetterKind.CHANGE_ORDER,
              job.job(),
              Told.of(job.job(), order.number(), step.on().day()),
              step.folder());
      SentDocument sent = ordering.write(document, place);
      say("wrote %s, kept as %s".formatted(place.resolve(ordering.file()), sent.in(step.folder())));
      for (ItemAccount item : order.asked()) {
        say(
            "%s: %s at %s, %s"
                .formatted(
                    item.item().label(),
                    item.item().counted(item.now()),
                    item.agreed().price(),
                    item.amount()));
      }
      for (LaterOption option : order.chosen()) {
        say(
            "%s: %s at %s, %s"
                .formatted(option.label(), option.counted(), option.each(), option.amount()));
      }
      say("change order %s: %s".formatted(order.number(), order.sum()));
      say("the homeowner pays %s with it".formatted(order.newTotal()));
      JobStep.tell("in it", book.photographs(), spec);
    }
    JobStep.ask(job.job(), spec.commandLine().getErr());
    Unsettled.lines(order)
        .forEach(line -> spec.commandLine().getErr().println("question: " + Printable.line(line)));
    boolean isOffered =
        !order.isEmpty() || !order.accounts().orders().that(OrderStatus.OFFERED).isEmpty();
    say(
        isOffered
            ? "next: write into orders.csv what becomes of it (status, approved_by, approved_how, approved_on), then "
                + job.command("close", "--on DATE")
            : job.next("close", "--on DATE"));
    return 0;
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
