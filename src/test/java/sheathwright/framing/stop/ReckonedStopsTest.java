package sheathwright.framing.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.psf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.RefusedException;

/** IRC R802.4.4 and IEBC 706.2 as they are cited: at the limit it passes, beyond it stops. */
class ReckonedStopsTest {

  @ParameterizedTest
  @CsvSource({
    "3, ONLY_A_RIDGE_BOARD, nothing",
    "2.99, ONLY_A_RIDGE_BOARD, ridge-board",
    "2.99, RIDGE_NOT_SEEN, ridge-board",
    "1, RIDGE_BEAM, nothing",
    "0, RIDGE_NOT_SEEN, ridge-board",
    "12, RIDGE_NOT_SEEN, nothing"
  })
  void belowThreeInTwelve_aRidgeBeamIsAsked(double rise, Ridge ridge, String found) {
    assertThat(ReckonedStops.ridgeStop(pitch(rise), ridge).plain()).isEqualTo(found);
  }

  /**
   * 2 psf may become 2.1 psf, 4 psf 4.2 psf and 16 psf 16.8 psf; over an old covering nothing may
   * go.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 2.1, nothing",
    "2, 2.11, heavier-covering",
    "4, 4.2, nothing",
    "16, 16.8, nothing",
    "16, 16.81, heavier-covering",
    "4, 10, heavier-covering",
    "10, 1, nothing",
    "0, 2, heavier-covering",
    "0, 0, nothing"
  })
  void aCoveringHeavierByMoreThanFivePercent_stops(double old, double renewed, String found) {
    assertThat(ReckonedStops.coveringStop(CoveringChange.from(psf(old)).to(psf(renewed))).plain())
        .isEqualTo(found);
  }

  @Test
  void whatIsReckoned_isAnsweredAsWhatIsSeen() {
    StopAnswer answer =
        RepairStops.framingStop(
            number(0.4), ReckonedStops.coveringStop(CoveringChange.from(psf(2)).to(psf(9))));
    assertThat(answer.decides().plain()).isEqualTo("a licensed engineer");
    assertThat(answer.meanwhile().plain()).contains("not loaded on the roof");
  }

  @Test
  void aWeightBelowNothing_isRefused() {
    assertThatThrownBy(
            () -> ReckonedStops.coveringStop(CoveringChange.from(psf(-1)).to(psf(2))).value())
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("old_psf");
  }
}
