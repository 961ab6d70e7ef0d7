package sheathwright.workbook.book;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.fastening.uplift.MakerRequirement.Sense;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Agreement;
import sheathwright.workbook.page.Sections;

/** What a covering's maker asks, as a list of a workbook. Invented numbers. */
class MakerListTest {

  private static final List<MakerRequirement> INVENTED =
      List.of(
          requirement("deck thickness", Units.INCH, 0.46875, Sense.AT_LEAST, 0.4375),
          requirement("clip spacing", Units.INCH, 24, Sense.AT_MOST, 16),
          requirement("uplift held", Units.PSF, 45, Sense.AT_LEAST, 57.3));

  private static <Q extends Quantity> MakerRequirement requirement(
      String what, Unit<Q> unit, double required, Sense sense, double found) {
    return new MakerRequirement(
        Choice.input("requirement", what, Source.GIVEN),
        Figure.input("required", required, unit, Limits.NONE, Source.GIVEN),
        Choice.input("sense", sense, Source.GIVEN),
        Figure.input("found", found, unit, Limits.NONE, Source.GIVEN),
        Choice.input("evidence", "photograph", Source.GIVEN));
  }

  private static byte[] workbook() {
    Book book = new Book(Particulars.of("A test", ""));
    Tab tab = book.tab("Proof", 24, 12, 12, 12, 12, 12, 12, 24);
    Roll roll = MakerRequirement.roll(INVENTED);
    Unit<?>[] units = new Unit<?>[roll.columns().size()];
    tab.list(roll, roll.columns(), Arrays.asList(units));
    tab.total("not met", MakerRequirement.unmet(roll), "");
    return book.finished(
        Sections.workingTab(book, "invented"), Sections.tablesTab(book, "invented"));
  }

  @Test
  void met_isOneFormulaDownTheList() {
    Map<String, Set<String>> formulas =
        Cells.formulas(workbook()).entrySet().stream()
            .filter(cell -> cell.getKey().matches("Proof![A-H]\\d+"))
            .collect(
                groupingBy(
                    cell -> cell.getKey().replaceAll("\\d", ""),
                    mapping(
                        cell -> cell.getValue().replaceAll("(?<=\\b[A-H])\\d+", "#"), toSet())));
    assertThat(formulas.get("Proof!F"))
        .containsExactly(
            "IF(ISNUMBER(E#),IF(OR(AND(C#=\"at-least\",E#>=D#),AND(C#=\"at-most\",E#<=D#)),\"yes\",\"no\"),\"not-shown\")");
    assertThat(formulas.get("Proof!G")).containsExactly("IF(F#=\"no\",1,0)");
  }

  @Test
  void met_isWhatTheEngineRecalculates() {
    byte[] file = workbook();
    assertThat(Agreement.differences(Cells.written(file), Cells.byPoi(file))).isEmpty();
    assertThat(Cells.byPoi(file)).containsValues("yes", "no");
    List<Traced> met = MakerRequirement.roll(INVENTED).cellsOf("met");
    assertThat(met).extracting(Traced::plain).containsExactly("no", "yes", "yes");
  }
}
