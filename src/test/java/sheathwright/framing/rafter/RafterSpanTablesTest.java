package sheathwright.framing.rafter;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The rafter span tables as the codes print them, 4,480 cells, against the method. What print has
 * otherwise stands in {@code rafter-span-differences.csv}, each with its reason.
 */
class RafterSpanTablesTest {

  private static final int TWENTY_SIX_FEET = 26 * 12;

  private static final List<PrintedSpan> CELLS = PrintedSpan.all();
  private static final List<PrintedSpan> NUMBERS =
      CELLS.stream().filter(cell -> cell.printed() != null).toList();

  private static List<CSVRecord> differences() {
    return PrintedSpan.rows("rafter-span-differences.csv");
  }

  @Test
  void tables_areWhole() {
    assertThat(CELLS).extracting(PrintedSpan::key).doesNotHaveDuplicates();
    assertThat(CELLS).hasSize(7 * 4 * 4 * 2 * 4 * 5); // tables, species, grades, dead, spacing
    assertThat(NUMBERS).hasSize(4480 - 146); // 146 cells are printed as over 26 ft
  }

  @Test
  void rafterMaxSpan_reproducesThePrintedTables() {
    long exact = NUMBERS.stream().filter(cell -> cell.difference() == 0).count();
    long withinAnInch = NUMBERS.stream().filter(cell -> Math.abs(cell.difference()) <= 1).count();
    assertThat((double) exact / NUMBERS.size()).isGreaterThanOrEqualTo(0.985);
    assertThat((double) withinAnInch / NUMBERS.size()).isGreaterThanOrEqualTo(0.994);
  }

  @Test
  void rafterMaxSpan_spellsThePrintedFeetAndInches() {
    Set<String> otherwise =
        differences().stream().map(PrintedSpan::keyOf).collect(Collectors.toSet());
    assertThat(NUMBERS)
        .filteredOn(cell -> !otherwise.contains(cell.key()))
        .allSatisfy(
            cell ->
                assertThat(cell.computed().inFeetAndInches().value())
                    .as(cell.key())
                    .isEqualTo(cell.printed() / 12 + "-" + cell.printed() % 12));
  }

  @Test
  void rafterMaxSpan_isOver26FeetWhereTheTablesSaySo() {
    assertThat(CELLS)
        .filteredOn(cell -> cell.printed() == null)
        .allSatisfy(cell -> assertThat(cell.span()).as(cell.key()).isGreaterThan(TWENTY_SIX_FEET));
  }

  @Test
  void cellsThatDiffer_areTheListedOnesAndNoOther() {
    var differing =
        NUMBERS.stream()
            .filter(cell -> cell.difference() != 0)
            .map(cell -> cell.key() + "," + cell.printed() + "," + cell.difference())
            .toList();
    assertThat(differing)
        .containsExactlyInAnyOrderElementsOf(
            differences().stream()
                .map(row -> row.stream().limit(8).collect(joining(",")))
                .toList());
  }
}
