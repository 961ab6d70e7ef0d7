package sheathwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Choice;
import sheathwright.figure.OneOf;
import sheathwright.figure.Table;
import sheathwright.figure.Units;

/** A row and a column find the value that the source prints there. All from memory of the print. */
class PrintedValuesTest {

  @ParameterizedTest(name = "{0}: {1} {2} {3}")
  @CsvSource({
    // NDS 2018 Supplement, Table 4A
    "nds/2018/table-4a.csv, douglas-fir-larch, no-2, fb_psi, 900",
    "nds/2018/table-4a.csv, douglas-fir-larch, no-2, emin_psi, 580000",
    "nds/2018/table-4a.csv, spruce-pine-fir, no-2, fb_psi, 875",
    "nds/2018/table-4a.csv, hem-fir, select-structural, fc_perp_psi, 405",
    // NDS 2018 Supplement, Table 4B, southern pine from 2013
    "nds/2018/table-4b.csv, southern-pine, no-2, 2x4, 1100",
    "nds/2018/table-4b.csv, southern-pine, no-2, 2x12, 750",
  })
  void lumberValue(String file, String species, String grade, String column, double psi) {
    assertThat(value(Published.table(file, "made", "made", 2), column, species, grade))
        .isEqualTo(psi);
  }

  @ParameterizedTest(name = "{0}: {1} {2}")
  @CsvSource({
    // PS 20: a dressed 2x4 is 1-1/2 by 3-1/2, a 2x8 is 7-1/4 deep
    "ps20/2020/dressed-sizes.csv, 2x4, thickness_in, 1.5",
    "ps20/2020/dressed-sizes.csv, 2x4, width_in, 3.5",
    "ps20/2020/dressed-sizes.csv, 2x8, width_in, 7.25",
    // ASCE 7-16, Table 1.5-2: importance factor for snow
    "asce7/2016/snow-importance.csv, i, importance, 0.8",
    "asce7/2016/snow-importance.csv, iv, importance, 1.2",
    // ASCE 7-16, Table 7.3-2: thermal factor
    "asce7/2016/snow-thermal.csv, unheated, ct, 1.2",
    // ASCE 7-16, Table 26.10-1: Exposure C at 15 ft and at 30 ft
    "asce7/2016/velocity-exposure.csv, c, at_15, 0.85",
    "asce7/2016/velocity-exposure.csv, c, at_30, 0.98",
    // IBC Table 1604.3: roof members that hold plaster, l/360 and l/240
    "ibc/2015-2024/deflection-limits.csv, plaster, live, 360",
    "ibc/2015-2024/deflection-limits.csv, plaster, total, 240",
  })
  void otherValue(String file, String key, String column, double printed) {
    assertThat(value(Published.table(file, "made", "made", 1), column, key)).isEqualTo(printed);
  }

  private static double value(Table table, String column, String... keys) {
    OneOf<?>[] words = List.of(keys).stream().map(Choice::literal).toArray(OneOf<?>[]::new);
    return table.number(Units.RATIO, column, words).value();
  }
}
