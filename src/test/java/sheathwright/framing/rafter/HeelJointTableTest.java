package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/**
 * The code's nails of heel joints, cell by cell, against the rule that made them: a roof of 15 psf
 * and the ground snow over a span with eaves of 2 ft, in 16d common nails of 138 lb for 1.15 times
 * as long as ten years.
 */
class HeelJointTableTest {

  private static final Path PAGE = Path.of("docs", "printed-tables.md");
  private static final double[] SPANS = {12, 20, 28, 36};
  private static final double EAVE = 2;
  private static final double DEAD = 15;
  private static final double NAIL = 138 * 1.15;

  /** Nails of roof live load that come nearest to print without being more anywhere. */
  private static final double LIVE_NAILS_EACH = 0.0659;

  private record Cell(double rise, double spacing, String snow, double span, int nails) {

    private double psf() {
      return Double.parseDouble(snow.substring(3));
    }

    private boolean isLive() {
      return snow.equals("to-20");
    }

    /** The eave beyond the wall holds against the thrust: moments about the plate. */
    private int byRule() {
      double half = span / 2;
      double load = (DEAD + psf()) * spacing / 12;
      double thrust = load * (half * half - EAVE * EAVE) / 2 / (half * rise / 12);
      double live = LIVE_NAILS_EACH * spacing * span / rise;
      return (int) Math.max(3, Math.ceil((isLive() ? live : thrust / NAIL) - 1e-9));
    }

    private String line() {
      return "| %.0f in 12 | %.0f | 20 or roof live | %.0f | **%d** | %d |"
          .formatted(rise, spacing, span, nails, byRule());
    }

    private Asked asked() {
      return Asked.of("heel_nails")
          .with("span_ft", "" + span / 2)
          .with("rise_in_12", "" + rise)
          .with("spacing_in", "" + spacing)
          .with("load_psf", "1")
          .with("adjusted_lb", "1000")
          .with("code_snow", snow);
    }
  }

  private static List<Cell> cells() {
    List<Cell> cells = new ArrayList<>();
    for (List<String> row : HeelRow.TABLE.rows()) {
      for (int i = 0; i < SPANS.length; i++) {
        cells.add(
            new Cell(
                Double.parseDouble(row.get(0)),
                Double.parseDouble(row.get(1)),
                row.get(2),
                SPANS[i],
                Integer.parseInt(row.get(3 + i))));
      }
    }
    return cells;
  }

  @Test
  void eachCellOfSnow_isMadeByTheRule() {
    List<Cell> snow = cells().stream().filter(cell -> !cell.isLive()).toList();
    assertThat(snow)
        .hasSize(216)
        .allSatisfy(cell -> assertThat(cell.byRule()).isEqualTo(cell.nails));
  }

  @Test
  void eachCellOfRoofLive_isTheRulesOrANailMore() {
    List<Cell> live = cells().stream().filter(Cell::isLive).toList();
    assertThat(live)
        .hasSize(72)
        .allSatisfy(cell -> assertThat(cell.nails - cell.byRule()).isBetween(0, 1));
  }

  @Test
  void thePage_listsEachCellThatTheRuleDoesNotMake() throws IOException {
    List<String> slips =
        cells().stream().filter(cell -> cell.byRule() != cell.nails).map(Cell::line).toList();
    List<String> told =
        Files.readAllLines(PAGE).stream().filter(line -> line.contains("in 12 | ")).toList();
    assertThat(told).isEqualTo(slips);
  }

  @Test
  void heelNails_readsEachCellAtItsOwnRow() {
    for (Cell cell : cells()) {
      assertThat(cell.asked().number("code_nails")).as("%s", cell).isEqualTo(cell.nails);
      assertThat(cell.asked().number("nails")).as("the more of both").isEqualTo(cell.nails);
      assertThat(cell.asked().number("computed_nails")).isEqualTo(3);
    }
  }

  /** Toward more nails: by hand from the table. */
  @ParameterizedTest
  @CsvSource({
    // 10.1 ft rafters make 20.2 ft, read as 28; 4.9 in 12 as 4; 13 in as 16.
    "10.1, 4.9, 13, to-30, 8",
    "6, 14, 24, to-70, 3",
    "14, 6.9, 24, to-50, 14"
  })
  void betweenPrintedNumbers_theRowWithMoreNailsCounts(
      String span, String rise, String spacing, String snow, double nails) {
    assertThat(
            Asked.of("heel_nails")
                .with("span_ft", span)
                .with("rise_in_12", rise)
                .with("spacing_in", spacing)
                .with("load_psf", "1")
                .with("adjusted_lb", "1000")
                .with("code_snow", snow)
                .number("code_nails"))
        .isEqualTo(nails);
  }

  /** The footnote, from memory: 1.5, 1.33, 1.25 and 1.2 times at 1/3, 1/4, 1/5 and 1/6. */
  @ParameterizedTest
  @CsvSource({"3, 1.5", "4, 1.33", "5, 1.25", "6, 1.2"})
  void aTieAboveThePlate_takesMore(double part, double factor) {
    // 18 ft rafters on 4 in 12 rise 72 in; 24 in apart under 50 psf they take 22 nails.
    Asked raised =
        Asked.of("heel_nails")
            .with("span_ft", "18")
            .with("rise_in_12", "4")
            .with("spacing_in", "24")
            .with("tie_height_in", "" + 72 / part)
            .with("load_psf", "1")
            .with("adjusted_lb", "1000")
            .with("code_snow", "to-50");
    assertThat(raised.number("code_nails")).isCloseTo(22 * factor, within(1.0));
    assertThat(raised.number("code_nails")).isGreaterThanOrEqualTo(Math.floor(22 * factor));
  }

  /** Beyond the table's ends, and where nobody said the snow, statics alone tell. */
  @ParameterizedTest
  @CsvSource({
    "12, 2.9, 16, to-30",
    "18.1, 4, 16, to-30",
    "12, 4, 24.1, to-30",
    "12, 4, 16, over-70",
    "12, 4, 16, not-said"
  })
  void whereTheTableHasNoRow_onlyTheComputedCounts(
      String span, String rise, String spacing, String snow) {
    Asked asked =
        Asked.of("heel_nails")
            .with("span_ft", span)
            .with("rise_in_12", rise)
            .with("spacing_in", spacing)
            .with("load_psf", "30")
            .with("adjusted_lb", "138")
            .with("code_snow", snow);
    assertThat(asked.answer("code_nails")).isEmpty();
    assertThat(asked.number("nails")).isEqualTo(asked.number("computed_nails"));
  }
}
