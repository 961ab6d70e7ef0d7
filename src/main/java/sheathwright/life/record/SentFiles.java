package sheathwright.life.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import sheathwright.job.table.ProblemsException;

/** The files that a job keeps of what was sent, found by what each document is called. */
public final class SentFiles {

  /**
   * One of them.
   *
   * @param path where it is kept
   */
  public record Kept(Path path, byte[] bytes) {}

  private final JobFolder folder;

  public SentFiles(JobFolder folder) {
    this.folder = folder;
  }

  /**
   * The file of a document, as it went out: listed, and still the one that was listed; or an
   * estimate, which is kept beside the quote that was made from it and not listed.
   */
  public Optional<Kept> of(String document) {
    for (SentDocument sent : folder.sent()) {
      if (sent.document().equals(document)) {
        return asSent(sent);
      }
    }
    boolean isEstimate =
        folder.sent().stream()
            .map(SentDocument::document)
            .anyMatch(quote -> Issue.numberOf(quote) > 0 && document.equals(Issue.estimate(quote)));
    Path file =
        folder.path().resolve(SentDocument.FOLDER).resolve(SentDocument.fileName(document, ""));
    try {
      return isEstimate && Files.exists(file)
          ? Optional.of(new Kept(file, Files.readAllBytes(file)))
          : Optional.empty();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private Optional<Kept> asSent(SentDocument sent) {
    try {
      return Optional.of(new Kept(sent.in(folder.path()), folder.bytes(sent)));
    } catch (ProblemsException goneOrAnother) {
      return Optional.empty();
    }
  }

  /** Whether something that was sent carried a manifest of this hash. */
  public boolean vouchFor(String manifestHash) {
    return folder.sent().stream()
        .map(SentDocument::manifestHash)
        .anyMatch(hash -> !hash.isEmpty() && hash.equals(manifestHash));
  }
}
