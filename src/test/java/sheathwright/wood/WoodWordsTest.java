package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.RefusedException;

/** What stamps and the trade write, and what wood is told to be. */
class WoodWordsTest {

  /** Stamps as the grading agencies print them (from memory). */
  @Test
  void words_areThoseOfTables() {
    assertThat(Knowledge.IS_STAMPED.word()).isEqualTo("stamped");
    assertThat(Moisture.STAYS_WET.alsoWritten()).isEqualTo("wet");
    assertThat(LoadDuration.DURATION_SNOW.alsoWritten()).isEqualTo("1.15");
    assertThat(Grade.NO_1_AND_BETTER.alsoWritten()).isEqualTo("no-1&btr");
    assertThat(Grade.NO_2.inTheTrade()).containsExactly("#2");
    assertThat(Grade.SELECT_STRUCTURAL.inTheTrade()).containsExactly("SS");
    assertThat(Grade.STUD.inTheTrade()).isEmpty();
    assertThat(Species.HEM_FIR.inTheTrade()).containsExactly("HF", "HEM");
  }

  /** NDS 2018 Table 11.3.3, secondary source: 1 where it stays dry, 0.7 for lateral loads else. */
  @Test
  void aConnectionThatGetsWet_isWeaker() {
    for (Moisture each : Moisture.values()) {
      assertThat(ConnectionFactors.lateralMoisture(each.choice()).value())
          .isEqualTo(each == Moisture.STAYS_DRY ? 1 : 0.7);
    }
  }

  /** NDS 2018 Table 11.3.4, from memory: to 100, 125 and 150 °F, dry and wet. */
  @ParameterizedTest
  @CsvSource({
    "STAYS_DRY, 100, 1",
    "STAYS_DRY, 125, 0.8",
    "STAYS_DRY, 150, 0.7",
    "STAYS_WET, 100, 1",
    "STAYS_WET, 125, 0.7",
    "GETS_WET_LATER, 150, 0.5",
    "DRIES_LATER, 150, 0.7"
  })
  void aWarmConnection_isWeaker(Moisture moisture, double degrees, double factor) {
    ServiceConditions place = ServiceConditions.of(moisture).temperature(number(degrees));
    assertThat(ConnectionFactors.temperature(place).value()).isEqualTo(factor);
  }

  @Test
  void whatStandsByItself_isHeldToItsRange() {
    assertThat(RepetitiveMember.spacing(in(24)).value()).isEqualTo(24);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> RepetitiveMember.spacing(in(49)).value());
    assertThat(Nds.gravity("g", number(0.8)).value()).isEqualTo(0.8);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Nds.gravity("g", number(0.81)).value());
    assertThat(Nds.nailDiameter(in(0.131)).value()).isEqualTo(0.131);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Nds.nailDiameter(in(0.25)).value());
  }
}
