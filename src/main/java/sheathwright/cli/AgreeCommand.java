package sheathwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import sheathwright.cli.pipe.Voice;
import sheathwright.life.record.Agreeing;
import sheathwright.life.record.JobFolder;
import sheathwright.workbook.paper.SentNumbers;

/** Freezes what the owner agreed to. */
@Command(
    name = "agree",
    mixinStandardHelpOptions = true,
    description = {
      "The owner said yes: freeze the quote that was sent last. Its prices, what is in it, its ceiling, the options chosen and"
          + " its payments are copied into agreed.csv, and no price changes what the owner pays from then on.",
      "The job must be quoted, and its tables still say what the quote said."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  sheathwright agree my-job --on 2027-05-12",
      "  sheathwright agree my-job --on 2027-05-12 --document \"QH-01 issue 2\"",
      "  sheathwright agree my-job --on 2027-05-12 --returned from-the-owner.xlsx"
    })
final class AgreeCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Mixin private JobStep step;

  @Option(
      names = "--document",
      paramLabel = "DOCUMENT",
      description = "which issue of the quote, as sent.csv names it; else the newest")
  private String document;

  @Option(
      names = "--returned",
      paramLabel = "FILE",
      description =
          "the quote as the owner sent it back: it is audited first, and the options ticked in it are taken")
  private Path file;

  @Override
  public Integer call() throws IOException {
    JobFolder job = step.job();
    Optional<String> asked = Optional.ofNullable(document);
    Optional<ReturnedQuote> returned =
        file == null ? Optional.empty() : Optional.of(ReturnedQuote.in(file, job, asked));
    Agreeing agreeing =
        returned
            .map(quote -> new Agreeing(job, step.on(), quote.returned()))
            .orElseGet(() -> new Agreeing(job, step.on(), asked));
    agreeing.requireSaid(SentNumbers.of(agreeing.document()));
    agreeing.write();
    say(
        "agreed on %s: %s, %s; written: %s"
            .formatted(
                step.on(),
                agreeing.quote().document(),
                agreeing.agreement().total(),
                String.join(", ", agreeing.tables())));
    returned.ifPresent(quote -> quote.lines(agreeing).forEach(this::say));
    if (returned.filter(quote -> quote.signed().isEmpty()).isPresent()) {
      ask("nobody typed a name on the lines to sign on; is it signed on paper?");
    }
    if (agreeing.makesStages()) {
      say("stages.csv was not there: it says that all is paid when the work is done");
    }
    agreeing.questions().forEach(this::ask);
    say(job.nextOnceAgreed());
    return 0;
  }

  private void ask(String question) {
    spec.commandLine().getErr().println("question: " + question);
  }

  private void say(String line) {
    Voice.say(spec, line);
  }
}
