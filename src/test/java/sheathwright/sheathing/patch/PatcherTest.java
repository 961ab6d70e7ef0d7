package sheathwright.sheathing.patch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.sqft;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Outline;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Patch.End;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceMap;

class PatcherTest {

  private static final Plane RECTANGLE = Plane.rectangle("south", ft(32), ft(16));

  /** Inches that a tape is read to. */
  private static final double TAPE = 1;

  private static final Reading ASIDE = Reading.aside();
  private static final Supports SIXTEEN = Supports.every(in(16));

  private static Mark mark(String key, double left, double bottom, double width, double height) {
    return Mark.of(key, Choice.literal(Finding.SOFT), in(left), in(bottom), in(width), in(height));
  }

  private static List<Patch> patches(
      Plane plane, Supports supports, PatchRules rules, Mark... marks) {
    return new Patcher(piece -> frame(plane, piece.outline(), supports, rules), rules.plain(ASIDE))
        .patches(
            PlaceMap.of(plane, OldJoints.ASSUMED),
            ASIDE,
            Stream.of(marks).map(mark -> mark.seen(ASIDE)).toList());
  }

  static PatchFrame frame(Plane plane, Outline place, Supports supports, PatchRules rules) {
    return new PatchFrame(
        plane.outline(ASIDE),
        place,
        plane.openings(ASIDE),
        supports.centers(ASIDE),
        LayoutRules.USUAL.plain(ASIDE),
        rules.plain(ASIDE));
  }

  /** A whole plane as if it were one place. */
  static PatchFrame frame(Plane plane, Supports supports, PatchRules rules) {
    return frame(plane, plane.outline(ASIDE), supports, rules);
  }

  private static List<Patch> patches(Mark... marks) {
    return patches(RECTANGLE, SIXTEEN, PatchRules.USUAL, marks);
  }

  @Test
  void marksOfOnePatch_standAsPeopleCountThem() {
    List<Patch> patches =
        patches(mark("R-10", 20, 4, 10, 6), mark("R-2", 24, 6, 10, 6), mark("R-9", 22, 8, 10, 6));
    assertThat(patches)
        .singleElement()
        .extracting(Patch::marks)
        .isEqualTo(List.of("R-2", "R-9", "R-10"));
  }

  /** By hand: 100 − 3 falls back to 96, 110 + 3 goes on to 128, and 32 in is made 48. */
  @Test
  void aSmallMark_isMadeFourFeetBetweenSupports_inHalfACourse() {
    Patch patch = patches(mark("a", 100, 8, 10, 6)).get(0);
    assertThat(patch.box()).isEqualTo(new Box(96, 0, 144, 24));
    assertThat(patch.left()).isEqualTo(End.SUPPORT);
    assertThat(patch.right()).isEqualTo(End.SUPPORT);
    assertThat(patch.marks()).containsExactly("a");
    assertThat(patch.isNarrow()).isFalse();
    assertThat(patch.pieces()).hasSize(1);
    assertThat(patch.pieces().get(0).width()).isEqualTo(47.875);
    assertThat(patch.pieces().get(0).height()).isEqualTo(23.875);
    assertThat(patch.place()).hasToString("south-1-2");
    // the eave needs none, the new edge all of it
    assertThat(PatchEdges.blocking(RECTANGLE.outline(ASIDE), List.of(patch))).isEqualTo(48);
  }

  @Test
  void aMarkAcrossTheMiddleOfACourse_takesTheWholeCourse() {
    assertThat(patches(mark("a", 100, 20, 10, 10)).get(0).box()).isEqualTo(new Box(96, 0, 144, 48));
  }

  /**
   * By hand: courses meet at 48; in the upper one a joint lies at 144, and 128 would leave 16 in
   * before it. The line between the two patches needs its blocking once.
   */
  @Test
  void aMarkAcrossACourseLine_isAPatchInEachCourse() {
    List<Patch> patches = patches(mark("a", 100, 40, 10, 20));
    assertThat(patches)
        .extracting(Patch::box)
        .containsExactly(new Box(96, 24, 144, 48), new Box(96, 48, 144, 72));
    assertThat(PatchEdges.blocking(RECTANGLE.outline(ASIDE), patches)).isEqualTo(3 * 48);
  }

  /** The sheets that lie beside it are not touched, whatever is cut away beyond a mark. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 3, 12})
  void aMarkOfAWholeSheet_isThatSheet(double beyond) {
    PatchRules rules = PatchRules.USUAL.beyondMark(in(beyond));
    assertThat(patches(RECTANGLE, SIXTEEN, rules, mark("a", 96, 0, 96, 48)))
        .singleElement()
        .extracting(Patch::box)
        .isEqualTo(new Box(96, 0, 192, 48));
  }

  /** A tape is read to an inch: what reaches no further over a joint ends there. */
  @Test
  void aMarkAnInchOverAJoint_endsThere() {
    assertThat(patches(mark("a", 95, 0, 98, 49))).hasSize(1);
    assertThat(patches(mark("a", 94, 0, 98, 48))).hasSize(2);
  }

  /** By hand: 128 would leave 64 before the joint, but 160 to 192 is too short for old or new. */
  @Test
  void whatWouldBeLeftTooShort_isTakenOutAsWell() {
    assertThat(patches(mark("a", 170, 8, 6, 6)).get(0).box()).isEqualTo(new Box(144, 0, 192, 24));
    assertThat(patches(mark("a", 120, 8, 10, 6)).get(0).box()).isEqualTo(new Box(96, 0, 144, 24));
  }

  @Test
  void neighbors_areMadeOne_whereTheOldSheetBetweenWouldBeTooShort() {
    List<Patch> patches = patches(mark("b", 170, 8, 10, 6), mark("a", 100, 8, 10, 6));
    assertThat(patches).hasSize(1);
    assertThat(patches.get(0).marks()).containsExactly("a", "b");
    assertThat(patches.get(0).box()).isEqualTo(new Box(96, 0, 192, 24));
    assertThat(patches.get(0).pieces()).hasSize(1);
  }

  /** Each is cut at the joint between them, and both ends bear on one support. */
  @Test
  void neighborsOnTwoSheets_meetAtTheirJoint() {
    assertThat(patches(mark("b", 130, 8, 10, 6), mark("a", 52, 8, 10, 6)))
        .extracting(Patch::box)
        .containsExactly(new Box(48, 0, 96, 24), new Box(96, 0, 144, 24));
  }

  /** By hand: two halves of half a sheet, 8 sq ft each; as one, the sheet, they are 32: 16 more. */
  @Test
  void neighbors_areMadeOne_onlyWhereThatIsCheaper() {
    Mark[] marks = {mark("a", 100, 8, 10, 6), mark("b", 150, 30, 10, 6)};
    assertThat(patches(RECTANGLE, SIXTEEN, PatchRules.USUAL.anotherPatch(sqft(15.9)), marks))
        .hasSize(2);
    assertThat(patches(RECTANGLE, SIXTEEN, PatchRules.USUAL.anotherPatch(sqft(16.1)), marks))
        .hasSize(1);
  }

  /** A place that is named is replaced as it lies, up to the hip as well. */
  @Test
  void aNamedPlace_isReplacedAlongItsOwnJoints() {
    Plane plane = Plane.triangle("E", ft(32), ft(16));
    PlaceMap map = PlaceMap.of(plane, OldJoints.ASSUMED);
    for (Place place : map.places(ASIDE)) {
      Choice<String> sheet = Choice.literal(place.key().toString());
      Mark mark = Mark.of("a", Choice.literal(Finding.ROT), map, sheet);
      Patch patch = patches(plane, SIXTEEN, PatchRules.USUAL, mark).get(0);
      assertThat(patch.place()).isEqualTo(place.key());
      assertThat(patch.box()).isEqualTo(place.bounds());
      assertThat(patch.pieces().stream().mapToDouble(Patch.Piece::area).sum())
          .isCloseTo(place.area(), within(0.1));
    }
  }

  /** Two ends on the one joint off its support share one scab. */
  @Test
  void twoPatchesThatMeetOffASupport_shareAScab() {
    Supports off = Supports.every(in(16), in(8));
    List<Patch> patches =
        patches(
            RECTANGLE, off, PatchRules.USUAL, mark("a", 0, 0, 96, 48), mark("b", 96, 0, 96, 48));
    assertThat(patches).hasSize(2);
    assertThat(patches.get(0).right()).isEqualTo(End.SCAB);
    assertThat(patches.get(1).left()).isEqualTo(End.SCAB);
    assertThat(PatchEdges.scabs(patches)).isEqualTo(2); // at 96 and at 192
  }

  /**
   * By hand: the opening lies within one sheet, 12 in over its lower and under its upper edge; a
   * patch there would be lower than 24 in. So the sheet is replaced whole, less the opening.
   */
  @Test
  void aMarkRoundAnOpening_takesThePlacesWhoseRestWouldBeTooSmall() {
    Plane plane = RECTANGLE.without(in(160), in(60), in(32), in(24));
    List<Patch> patches =
        patches(plane, SIXTEEN, PatchRules.USUAL, mark("chimney", 150, 50, 52, 44));
    assertThat(patches)
        .singleElement()
        .satisfies(
            patch -> {
              assertThat(patch.place()).hasToString("south-2-3");
              assertThat(patch.box()).isEqualTo(new Box(144, 48, 240, 96));
              assertThat(patch.marks()).containsExactly("chimney");
              assertThat(patch.pieces()).singleElement();
              assertThat(patch.pieces().get(0).area()).isEqualTo(96 * 48 - 32 * 24);
            });
  }

  @Test
  void anOpeningOffItsSupports_askForAScab() {
    Plane plane = RECTANGLE.without(in(170), in(0), in(20), in(48));
    Patch patch = patches(plane, SIXTEEN, PatchRules.USUAL, mark("a", 150, 8, 18, 6)).get(0);
    assertThat(patch.box().right()).isEqualTo(170);
    assertThat(patch.right()).isEqualTo(End.SCAB);
  }

  /**
   * Independent: points of a grid are asked one by one. Bad wood is all cut out, once, and nothing
   * is put where no plane is.
   */
  @ParameterizedTest
  @ValueSource(
      longs = {
        1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25,
        26, 27, 28, 29, 30
      })
  void patches_coverTheBadWood_once_andNothingElsewhere(long seed) {
    RandomDecks decks = new RandomDecks(seed);
    for (int i = 0; i < 15; i++) {
      Plane plane = decks.plane();
      Supports supports = decks.supports(plane);
      List<Mark> marks = decks.marks(plane, 1 + i % 7);
      List<Patch> patches = patches(plane, supports, PatchRules.USUAL, marks.toArray(Mark[]::new));
      assertCoversOnce(plane, marks, patches);
      for (Patch patch : patches) {
        assertEnds(supports, patch);
        assertStaysInItsPlace(plane, patch);
      }
    }
  }

  private static void assertStaysInItsPlace(Plane plane, Patch patch) {
    Place place =
        PlaceMap.of(plane, OldJoints.ASSUMED)
            .place(ASIDE, "sheet", Choice.literal(patch.place().toString()));
    for (Patch.Piece piece : patch.pieces()) {
      assertThat(place.bounds().grown(0.01).holds(piece.box())).as("%s", patch).isTrue();
    }
  }

  private static void assertCoversOnce(Plane plane, List<Mark> marks, List<Patch> patches) {
    Box bounds = plane.outline(ASIDE).bounds();
    Set<String> cured = new TreeSet<>();
    patches.forEach(patch -> cured.addAll(patch.marks()));
    for (double x = bounds.left() + 1.3171; x < bounds.right(); x += 5.7173) {
      for (double y = bounds.bottom() + 1.1239; y < bounds.top(); y += 4.1311) {
        Box point = Box.at(x - 0.001, y - 0.001, 0.002, 0.002);
        boolean isInAnOpening = plane.openings(ASIDE).stream().anyMatch(point::overlaps);
        long put =
            patches.stream()
                .flatMap(patch -> patch.pieces().stream())
                .filter(piece -> piece.box().holds(point))
                .count();
        for (Mark mark : marks) {
          if (mark.seen(ASIDE).box().grown(-TAPE).holds(point)
              && plane.outline(ASIDE).covers(point)) {
            assertThat(put).as("new wood at %s, %s for %s", x, y, mark).isEqualTo(1);
            assertThat(cured).contains(mark.key());
          }
        }
        assertThat(put).as("pieces at %s, %s", x, y).isLessThanOrEqualTo(1);
        if (isInAnOpening) {
          long solid =
              patches.stream()
                  .flatMap(patch -> patch.pieces().stream())
                  .filter(piece -> piece.box().holds(point) && !isCutToShape(piece))
                  .count();
          assertThat(solid).as("in the opening at %s, %s", x, y).isZero();
        }
      }
    }
  }

  /** A whole place is one piece, cut to the opening as the old one was. */
  private static boolean isCutToShape(Patch.Piece piece) {
    return piece.area() < piece.box().area() - 1;
  }

  private static void assertEnds(Supports supports, Patch patch) {
    for (Patch.Piece piece : patch.pieces()) {
      assertThat(piece.box().width()).isLessThanOrEqualTo(96.02);
      assertThat(piece.box().height()).isLessThanOrEqualTo(48.02);
    }
    if (patch.left() == End.SUPPORT) {
      assertThat(Math.abs(supports.centers(ASIDE).nearest(patch.box().left()) - patch.box().left()))
          .isLessThanOrEqualTo(0.25);
    }
  }
}
