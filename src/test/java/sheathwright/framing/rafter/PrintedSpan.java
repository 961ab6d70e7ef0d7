package sheathwright.framing.rafter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import sheathwright.figure.Amounts;
import sheathwright.figure.Word;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.Grade;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Species;
import sheathwright.wood.ValueSet;

/**
 * One cell of a printed rafter span table.
 *
 * @param key table, species, grade, size, dead load and spacing, as the table of differences has it
 * @param printed in inches; null where the cell says that the span is over 26 feet
 */
public record PrintedSpan(
    String key,
    Species species,
    Grade grade,
    LumberSize size,
    double spacing,
    double live,
    double dead,
    RafterLoad load,
    double deflectionLimit,
    ValueSet valueSet,
    Integer printed) {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  /** Every cell of the tables that {@code rafter-tables.csv} lists. */
  public static List<PrintedSpan> all() {
    List<PrintedSpan> cells = new ArrayList<>();
    for (CSVRecord table : rows("rafter-tables.csv")) {
      for (CSVRecord row : rows(table.get("file"))) {
        for (LumberSize size : LumberSize.values()) {
          cells.add(cell(table, row, size));
        }
      }
    }
    return cells;
  }

  /** The rows of a file below this package's test resources. */
  public static List<CSVRecord> rows(String file) {
    try (InputStream stream = PrintedSpan.class.getResourceAsStream(file)) {
      return FORMAT.parse(new InputStreamReader(stream, UTF_8)).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The cell that a row of the table of differences speaks of. */
  public static String keyOf(CSVRecord row) {
    return row.stream().limit(6).collect(joining(","));
  }

  private static PrintedSpan cell(CSVRecord table, CSVRecord row, LumberSize size) {
    String key =
        String.join(
            ",",
            table.get("table"),
            row.get("species"),
            row.get("grade"),
            size.word(),
            row.get("dead_psf"),
            row.get("spacing_in"));
    return new PrintedSpan(
        key,
        word(Species.values(), row.get("species")),
        word(Grade.values(), row.get("grade")),
        size,
        Double.parseDouble(row.get("spacing_in")),
        Double.parseDouble(table.get("live_psf")),
        Double.parseDouble(row.get("dead_psf")),
        word(RafterLoad.values(), table.get("load")),
        Double.parseDouble(table.get("deflection_limit")),
        word(ValueSet.values(), table.get("value_set")),
        inches(row.get(size.word())));
  }

  /** A cell of a row that says everything of itself. */
  public static PrintedSpan alone(CSVRecord row) {
    return new PrintedSpan(
        keyOf(row),
        word(Species.values(), row.get("species")),
        word(Grade.values(), row.get("grade")),
        word(LumberSize.values(), row.get("size")),
        Double.parseDouble(row.get("spacing_in")),
        Double.parseDouble(row.get("live_psf")),
        Double.parseDouble(row.get("dead_psf")),
        word(RafterLoad.values(), row.get("load")),
        Double.parseDouble(row.get("deflection_limit")),
        word(ValueSet.values(), row.get("value_set")),
        inches(row.get("printed")));
  }

  /** {@code 16-9} is 16 × 12 + 9; one cell is printed 12-12. */
  private static Integer inches(String feetAndInches) {
    if (feetAndInches.isEmpty()) {
      return null;
    }
    String[] parts = feetAndInches.split("-");
    return 12 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
  }

  public static <W extends Word> W word(W[] options, String word) {
    return Arrays.stream(options).filter(o -> o.word().equals(word)).findFirst().orElseThrow();
  }

  /** What the library says of the same rafter. */
  public RafterSpan computed() {
    return Rafters.rafterMaxSpan(
        Lumber.of(species, grade, size, valueSet),
        UniformLoad.spacing(Amounts.in(spacing)).live(Amounts.psf(live)).dead(Amounts.psf(dead)),
        load,
        Amounts.number(deflectionLimit));
  }

  /** The library's span in inches. */
  public double span() {
    return computed().span().value();
  }

  /** The library's nearest inch less the printed number. */
  public int difference() {
    return (int) computed().span().rounded().value() - printed;
  }

  /** As printed; the one cell of 156 inches among the misprints is printed 12-12. */
  public String spelled() {
    return printed == 156 ? "12-12" : printed / 12 + "-" + printed % 12;
  }

  /** Pounds on each inch of the horizontal projection. */
  double loadPerInch() {
    return (live + dead) * spacing / 144;
  }
}
