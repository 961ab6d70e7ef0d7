package sheathwright.framing.rafter;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.Lumber;

/** The page that tells users where not to trust a printed span, against print and method. */
class PrintedTablesPageTest {

  private static final Path PAGE = Path.of("docs", "printed-tables.md");
  private static final Map<String, PrintedSpan> CELLS =
      PrintedSpan.all().stream().collect(toMap(PrintedSpan::key, Function.identity()));

  private record Line(PrintedSpan cell, String reason) {

    String text(String table) {
      return "| %s | %s %s %s | %s | %s | **%s** | %s | %s |"
          .formatted(
              table,
              cell.species().word(),
              cell.grade().word(),
              cell.size().word(),
              plain(cell.spacing()),
              plain(cell.dead()),
              cell.spelled(),
              cell.computed().inFeetAndInches().value(),
              reason);
    }

    boolean isUnsafe() {
      return cell.difference() < 0;
    }

    private static String plain(double number) {
      return number == Math.rint(number) ? String.valueOf((int) number) : String.valueOf(number);
    }
  }

  /** Every known cell that differs by more than an inch. */
  private static Stream<Line> lines() {
    Stream<Line> held =
        PrintedSpan.rows("rafter-span-differences.csv").stream()
            .map(row -> new Line(CELLS.get(PrintedSpan.keyOf(row)), row.get("reason")));
    Stream<Line> others =
        PrintedSpan.rows("rafter-span-other-slips.csv").stream()
            .map(row -> new Line(PrintedSpan.alone(row), "likely misprint"));
    return Stream.concat(held, others).filter(line -> Math.abs(line.cell().difference()) > 1);
  }

  private static String table(boolean unsafe) {
    StringBuilder table =
        new StringBuilder(
            """
            | table | rafter | spacing in | dead psf | printed | computed | why |
            | --- | --- | --- | --- | --- | --- | --- |
            """);
    lines()
        .filter(line -> line.isUnsafe() == unsafe)
        .forEach(line -> table.append(line.text(line.cell().key().split(",")[0])).append("\n"));
    return table.toString();
  }

  @Test
  void page_listsThePrintedSpansThatAreTooLong() throws IOException {
    assertThat(Files.readString(PAGE)).contains("## Print is unsafe\n").contains(table(true));
  }

  @Test
  void page_listsThePrintedSpansThatAreTooShort() throws IOException {
    assertThat(Files.readString(PAGE))
        .contains("## Print is on the safe side\n")
        .contains(table(false));
  }

  @Test
  void page_listsNothingElse() throws IOException {
    List<String> rows =
        Files.readAllLines(PAGE).stream().filter(line -> line.startsWith("| I")).toList();
    assertThat(rows).hasSize((int) lines().count()).doesNotHaveDuplicates();
  }

  @Test
  void otherSlips_areComputedAsTheirSourceSays() {
    for (CSVRecord row : PrintedSpan.rows("rafter-span-other-slips.csv")) {
      assertThat(PrintedSpan.alone(row).computed().inFeetAndInches().value())
          .isEqualTo(row.get("computed"));
    }
  }

  @Test
  void theCheck_saysNoWherePrintIsCutByBearing() {
    lines()
        .filter(line -> line.reason().equals("bearing limit"))
        .map(Line::cell)
        .forEach(cell -> assertThat(checked(cell).bearing().ok().holds()).isFalse());
  }

  /** The check of a rafter at the span that the method gives, on a seat of 1-1/2 in. */
  private static RafterCheck checked(PrintedSpan cell) {
    return Rafters.rafterCheck(
        Lumber.of(cell.species(), cell.grade(), cell.size(), cell.valueSet()),
        UniformLoad.spacing(in(cell.spacing())).live(psf(cell.live())).dead(psf(cell.dead())),
        cell.load(),
        number(cell.deflectionLimit()),
        ClearSpan.of(in(cell.span())));
  }
}
