package sheathwright.sheathing.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointsTest {

  private static JointBearing at(
      double center, double joint, double gap, double width, double least) {
    return Joints.jointBearing(
        JointPlace.rafter(in(center)).joint(in(joint)),
        JointRules.gap(in(gap)).rafterWidth(in(width)).minBearing(in(least)));
  }

  /**
   * By hand: the rafter reaches from center − 3/4 to center + 3/4; the right sheet begins 1/8
   * further.
   */
  @ParameterizedTest
  @CsvSource({
    "47.25, 48, 1.5, 0, no", // far face 48: the right sheet misses it
    "95, 96, 1.5, 0, no",
    "144.5, 144, 0.25, 1.125, no",
    "96, 95.9375, 0.6875, 0.6875, yes", // centered: (1.5 − 1/8) ÷ 2 each
    "96, 95.75, 0.5, 0.875, yes", // just enough on the left
    "96, 95.7, 0.45, 0.925, no",
    "48, 60, 1.5, 0, no", // nowhere near
    "60, 48, 0, 1.5, no"
  })
  void jointBearing_isWhatStandsOnTheRafter(
      double center, double joint, double left, double right, String ok) {
    JointBearing bearing = at(center, joint, 0.125, 1.5, 0.5);
    assertThat(bearing.left().value()).isCloseTo(left, within(1e-9));
    assertThat(bearing.right().value()).isCloseTo(right, within(1e-9));
    assertThat(bearing.ok()).hasToString(ok);
  }

  /**
   * Independent: every sixty-fourth of an inch of the rafter's face is asked which sheet covers it.
   */
  @Test
  void jointBearing_agreesWithCountingSixtyFourths() {
    Random random = new Random(20_261_125);
    for (int i = 0; i < 400; i++) {
      int center = 640 + random.nextInt(640);
      int joint = center - 160 + random.nextInt(320);
      int gap = random.nextInt(16);
      int width = 64 + 2 * random.nextInt(64);
      int left = 0;
      int right = 0;
      for (int slice = center - width / 2; slice < center + width / 2; slice++) {
        left += slice < joint ? 1 : 0;
        right += slice >= joint + gap ? 1 : 0;
      }
      JointBearing bearing = at(center / 64.0, joint / 64.0, gap / 64.0, width / 64.0, 0.5);
      assertThat(bearing.left().value()).isCloseTo(left / 64.0, within(1e-9));
      assertThat(bearing.right().value()).isCloseTo(right / 64.0, within(1e-9));
    }
  }

  /**
   * By hand: slack is (1.5 − gap) ÷ 2 − 0.5; a sheet with its gap is longer or shorter than 96 in
   * by the creep.
   */
  @ParameterizedTest
  @CsvSource({
    "96, 0.125, 1.5, 0.5, 1 sheet", // slack 3/16, creep 1/8
    "95.9375, 0.125, 1.5, 0.5, 3 sheets", // creep 1/16: three use up all of it
    "95.75, 0.125, 1.5, 0.5, 1 sheet", // short sheets creep the other way
    "95.875, 0.125, 1.5, 0.5, no limit",
    "96, 0, 1.5, 0.5, no limit",
    "96, 0.125, 3, 0.5, 7 sheets", // two rafters side by side: slack 15/16
    "96, 0.125, 1.5, 0.75, 0 sheets", // no slack at all to begin with
    "95.875, 0.125, 1.5, 0.75, 0 sheets" // nothing creeps, and yet the first joint lacks bearing
  })
  void jointCreep_isHowManySheetsTheSlackLasts(
      double length, double gap, double width, double least, String panels) {
    assertThat(
            Joints.jointCreep(
                    in(length),
                    JointRules.gap(in(gap)).rafterWidth(in(width)).minBearing(in(least)))
                .panels())
        .hasToString(panels);
  }

  /**
   * Independent: sheets are laid end to end and each joint is held against the rafter's two faces.
   */
  @Test
  void jointCreep_agreesWithLayingSheetAfterSheet() {
    Random random = new Random(20_261_126);
    for (int i = 0; i < 300; i++) {
      double length = 96 + (random.nextInt(64) - 32) / 64.0;
      double gap = random.nextInt(16) / 64.0;
      double width = 1.5 + random.nextInt(3) * 0.75;
      double least = random.nextInt(40) / 64.0;
      int laid = 0;
      while (laid < 500 && hasBearing(laid + 1, length, gap, width, least)) {
        laid++;
      }
      if (!hasBearing(0, length, gap, width, least)) {
        laid = 0;
      }
      String expected = laid == 500 ? "no limit" : laid == 1 ? "1 sheet" : laid + " sheets";
      assertThat(
              Joints.jointCreep(
                      in(length),
                      JointRules.gap(in(gap)).rafterWidth(in(width)).minBearing(in(least)))
                  .panels())
          .as("%s %s %s %s", length, gap, width, least)
          .hasToString(expected);
    }
  }

  /** A joint that began with the gap in the middle of a rafter, so many sheets further on. */
  private static boolean hasBearing(
      int sheets, double length, double gap, double width, double least) {
    double middleOfGap = sheets * (length + gap);
    double rafter = sheets * 96;
    double left = middleOfGap - gap / 2 - (rafter - width / 2);
    double right = rafter + width / 2 - (middleOfGap + gap / 2);
    return Math.min(left, right) >= least - 1e-9;
  }
}
