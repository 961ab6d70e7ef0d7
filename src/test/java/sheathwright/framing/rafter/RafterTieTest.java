package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** Ties above the plate: the code's span factors, and the pull that its heel joints are given. */
class RafterTieTest {

  /** 12 ft at 10 in 12: the ridge stands 120 in above the plate. */
  private static RafterTie tie(double height) {
    return new RafterTie(ft(12), pitch(10), in(height));
  }

  // IRC 2021 Table R802.4.1, footnote, secondary source; between two rows the lower one.
  @ParameterizedTest
  @CsvSource({
    "0,     1.00",
    "16,    1.00",
    "16.01, 0.90",
    "20,    0.90",
    "20.01, 0.83",
    "24,    0.83",
    "24.01, 0.76",
    "30,    0.76",
    "30.01, 0.67",
    "40,    0.67"
  })
  void spanFactor_isThePrintedOne(double height, double factor) {
    assertThat(tie(height).spanFactor().value()).isEqualTo(factor);
  }

  @Test
  void aTieAboveTheLowerThird_isForAnEngineer() {
    assertThat(tie(40.01).spanFactor().refusal()).isPresent();
    assertThat(thrust(40.01).refusal()).isPresent();
  }

  private static Asked thrust(double height) {
    return Asked.of("rafter_thrust")
        .with("span_ft", "12")
        .with("rise_in_12", "10")
        .with("spacing_in", "16")
        .with("load_psf", "30")
        .with("tie_height_in", String.valueOf(height));
  }

  // IRC 2021 Table R802.5.2, footnote: heel joints of raised ties, secondary source, as printed.
  @ParameterizedTest
  @CsvSource({"40, 1.5", "30, 1.33", "24, 1.25", "20, 1.2", "12, 1.11"})
  void thrust_growsByTheHeelJointFactor(double height, double factor) {
    double onThePlate = thrust(0).number("thrust_lb");
    assertThat(thrust(height).number("thrust_lb") / onThePlate).isCloseTo(factor, within(0.005));
  }
}
