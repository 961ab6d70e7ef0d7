package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;

class SagSurveyTest {

  @Test
  void worst_ofTheCottageIsItsEighthRafter() {
    // question 12 of the invented questions, worked by hand: 1-5/8 in is L/88.8
    SagSurvey survey =
        SagSurvey.of("A", TestCottage.rafters("A", TestCottage.A), Amounts.number(240));
    assertThat(survey.rafter().plain()).isEqualTo("A-8");
    assertThat(survey.worst().spanOverSag().value()).isCloseTo(88.75203139603666, within(1e-9));
    assertThat(survey.roll().rows()).hasSize(15);
  }

  @Test
  void worst_ofStraightRaftersIsNoSag() {
    SagSurvey survey =
        SagSurvey.of("A", TestCottage.rafters("A", new double[15]), Amounts.number(240));
    assertThat(survey.worst().spanOverSag().shown()).isEqualTo("no sag");
  }
}
