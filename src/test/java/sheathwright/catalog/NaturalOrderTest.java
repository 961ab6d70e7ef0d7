package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names in the order in which people count. */
class NaturalOrderTest {

  private static final List<String> COUNTED =
      List.of(
          "1",
          "2",
          "007",
          "10",
          "100000000000000000000000",
          "A-3-5",
          "A-3-10",
          "A-3-10a",
          "A-10-1",
          "r",
          "R-1",
          "r-1",
          "R-1a",
          "R-2",
          "r-9",
          "R-10",
          "R-10-2",
          "roof");

  @Test
  void names_standAsPeopleCountThem() {
    for (int seed = 0; seed < 20; seed++) {
      List<String> names = new ArrayList<>(COUNTED);
      Collections.shuffle(names, new Random(seed));
      names.sort(NaturalOrder.OF_NAMES);
      assertThat(names).isEqualTo(COUNTED);
    }
  }

  @Test
  void twoNames_areNeverOne() {
    assertThat(NaturalOrder.OF_NAMES.compare("R-1", "r-1")).isNotZero();
    assertThat(NaturalOrder.OF_NAMES.compare("7", "07")).isNotZero();
    assertThat(NaturalOrder.OF_NAMES.compare("7", "7")).isZero();
  }
}
