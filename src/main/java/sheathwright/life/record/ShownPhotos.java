package sheathwright.life.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sheathwright.job.JobTable;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.PhotoRules;
import sheathwright.job.table.RowSource;

/** The table of photographs with what each of them was when a document went out. */
final class ShownPhotos {

  private static final String HASH = OrderFields.PHOTO_HASH.name();

  private ShownPhotos() {}

  /** The table with the SHA-256 of each picture that has none yet; nothing where there is none. */
  static Optional<TableText> of(JobFolder folder) {
    if (!folder.has(JobTable.PHOTOS)) {
      return Optional.empty();
    }
    TableText table = folder.text(JobTable.PHOTOS, List.of()).withColumn(HASH);
    RowSource held = table.parsed();
    int photo = held.header().indexOf(OrderFields.PHOTO.name());
    int hash = held.header().indexOf(HASH);
    for (int line = 0; line < held.lines().size(); line++) {
      List<String> cells = held.lines().get(line).cells();
      Optional<Path> file =
          cells.get(hash).isBlank()
              ? PhotoRules.file(folder.path(), cells.get(photo).strip())
              : Optional.empty();
      if (file.isPresent()) {
        table = table.withCell(line, HASH, PhotoRules.hash(bytes(file.get())));
      }
    }
    return Optional.of(table);
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
