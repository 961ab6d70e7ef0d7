package sheathwright.fastening.uplift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HoldDownsTest {

  /** Brute force: each link's strength over the area it holds, compared one by one. */
  @Test
  void weakestLink_isTheOneThatTheLeastUpliftBreaks() {
    Random random = new Random(20_270_513);
    for (int i = 0; i < 1000; i++) {
      double uplift = random.nextDouble(10, 120);
      double seam = random.nextDouble(20, 160);
      double clip = random.nextDouble(60, 400);
      double screw = random.nextDouble(30, 150);
      int screws = random.nextInt(1, 3);
      double clips = random.nextInt(8, 30);
      double cover = random.nextInt(12, 25);
      double nail = random.nextDouble(30, 200);
      double nails = random.nextInt(3, 13);
      double rafters = random.nextInt(12, 25);
      HoldDown answer =
          HoldDowns.weakestLink(
              psf(uplift),
              StandingSeam.tested(psf(seam), lb(clip)).cover(in(cover)),
              ScrewedClips.of(number(screws), lb(screw)).spacing(in(clips)),
              NailedDeck.nail(lb(nail)).spacing(in(nails)).supports(in(rafters)));
      Map<String, Double> holds =
          Map.of(
              "seam", seam,
              "clip", 144 * clip / (clips * cover),
              "screws", 144 * screw * screws / (clips * cover),
              "nails", 144 * nail / (nails * rafters));
      var weakest = holds.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow();
      assertThat(answer.weakest()).hasToString(weakest.getKey());
      assertThat(answer)
          .asString()
          .startsWith("covering to deck holds " + answer.covering())
          .contains("; weakest: " + weakest.getKey() + ", ok: ");
      assertThat(answer.ok()).hasToString(uplift <= weakest.getValue() ? "yes" : "no");
      assertThat(answer.deck().value()).isCloseTo(holds.get("nails"), within(1e-9 * 200));
      assertThat(Math.min(answer.covering().value(), answer.deck().value()))
          .isCloseTo(weakest.getValue(), within(1e-6));
      assertThat(answer.nails().ratio().value())
          .isCloseTo(uplift / holds.get("nails"), within(1e-9));
      assertThat(answer.screws().ratio().value())
          .isCloseTo(uplift / holds.get("screws"), within(1e-9));
      assertThat(answer.clip().ratio().value()).isCloseTo(uplift / holds.get("clip"), within(1e-9));
      assertThat(answer.seam().ratio().value()).isCloseTo(uplift / seam, within(1e-9));
    }
  }
}
