package sheathwright.life.record;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Row;

/**
 * A document that left the house.
 *
 * @param document what it is called
 * @param file its name in the folder of what was sent
 * @param fileHash the fingerprint of the file
 * @param manifestHash the fingerprint of what the file says was written into it; empty in lists of
 *     before there were any
 * @param recordHash the fingerprint of what it was made from
 * @param total what it comes to, if it comes to anything
 * @param on the day, as an ISO date; empty where the table does not say
 */
public record SentDocument(
    String document,
    String file,
    String fileHash,
    String manifestHash,
    String recordHash,
    Optional<BigDecimal> total,
    String on) {

  /** The folder of what was sent, in a job's. */
  public static final String FOLDER = "sent";

  static SentDocument of(Row row) {
    return new SentDocument(
        row.of(OrderFields.DOCUMENT).value(),
        row.of(OrderFields.FILE).value(),
        row.of(OrderFields.FILE_HASH).value(),
        row.has(OrderFields.MANIFEST_HASH) ? row.of(OrderFields.MANIFEST_HASH).value() : "",
        row.of(OrderFields.RECORD_HASH).value(),
        Optional.ofNullable(row.of(OrderFields.TOTAL)).map(Cents::of),
        row.has(OrderFields.ON) ? row.of(OrderFields.ON).value() : "");
  }

  /** The name that a document's file has: what no file system takes is a hyphen. */
  static String fileName(String document, String kind) {
    String plain = document.replaceAll("[^\\p{Alnum}._-]+", "-").replaceAll("^[.-]+", "");
    return plain + kind + ".xlsx";
  }

  /**
   * The table of what was sent with it; one of before there were manifests has no column for it.
   */
  TableText listedIn(TableText sent) {
    Map<String, String> row = row();
    row.keySet()
        .removeIf(
            column ->
                column.equals(OrderFields.MANIFEST_HASH.name())
                    && !sent.parsed().header().contains(column));
    return sent.withRow(row);
  }

  private Map<String, String> row() {
    Map<String, String> row = new LinkedHashMap<>();
    row.put(OrderFields.DOCUMENT.name(), document);
    row.put(OrderFields.FILE.name(), file);
    row.put(OrderFields.FILE_HASH.name(), fileHash);
    row.put(OrderFields.RECORD_HASH.name(), recordHash);
    row.put(OrderFields.TOTAL.name(), total.map(BigDecimal::toPlainString).orElse(""));
    row.put(OrderFields.ON.name(), on);
    row.put(OrderFields.MANIFEST_HASH.name(), manifestHash);
    return row;
  }

  /** Where it is kept. */
  public Path in(Path job) {
    return job.resolve(FOLDER).resolve(file);
  }
}
