package sheathwright.fastening.uplift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClipSpacingsTest {

  /** By hand: 144 × screws × strength ÷ (80.3 × 16), in plywood and in OSB. */
  @ParameterizedTest
  @CsvSource({"71.6, 2, 16.1", "94.8, 2, 21.2", "71.6, 1, 8.02"})
  void clipSpacing_isThatOfTheLoad(double screw, double screws, double spacing) {
    assertThat(ClipSpacings.clipSpacing(lb(screw), number(screws), psf(80.3), in(16)).value())
        .isCloseTo(spacing, within(0.1));
  }

  /** Brute force: the widest whole sixteenth at which nothing is overloaded. */
  @Test
  void clipSpacingLimit_isTheWidestAtWhichNothingGivesWay() {
    Random random = new Random(20_270_512);
    for (int i = 0; i < 500; i++) {
      double screw = random.nextDouble(30, 150);
      int screws = random.nextInt(1, 4);
      double clip = random.nextDouble(80, 400);
      double seam = random.nextDouble(20, 160);
      double tested = random.nextInt(12, 37);
      double most = random.nextInt(8, 37);
      double uplift = random.nextDouble(15, 120);
      double cover = random.nextInt(12, 25);
      ClipSpacing answer =
          ClipSpacings.clipSpacingLimit(
              lb(screw),
              number(screws),
              StandingSeam.tested(psf(seam), lb(clip)).cover(in(cover)),
              MakerSpacing.tested(in(tested)).most(in(most)),
              psf(uplift));
      double widest = 0;
      for (double at = 0.0625; at <= 40; at += 0.0625) {
        double load = uplift * at * cover / 144;
        boolean holds =
            load <= screw * screws
                && load <= clip
                && load <= seam * tested * cover / 144
                && at <= tested
                && at <= most;
        widest = holds ? at : widest;
      }
      assertThat(answer.spacing().value()).isBetween(widest, widest + 0.0625);
    }
  }

  @ParameterizedTest(name = "{0} governs")
  @CsvSource({
    "screws, 60, 400, 150, 36",
    "clip,  150, 120, 150, 36",
    "seam,  150, 400,  40, 36",
    "maker, 150, 400, 150, 12",
  })
  void clipSpacingLimit_namesWhatDecides(
      String governs, double screw, double clip, double seam, double most) {
    var answer =
        ClipSpacings.clipSpacingLimit(
            lb(screw),
            number(2),
            StandingSeam.tested(psf(seam), lb(clip)).cover(in(16)),
            MakerSpacing.tested(in(36)).most(in(most)),
            psf(60));
    assertThat(answer.governs()).hasToString(governs);
    assertThat(answer).hasToString("clips %s apart, by %s".formatted(answer.spacing(), governs));
  }
}
