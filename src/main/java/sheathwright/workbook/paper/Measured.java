package sheathwright.workbook.paper;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.life.MarkFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.life.bill.Share;

/** What the table of marks says of each mark: what was measured there, and by whom. */
final class Measured {

  /** In few words, as a column of a list holds them. */
  private static final Map<Field<? extends Traced>, String> WORDS = new LinkedHashMap<>();

  static {
    WORDS.put(MarkFields.PROBE, "awl");
    WORDS.put(MarkFields.MOISTURE, "moisture");
    WORDS.put(MarkFields.THICKNESS, "thick");
    WORDS.put(MarkFields.HUMP, "hump");
    WORDS.put(MarkFields.JOINT_GAP, "gap");
    WORDS.put(MarkFields.JOINT_LENGTH, "joint");
    WORDS.put(MarkFields.BEARING, "bearing");
    WORDS.put(MarkFields.SOUND_NAILS, "sound nails");
  }

  private final Map<String, Row> rows = new HashMap<>();

  Measured(Estimate estimate) {
    estimate.deck().marked().forEach(marked -> rows.put(marked.mark().key(), marked.row()));
  }

  /** What was measured of a mark; nothing where nothing was. */
  String words(Share share) {
    Row row = rows.get(share.mark());
    List<Map.Entry<Field<? extends Traced>, String>> known =
        row == null
            ? List.of()
            : WORDS.entrySet().stream().filter(entry -> row.has(entry.getKey())).toList();
    return known.stream()
        .map(entry -> entry.getValue() + " " + Spoken.of(row.of(entry.getKey())))
        .collect(Collectors.joining(", "));
  }

  /** Who found a mark; nothing where the table does not say. */
  String by(Share share) {
    Row row = rows.get(share.mark());
    return row != null && row.has(MarkFields.BY) ? row.of(MarkFields.BY).value() : "";
  }
}
