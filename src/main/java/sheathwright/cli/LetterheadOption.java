package sheathwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import sheathwright.job.Job;
import sheathwright.workbook.letterhead.LetterKind;
import sheathwright.workbook.letterhead.OfficeLetterhead;
import sheathwright.workbook.letterhead.Told;
import sheathwright.workbook.told.Photos;

/** The office's own workbook that a document goes out on. */
final class LetterheadOption {

  @Option(
      names = "--letterhead",
      paramLabel = "FILE",
      description =
          "the office's own .xlsx in front of it, its words in braces filled; else the one that firm.csv names")
  private Path file;

  /**
   * A document with its letterhead in front; alone, if the office has none.
   *
   * @param folder of the job, where its photographs lie
   */
  byte[] before(byte[] document, LetterKind kind, Job job, Told told, Path folder) {
    return OfficeLetterhead.of(kind, Optional.ofNullable(file), job.firm())
        .map(letterhead -> letterhead.filled(document, told, () -> Photos.of(job, folder)))
        .orElse(document);
  }
}
