package sheathwright.sheathing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.Joint;
import sheathwright.sheathing.layout.Joint.Repair;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.layout.Sheet;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.RandomDecks;

class LayoutsTest {

  /**
   * Bounds from outside: the wood covers the plane, so that sheets are at least its area over 32 sq
   * ft and at most one for each place; every place lies on the plane; joints on and off add up to
   * what the places share.
   */
  @ParameterizedTest
  @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108})
  void aLayout_coversThePlane_withinTheBoundsOfAreaAndPlaces(long seed) {
    RandomDecks decks = new RandomDecks(seed);
    for (int i = 0; i < 6; i++) {
      Plane plane = decks.plane();
      LayoutRules rules = decks.rules();
      CourseLayout courses = Layouts.courses(plane, decks.supports(plane), rules);
      DeckLayout layout = Layouts.together(List.of(courses));
      double laid =
          courses.laid(Reading.aside()).sheets().stream()
              .flatMap(sheet -> sheet.parts().stream())
              .mapToDouble(Region::area)
              .sum();
      assertThat(laid / 144).isCloseTo(plane.area().value(), within(0.02));
      assertThat(layout.sheets().value())
          .isGreaterThanOrEqualTo(Math.ceil(plane.area().value() / 32 - 0.01))
          .isLessThanOrEqualTo(
              courses.laid(Reading.aside()).sheets().stream()
                  .mapToInt(sheet -> sheet.parts().size())
                  .sum())
          .isGreaterThanOrEqualTo(layout.atLeast().value());
      for (Sheet sheet : courses.laid(Reading.aside()).sheets()) {
        assertThat(sheet.place().height()).isBetween(0.01, 48.0);
        assertThat(sheet.parts()).isNotEmpty();
      }
    }
  }

  /**
   * The three ends at a strip of 14.6 in on 13 ft 2-5/8 in: by hand 3 courses and the strip, or 2
   * and two lower ones.
   */
  @Test
  void theRuleForTheStrip_saysHowHighTheLastCourseIs() {
    Plane plane = Plane.rectangle("A", ft(29), ft("13-2 5/8"));
    List<DeckLayout> byRule = Layouts.byStripRule(plane, Supports.every(in(24)), LayoutRules.USUAL);
    assertThat(byRule)
        .extracting(each -> each.lastCourse().value())
        .containsExactly(14.625, 31.3125, 24.0);
    assertThat(byRule).extracting(each -> each.narrow().plain()).containsExactly("yes", "no", "no");
    double[] byCourse = {13, 16, 14}; // each group of equal courses rounded up by itself
    for (int i = 0; i < 3; i++) {
      assertThat(byRule.get(i).sheets().value()).isBetween(byCourse[i] - 1, byCourse[i]);
    }
  }

  /**
   * By hand: joints at 47.9375, 95.9375 and 143.9375 over rafters measured at 47.25, 95 and 144.5.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 95.9375, 1.5, 0, SCAB",
    "2, 47.9375, 1.4375, 0, SCAB",
    "2, 143.9375, 0.1875, 1.1875, SCAB"
  })
  void anOldJointOffItsRafter_takesAScab(
      int course, double x, double left, double right, Repair repair) {
    Supports measured =
        Supports.at(
            in(0), in(24.5), in(47.25), in(72), in(95), in(121), in(144.5), in(168), in(192));
    CourseLayout old =
        Layouts.courses(
            Plane.rectangle("wing", ft(16), ft(8)), measured, LayoutRules.USUAL.asLaid());
    Joint joint =
        old.laid(Reading.aside()).joints().stream()
            .filter(each -> each.course() == course && Math.abs(each.x() - x) < 1e-9)
            .findFirst()
            .orElseThrow();
    assertThat(joint.left()).isCloseTo(left, within(1e-9));
    assertThat(joint.right()).isCloseTo(right, within(1e-9));
    assertThat(joint.repair()).isEqualTo(repair);
  }

  /**
   * Sheets of a full 96 in creep by their gap: the second joint has crept 1/8 in and lacks its half
   * inch no more.
   */
  @Test
  void sheetsThatAreTooLong_creepOffTheirSupports() {
    Plane plane = Plane.rectangle("south", ft(48), ft(4));
    CourseLayout courses =
        Layouts.courses(plane, Supports.every(in(24)), LayoutRules.USUAL.sheetLength(in(96)));
    assertThat(courses.laid(Reading.aside()).joints())
        .extracting(Joint::creep)
        .containsExactly(0.0, 0.125, 0.25, 0.375, 0.5);
    assertThat(courses.laid(Reading.aside()).joints())
        .extracting(Joint::isSupported)
        .containsExactly(true, true, false, false, false);
  }

  /**
   * By hand: with rafters from 1 ft at 16 in, moving the first joint to a rafter and shifting by
   * bays hits every one.
   */
  @Test
  void theBestLayout_putsEveryJointOnASupport_whereThatCanBe() {
    Plane plane = Plane.rectangle("south", ft(34), ft(16));
    Supports supports = Supports.every(in(16), in(12));
    DeckLayout best = Layouts.bestLayout(plane, supports, LayoutRules.USUAL);
    assertThat(best.jointsOff().value()).isZero();
    assertThat(best.shortPieces().value())
        .isLessThanOrEqualTo(Layouts.layout(plane, supports).shortPieces().value());
  }

  @Test
  void aSliver_isReported() {
    Plane plane = Plane.outline("south", "0 0, 18.5 0, 21.5 12, 0 12");
    DeckLayout layout = Layouts.layout(plane, Supports.every(in(24)));
    assertThat(layout.slivers().value()).isEqualTo(1);
  }

  @Test
  void patches_refuseWhatCannotBeMeant() {
    Plane plane = Plane.rectangle("south", ft(32), ft(16));
    Supports supports = Supports.every(in(16));
    Mark mark = Mark.of("a", Choice.literal(Finding.ROT), in(10), in(10), in(5), in(5));
    assertThatThrownBy(() -> Layouts.patches(plane, supports, mark, mark))
        .hasMessageContaining("two marks are named a");
    Mark off = Mark.of("b", Choice.literal(Finding.ROT), in(1000), in(10), in(5), in(5));
    assertThatThrownBy(() -> Layouts.patches(plane, supports, off))
        .hasMessageContaining("mark b lies off plane south");
    assertThatThrownBy(
            () -> Mark.of("c", Choice.literal(Finding.ROT), in(10), in(10), in(0), in(5)))
        .hasMessageContaining("more than 0");
  }

  /** What only moves or humps is not cut out. */
  @Test
  void patches_leaveLooseWoodIn() {
    Plane plane = Plane.rectangle("south", ft(32), ft(16));
    Mark loose = Mark.of("a", Choice.literal(Finding.LOOSE), in(10), in(10), in(50), in(50));
    assertThat(Layouts.patches(plane, Supports.every(in(16)), loose).patches().value()).isZero();
  }

  @Test
  void aCellOfTheGrid_isOneBayOfOneCourse() {
    Mark cell =
        Mark.cell("a", Choice.literal(Finding.ROT), Supports.at(in(0), in(24.5), in(47.25)), 2, 3);
    assertThat(cell.seen(Reading.aside()).box().left()).isEqualTo(24.5);
    assertThat(cell.seen(Reading.aside()).box().right()).isEqualTo(47.25);
    assertThat(cell.seen(Reading.aside()).box().bottom()).isEqualTo(96);
    assertThat(cell.seen(Reading.aside()).box().top()).isEqualTo(144);
    assertThatThrownBy(
            () -> Mark.cell("a", Choice.literal(Finding.ROT), Supports.at(in(0), in(24)), 2, 1))
        .hasMessageContaining("counted from 1");
  }
}
