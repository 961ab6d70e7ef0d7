package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.figure.Working;

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

  /** The letters of NDS 2018, Tables 4.3.1 and 11.3.1. */
  @Test
  void factors_haveTheirLetters() {
    ServiceConditions wet = ServiceConditions.of(Moisture.STAYS_WET).temperature(number(110));
    Lumber lumber = Lumber.of(Species.HEM_FIR, Grade.NO_1, LumberSize.SIZE_2X8, ValueSet.NDS2018);
    ServiceFactors service = new AdjustedWood(Member.of(lumber).service(wet)).service;
    assertThat(service.wetShear.name()).isEqualTo("wet_shear_factor");
    assertThat(service.wetModulus.name()).isEqualTo("wet_modulus_factor");
    assertThat(service.warmStress.name()).isEqualTo("temperature_stress_factor");
    assertThat(service.incisedBearing.name()).isEqualTo("incising_bearing_factor");
    assertThat(Seat.of(in(3)).bearing().value()).isEqualTo(3);
    assertThat(Working.of(RepetitiveMember.factor(RepetitiveMember.spacing(in(16)))))
        .contains("since s ≤ 24 in", "NDS 2018, 4.3.9 ");
    assertThat(Working.of(ConnectionFactors.temperature(wet))).contains("C_t = ");
    assertThat(Working.of(ConnectionFactors.lateralMoisture(Moisture.STAYS_WET.choice())))
        .contains("C_M = ");
    assertThat(Working.of(Nds.nailDiameter(in(0.131)).squared().as("d2", Units.SQUARE_INCH)))
        .contains("d2 = D^2");
    Figure<Ratio> three = Nds.number("three_times", 3, "3.0", Nds.COPIED);
    assertThat(three.value()).isEqualTo(3);
    assertThat(Working.of(three.times(three).in(Units.RATIO).as("nine", Units.RATIO)))
        .startsWith("nine = 3.0 × 3.0");
  }

  @Test
  void aStampAndAStick_keepWhatTheyAreTold() {
    GradeStamp stamp = GradeStamp.of(Species.HEM_FIR, Grade.NO_2);
    assertThat(stamp.of("sister").species().choice().name()).isEqualTo("sister_species");
    assertThat(stamp.of("sister").grade().choice().value()).isEqualTo(Grade.NO_2);
    ActualSize stick = ActualSize.of(Stock.GREEN).thickness(in(1.5625)).depth(in(7.5));
    assertThat(stick.stock().choice().value()).isEqualTo(Stock.GREEN);
    assertThat(stick.depth().value()).isEqualTo(7.5);
  }

  /** By hand: 1.5 by 7.25 in has 10.875 sq in, 13.14 in³ and 47.63 in⁴. */
  @Test
  void aSectionOfItsOwn_namesWhoseItIs() {
    RafterSection sister = RafterSection.of("sister", in(1.5), in(7.25));
    assertThat(sister.area().value()).isEqualTo(10.875);
    assertThat(sister.area().name()).isEqualTo("sister_section_sq_in");
    assertThat(sister.sectionModulus().name()).isEqualTo("sister_section_modulus_in3");
    assertThat(sister.secondMoment().name()).isEqualTo("sister_second_moment_in4");
    assertThat(Working.of(sister.area())).startsWith("A_sister = ");
    assertThat(Working.of(sister.sectionModulus())).contains("S_sister = ");
    assertThat(Working.of(sister.secondMoment())).contains("I_sister = ");
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
