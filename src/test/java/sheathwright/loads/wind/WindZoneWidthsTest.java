package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.pitch;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.roof.Slope;

class WindZoneWidthsTest {

  /** By hand from the note of the standard's figures: each of the four limits decides once. */
  @ParameterizedTest(name = "{0} ft wide, {1} ft high")
  @CsvSource({
    "28, 20, 3.0", // 2.8 by the width, 3 at least
    "50, 15, 5.0", // a tenth of the width
    "120, 12, 4.8", // 0.4 of the height, and 0.04 of the width too
    "200, 20, 8.0", // 0.4 of the height is as much as 0.04 of the width
    "200, 15, 8.0", // 0.04 of the width
    "60, 12, 4.8", // 0.4 of the height
  })
  void zoneWidth_isThatOfTheNote(double width, double height, double a) {
    assertThat(WindZoneWidths.zoneWidth(ft(width), RoofHeight.mean(ft(height))).value())
        .isCloseTo(a, within(1e-9));
  }

  /** A worked example of the ASCE 7-16 Guide: 10 ft eave, 16 ft run, 15 degrees: 12.1 ft. */
  @Test
  void meanRoofHeight_isThatOfTheGuide() {
    double rise = 12 * Math.tan(Math.toRadians(15));
    assertThat(WindZoneWidths.meanRoofHeight(ft(10), Slope.run(ft(16)).rise(pitch(rise))).value())
        .isCloseTo(12.1, within(0.05));
  }
}
