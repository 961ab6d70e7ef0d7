package sheathwright.sheathing.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.figure.Amounts.sqft;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetCountsTest {

  /** The quick count on the invented demo roofs; arithmetic on a sheet of 4 × 8 = 32 sq ft. */
  @ParameterizedTest(name = "{0} sq ft and {1} % waste take {2}")
  @CsvSource({
    "704.36, 0, 23", // 704.36 ÷ 32 = 22.01
    "766.78, 0, 24", // 766.78 ÷ 32 = 23.96
    "1973.26, 0, 62", // 1973.26 ÷ 32 = 61.66
    "1973.26, 12, 70", // 1973.26 × 1.12 ÷ 32 = 69.06
    "3885, 0, 122", // 3885 ÷ 32 = 121.41
    "1, 0, 1",
    "100, 100, 7" // 100 × 2 ÷ 32 = 6.25
  })
  void sheetsByArea_countsTheDemoRoofs(double area, double waste, double sheets) {
    assertThat(SheetCounts.sheetsByArea(sqft(area), pct(waste)).value()).isEqualTo(sheets);
  }

  /** The area rule's column of the table for a 40 ft eave in the trade's quantities; arithmetic. */
  @ParameterizedTest(name = "a 40 ft eave and {0} ft of slope take {1}")
  @CsvSource({
    "12, 15",
    "12.5, 16",
    "13, 17",
    "13.5, 17",
    "14, 18",
    "14.5, 19",
    "15, 19",
    "16, 20",
    "16.77, 21",
    "17, 22",
    "18, 23",
    "19, 24",
    "20, 25",
    "20.5, 26",
    "22, 28",
    "24, 30",
    "26.25, 33"
  })
  void sheetsByArea_countsPlanesOfOneEave(double slope, double sheets) {
    assertThat(SheetCounts.sheetsByArea(sqft(40 * slope), pct(0)).value()).isEqualTo(sheets);
  }

  @Test
  void sheetsByArea_addsNoSheetToAWholeNumberOfThem() {
    for (int whole = 1; whole <= 500; whole++) {
      double area = 32.0 * whole;
      assertThat(SheetCounts.sheetsByArea(sqft(area), pct(0)).value()).isEqualTo(whole);
      assertThat(SheetCounts.sheetsByArea(sqft(area + 0.01), pct(0)).value()).isEqualTo(whole + 1);
      // A tenth of waste on ten sheets is one sheet, though 1.1 is not exact in binary.
      assertThat(SheetCounts.sheetsByArea(sqft(10 * area), pct(10)).value()).isEqualTo(11 * whole);
    }
  }
}
