package sheathwright.proof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.job.table.CsvFile;

/** The certified cases that ship with the program, a table for each function that has any. */
public final class CertifiedCases {

  static final String FOLDER = "certified";

  private CertifiedCases() {}

  /** Those of a function; none, if it has none. */
  public static Optional<CaseTable> of(Card card) {
    String name = card.name() + ".csv";
    return Shipped.file(FOLDER + "/" + name)
        .map(
            stream -> {
              try (InputStream closed = stream) {
                return CaseTable.of(card, CsvFile.read(closed, name));
              } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
              }
            });
  }
}
