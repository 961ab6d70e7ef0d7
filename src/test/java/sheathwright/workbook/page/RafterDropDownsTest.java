package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Asked;
import sheathwright.wood.Grade;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Moisture;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;
import sheathwright.wood.ValueSet;
import sheathwright.workbook.book.Cells;

/**
 * Every word of the drop-downs of a rafter, recalculated by POI cell by cell. The file is left for
 * LibreOffice, which does the same in the gate.
 */
class RafterDropDownsTest {

  private static final String HEAD =
      "species,grade,size,value_set,load_duration,spacing_in,stock,moisture,unbraced_in\n";

  /** Each wood that a value set holds once, the other words taken in turn. */
  private static List<String> rows() {
    List<Stock> stocks = List.of(Stock.DRESSED, Stock.GREEN, Stock.PRE_1970, Stock.FULL_SAWN);
    List<String> rows = new ArrayList<>();
    for (ValueSet valueSet : ValueSet.values()) {
      for (Species species : Species.values()) {
        for (Grade grade : Grade.values()) {
          for (LumberSize size : LumberSize.values()) {
            int turn = rows.size();
            List<String> cells =
                List.of(
                    species.word(),
                    grade.word(),
                    size.word(),
                    valueSet.word(),
                    LoadDuration.values()[turn % 5].word(),
                    "16",
                    stocks.get(turn % 4).word(),
                    Moisture.values()[turn % 4].word(),
                    "24");
            if (isHeld(cells)) {
              rows.add(String.join(",", cells));
            }
          }
        }
      }
    }
    return rows;
  }

  private static boolean isHeld(List<String> cells) {
    Asked asked = Asked.of("design_values");
    String[] columns = HEAD.strip().split(",");
    for (int i = 0; i < columns.length; i++) {
      asked = asked.with(columns[i], cells.get(i));
    }
    return asked.refusal().isEmpty();
  }

  @Test
  void everyWood_isRecalculatedToWhatJavaSays() {
    List<String> rows = rows();
    // 2018: 23 grades of fir and spruce in five sizes, 5 studs in two, 2 grades of 4 in; southern
    // pine 4 in five and a stud in two; 1997: 12 and southern pine again; 2012: 4. Where nobody
    // knows: the grade of 6, 4 and 1 species, and the species of 4 grades and of an unknown one.
    int known = (23 * 5 + 5 * 2 + 2) + (4 * 5 + 2) + (12 * 5 + 4 * 5 + 2) + 4 * 5;
    int unknown = (6 + 4 + 1) * 5 + 3 * (4 + 1) * 5;
    assertThat(rows).hasSize(known + unknown);
    byte[] book =
        FillBook.bytes(Samples.filled("design_values", HEAD + String.join("\n", rows) + "\n"));
    Samples.keep(Path.of("target", "workbooks", "every-wood.xlsx"), book);

    Map<String, Object> written = Cells.written(book);
    assertThat(written).hasSizeGreaterThan(rows.size() * 19).doesNotContainValue("#error");
    assertThat(Agreement.differences(written, Cells.byPoi(book))).isEmpty();
  }
}
