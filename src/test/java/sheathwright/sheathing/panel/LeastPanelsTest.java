package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;

class LeastPanelsTest {

  /** IRC 2021 Table R503.2.1.1(1): the thinnest whose span without edge support is printed. */
  @ParameterizedTest
  @CsvSource({
    "12, 0.375",
    "16, 0.375",
    "20, 0.375",
    "20.5, 0.4375",
    "24, 0.4375",
    "28, 0.46875",
    "32, 0.59375",
    "36, 0.71875",
    "48, 0.875"
  })
  void unsupported_isTheThinnestPrinted(double supports, double least) {
    assertThat(LeastPanels.unsupported(Figure.of(supports, Units.INCH)).value()).isEqualTo(least);
  }

  @Test
  void unsupported_endsWithTheTable() {
    assertThat(LeastPanels.unsupported(Figure.of(49, Units.INCH)).refusal()).isPresent();
  }
}
