package sheathwright.sheathing.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.sheathing.layout.StripRule.EQUAL;
import static sheathwright.sheathing.layout.StripRule.RIP;
import static sheathwright.sheathing.layout.StripRule.TWO_FOOT;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.roof.PlaneSize;

class CoursesTest {

  private static CourseCount count(double eave, double slope, StripRule rule) {
    return Courses.sheetsByCourse(PlaneSize.eave(ft(eave)).slope(ft(slope)), rule, in(24));
  }

  /**
   * A 40 ft eave, five sheets a course: counted by an independent script and again by hand; no
   * published source.
   */
  @ParameterizedTest(name = "slope {0} ft")
  @CsvSource({
    "12, 15, 15, 15",
    "12.5, 16, 20, 18", // strips of 1/2 ft, eight a sheet: 15 + 1; 10 + 10; 10 + 5 + 3
    "13, 17, 20, 18",
    "13.5, 18, 20, 18", // two strips a sheet: 15 + 3
    "14, 18, 18, 18", // two feet are not less than two feet: ripped in any case
    "14.5, 20, 20, 20",
    "16.77, 21, 25, 23",
    "17, 22, 25, 23",
    "19, 25, 25, 25",
    "20.5, 26, 30, 28",
    "26.25, 35, 35, 35"
  })
  void sheetsByCourse_isTheHandCount(double slope, int rip, int equal, int twoFoot) {
    assertThat(count(40, slope, RIP).sheets().value()).isEqualTo(rip);
    assertThat(count(40, slope, EQUAL).sheets().value()).isEqualTo(equal);
    assertThat(count(40, slope, TWO_FOOT).sheets().value()).isEqualTo(twoFoot);
  }

  /** Other eaves, by hand: 42 ft has 5.25 sheets a course, 29 ft 3.625, 74 ft 9.25. */
  @Test
  void sheetsByCourse_roundsEachGroupOfCoursesByItself() {
    double slope = 15 * Math.sqrt(1.25); // four courses and 0.7705 ft
    assertThat(count(42, slope, RIP).sheets().value()).isEqualTo(21 + 2); // ⌈21⌉ + ⌈5.25 ÷ 5⌉
    assertThat(count(42, slope, EQUAL).sheets().value()).isEqualTo(16 + 11); // ⌈15.75⌉ + ⌈10.5⌉
    assertThat(count(42, slope, TWO_FOOT).sheets().value()).isEqualTo(16 + 6 + 3);
    assertThat(count(29, 13.2204, TWO_FOOT).sheets().value()).isEqualTo(8 + 4 + 2);
    assertThat(count(74, 26.25, RIP).sheets().value()).isEqualTo(56 + 10);
  }

  @Test
  void lastCourse_isWhatLiesAtTheRidge() {
    assertThat(count(40, 16.75, RIP).lastCourse().value()).isCloseTo(9, within(1e-9));
    assertThat(count(40, 16.75, RIP).narrow()).hasToString("yes");
    assertThat(count(40, 16.75, EQUAL).lastCourse().value()).isCloseTo(57 / 2.0, within(1e-9));
    assertThat(count(40, 16.75, TWO_FOOT).lastCourse().value()).isEqualTo(24);
    assertThat(count(40, 16.75, TWO_FOOT).narrow()).hasToString("no");
    assertThat(count(40, 16, RIP).lastCourse().value()).isEqualTo(48);
    assertThat(count(40, 1.5, EQUAL).lastCourse().value()).isEqualTo(18); // nothing to replace
  }

  /**
   * Independent: strips are cut out of sheets one by one, and sheets are counted as they are
   * opened.
   */
  @Test
  void rippedStrips_agreeWithCuttingThemOneByOne() {
    Random random = new Random(26);
    for (int i = 0; i < 300; i++) {
      int eaveSheets = 1 + random.nextInt(12); // whole sheets along the eave
      int courses = 1 + random.nextInt(6);
      int stripEighths = 1 + random.nextInt(31); // of a foot, less than four feet
      int opened = eaveSheets * courses;
      int room = 0;
      for (int strip = 0; strip < eaveSheets; strip++) {
        if (room < stripEighths) {
          opened++;
          room = 32;
        }
        room -= stripEighths;
      }
      double slope = courses * 4 + stripEighths / 8.0;
      assertThat(count(eaveSheets * 8, slope, RIP).sheets().value()).isEqualTo(opened);
    }
  }
}
