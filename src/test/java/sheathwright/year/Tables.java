package sheathwright.year;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.job.Estimate;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.doubt.Doubts;
import sheathwright.life.record.Agreeing;
import sheathwright.life.record.Closing;
import sheathwright.life.record.Issuing;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.Ordering;
import sheathwright.year.disk.Disk;

/**
 * The same steps as the commands take, with a few lines of text where these would make a workbook:
 * a hundred times as fast. Names of numbers and the numbers stand in that text.
 */
final class Tables implements Desk {

  @Override
  public Answer run(Disk disk, String... words) {
    Path path = disk.path(words[1]);
    try {
      return switch (words[0]) {
        case "check" -> checked(JobFolder.in(path));
        case "quote" -> quoted(JobFolder.in(path), day(words));
        case "agree" -> agreed(JobFolder.in(path), day(words));
        case "change-order" -> ordered(JobFolder.in(path), day(words));
        case "close" -> closed(JobFolder.in(path), day(words));
        default -> throw new IllegalArgumentException(words[0]);
      };
    } catch (ProblemsException | RefusedException refused) {
      return new Answer(Answer.REFUSED, "", refused.getMessage());
    } catch (UncheckedIOException wrapped) {
      return refused(wrapped.getCause());
    }
  }

  /** Only the trouble of a file that is named can be put right by whoever reads of it. */
  private static Answer refused(IOException reason) {
    return reason instanceof FileSystemException
        ? new Answer(Answer.REFUSED, "", reason.getMessage())
        : new Answer(1, "", reason.toString());
  }

  private static Moment day(String... words) {
    return Moment.read(words[List.of(words).indexOf("--on") + 1]);
  }

  private static Answer done(List<String> questions) {
    StringBuilder err = new StringBuilder();
    questions.forEach(each -> err.append("question: ").append(each).append('\n'));
    return new Answer(Answer.DONE, "done\n", err.toString());
  }

  private static byte[] text(Stream<String> lines) {
    return String.join("\n", lines.toList()).getBytes(StandardCharsets.UTF_8);
  }

  private static Answer checked(JobFolder job) {
    Estimate estimate = new Estimate(job.job());
    estimate.total();
    return done(Doubts.of(estimate).lines());
  }

  private static Answer quoted(JobFolder job, Moment on) {
    Issuing issuing = new Issuing(job, on);
    Estimate estimate = issuing.estimate();
    byte[] homeowner =
        text(
            estimate.quote().told().entrySet().stream()
                .map(each -> each.getKey() + "=" + each.getValue().value()));
    issuing.write(text(Stream.of("the office's")), homeowner, Optional.empty(), false);
    return done(Doubts.of(estimate).lines());
  }

  private static Answer agreed(JobFolder job, Moment on) {
    Agreeing agreeing = new Agreeing(job, on, Optional.empty());
    Map<String, Double> said = new LinkedHashMap<>();
    new String(agreeing.document(), StandardCharsets.UTF_8)
        .lines()
        .map(line -> line.split("="))
        .forEach(pair -> said.put(pair[0], Double.valueOf(pair[1])));
    agreeing.requireSaid(said);
    agreeing.write();
    return done(agreeing.questions());
  }

  private static Answer ordered(JobFolder job, Moment on) {
    Ordering ordering = new Ordering(job, on);
    if (!ordering.order().isEmpty()) {
      byte[] document =
          text(
              ordering.order().asked().stream()
                  .map(item -> item.item().word() + "=" + item.amount().value()));
      ordering.write(document, job.path());
    }
    return done(List.of());
  }

  private static Answer closed(JobFolder job, Moment on) {
    Closing closing = new Closing(job, on);
    byte[] bill =
        text(
            closing.invoice().lines().stream()
                .map(line -> line.what().replace('=', ' ') + "=" + line.amount().value()));
    byte[] record =
        text(
            closing.reconciliation().parts().stream()
                .map(part -> part.mark() + "=" + part.fate().word()));
    closing.write(bill, record, job.path(), false);
    return done(List.of());
  }
}
