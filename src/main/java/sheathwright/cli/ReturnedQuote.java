package sheathwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.job.file.Unpacked;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.record.Agreeing;
import sheathwright.life.record.JobFolder;
import sheathwright.workbook.audit.Audit;

/**
 * A quote that the owner filled in and sent back: nobody agrees to one in which anything was
 * changed but what he is free to fill in.
 *
 * @param returned what he agrees to
 * @param signed what he typed on the lines to sign on
 */
record ReturnedQuote(Agreeing.Returned returned, List<Audit.Signed> signed) {

  /**
   * The quote in a file, held against what was sent.
   *
   * @param asked which issue is meant, if somebody said
   * @throws ProblemsException with everything that stands against agreeing to it, a line each
   */
  static ReturnedQuote in(Path path, JobFolder job, Optional<String> asked) {
    String name = String.valueOf(path.getFileName());
    byte[] file = Unpacked.file(path);
    Audit audit = Audit.of(name, file, Optional.of(job), false);
    List<String> wrong = new ArrayList<>(audit.againstSigning());
    asked
        .filter(document -> !document.equals(audit.document()))
        .map(
            document ->
                "it is %s, not %s; name that, or leave --document away"
                    .formatted(audit.document().isEmpty() ? "a draft" : audit.document(), document))
        .ifPresent(wrong::add);
    if (wrong.isEmpty() && audit.document().isEmpty()) {
      wrong.add("it is a draft, and nobody agrees to that; issue the quote, and send that");
    }
    if (!wrong.isEmpty()) {
      throw new ProblemsException(
          wrong.stream().map(message -> new Problem(name, 0, "", message)).toList());
    }
    return new ReturnedQuote(
        new Agreeing.Returned(audit.document(), file, audit.taken()), audit.signed());
  }

  /** What was taken from it, a line each. */
  List<String> lines(Agreeing agreeing) {
    List<String> lines = new ArrayList<>();
    agreeing.taken().forEach(line -> lines.add("taken from what came back: " + line));
    signed.forEach(line -> lines.add("signed, %s: %s".formatted(line.who(), line.words())));
    return lines;
  }
}
