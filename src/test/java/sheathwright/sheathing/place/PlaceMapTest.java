package sheathwright.sheathing.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;
import sheathwright.sheathing.patch.RandomDecks;

class PlaceMapTest {

  private static final Reading ASIDE = Reading.aside();

  private static final Plane GABLE = Plane.rectangle("A", ft(42), ft("16-9 1/4"));

  private static List<Place> places(Plane plane, OldJoints joints) {
    return PlaceMap.of(plane, joints).places(ASIDE);
  }

  private static List<String> keys(Plane plane, OldJoints joints) {
    return places(plane, joints).stream().map(place -> place.key().toString()).toList();
  }

  private static OldJoints joint(int course, double along) {
    return OldJoints.ASSUMED.measured(List.of(measured(course, along)));
  }

  private static MeasuredJoint measured(int course, double along) {
    return new MeasuredJoint(Figure.of(course, Units.RATIO), in(along));
  }

  private static Place place(Plane plane, OldJoints joints, String key) {
    return PlaceMap.of(plane, joints).place(ASIDE, "sheet", Choice.literal(key));
  }

  /**
   * From an independent script: 30 places, 25 units. By hand: two kinds of courses with five and a
   * half each, twice, and six halves in the strip of 9-1/4 in.
   */
  @Test
  void aGable_hasItsPlacesAndUnits() {
    PlaceMap map = PlaceMap.of(GABLE, OldJoints.ASSUMED);
    assertThat(map.units().places().value()).isEqualTo(30);
    assertThat(map.units().halves().value()).isEqualTo(25);
    assertThat(map.units().area().value()).isCloseTo(42 * 201.25 / 12, within(0.01));
    assertThat(map.units().by(Choice.literal(BillRule.PLACE), "sheets").value()).isEqualTo(30);
    assertThat(map.units().by(Choice.literal(BillRule.HALF), "sheets").value()).isEqualTo(25);
    // 704.375 sq ft by 32 are 22.01 sheets: the next quarter
    assertThat(map.units().by(Choice.literal(BillRule.AREA), "sheets").value()).isEqualTo(22.25);
    assertThat(keys(GABLE, OldJoints.ASSUMED)).startsWith("A-1-1", "A-1-2").endsWith("A-5-6");
  }

  @Test
  void aFirstCourseThatWasCut_shiftsTheOthers() {
    OldJoints joints = OldJoints.ASSUMED.firstCourse(in(24)).first(in(32)).stagger(in(32));
    assertThat(place(GABLE, joints, "A-1-1").bounds()).isEqualTo(new Box(0, 0, 32, 24));
    assertThat(place(GABLE, joints, "A-2-2").bounds()).isEqualTo(new Box(64, 24, 160, 72));
  }

  /** Over a valley the courses reach to the left of the corner that all is measured from. */
  @Test
  void overAValley_placesBeginLeftOfTheCorner() {
    Plane plane = Plane.trapezoid("V", ft(20), ft(12), ft(-12), ft(0));
    Place first = place(plane, OldJoints.ASSUMED, "V-3-1");
    assertThat(first.bounds().left()).isCloseTo(-144, within(0.01));
    assertThat(first.bounds().right()).isCloseTo(-96, within(0.01));
  }

  /** By hand: the last inch of 97 is a third of a square foot. */
  @Test
  void whatIsTooSmall_belongsToItsNeighbor() {
    Plane plane = Plane.rectangle("A", in(97), in(48));
    assertThat(places(plane, OldJoints.ASSUMED))
        .singleElement()
        .satisfies(
            place -> {
              assertThat(place.area()).isCloseTo(97 * 48, within(1e-6));
              assertThat(place.bounds()).isEqualTo(new Box(0, 0, 97, 48));
            });
  }

  /** The tip over the last course is a strip of 2 in, and longest beside the sheet below it. */
  @Test
  void whatIsTooSmall_mayBelongToTheCourseBelow() {
    Plane plane = Plane.rectangle("A", in(60), in(50));
    assertThat(keys(plane, OldJoints.ASSUMED)).containsExactly("A-1-1");
  }

  @Test
  void placesAreNumberedAcrossAnOpening() {
    Plane plane = Plane.rectangle("A", ft(16), ft(4)).without(in(24), in(0), in(24), in(48));
    assertThat(keys(plane, OldJoints.ASSUMED)).containsExactly("A-1-1", "A-1-2", "A-1-3");
    assertThat(place(plane, OldJoints.ASSUMED, "A-1-2").bounds()).isEqualTo(new Box(48, 0, 96, 48));
  }

  @Test
  void aJointMeasuredBesideAnAssumedOne_isThatJoint() {
    assertThat(keys(GABLE, joint(1, 104))).isEqualTo(keys(GABLE, OldJoints.ASSUMED));
    assertThat(place(GABLE, joint(1, 104), "A-1-1").bounds().right()).isEqualTo(104);
    assertThat(place(GABLE, joint(1, 104), "A-1-2").bounds().left()).isEqualTo(104);
  }

  @Test
  void aJointFoundInAPlace_splitsIt_andNoOtherKeyMoves() {
    List<String> expected = new ArrayList<>(keys(GABLE, OldJoints.ASSUMED));
    int at = expected.indexOf("A-3-5");
    expected.set(at, "A-3-5a");
    expected.add(at + 1, "A-3-5b");
    assertThat(keys(GABLE, joint(3, 432))).isEqualTo(expected);
    assertThat(place(GABLE, joint(3, 432), "A-3-5b").bounds())
        .isEqualTo(new Box(432, 96, 480, 144));
  }

  @ParameterizedTest
  @CsvSource({
    "A-3-5,A,3,5,''",
    "main house south-2-5,main house south,2,5,''",
    "A-1-3-5b,A-1,3,5,b"
  })
  void aKey_isReadFromTheRight(String text, String plane, int course, int number, String letter) {
    assertThat(PlaceKey.read(text)).contains(new PlaceKey(plane, course, number, letter));
  }

  @ParameterizedTest
  @ValueSource(strings = {"A-3", "3-5", "A", "A-3-", "A-3-5ab", ""})
  void whatIsNoKey_isNotRead(String text) {
    assertThat(PlaceKey.read(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A-9-2|sheet is \"A-9-2\", but plane A has no such place; the nearest are A-5-2, A-4-2, A-5-1",
        "B-1-1|sheet is \"B-1-1\", but the plane here is A; give one of its places, such as A-1-1",
        "third|sheet is \"third\"; it must be plane, course from the eave and place from the left, such as A-1-1"
      })
  void aPlaceThatIsNotThere_isSaidWithTheNearest(String key, String said) {
    assertThatThrownBy(() -> place(GABLE, OldJoints.ASSUMED, key)).hasMessage(said);
  }

  @Test
  void aPlaceThatASplitMadeTwo_isSaidWithBoth() {
    assertThatThrownBy(() -> place(GABLE, joint(3, 432), "A-3-5"))
        .hasMessageContaining("the nearest are A-3-5a, A-3-5b");
  }

  @Test
  void aJointOffItsCourse_isRefused() {
    assertThatThrownBy(() -> PlaceMap.of(GABLE, joint(6, 96)))
        .hasMessage("course is 6, but plane A has 5, counted from its lowest point");
    assertThatThrownBy(() -> PlaceMap.of(GABLE, joint(2, 600)))
        .hasMessageStartingWith("joint_in is 600, but course 2 of plane A goes from 0 to 504 in");
  }

  /**
   * Independent: points of a grid are asked one by one which place they lie in, and their course
   * and module are worked out by division.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void places_coverThePlane_once(long seed) {
    RandomDecks decks = new RandomDecks(seed);
    Random random = new Random(seed);
    for (int i = 0; i < 15; i++) {
      Plane plane = decks.plane();
      double first = random.nextInt(97);
      double stagger = random.nextInt(4) * 16;
      double firstCourse = 24 + random.nextInt(25);
      OldJoints joints =
          OldJoints.ASSUMED.first(in(first)).stagger(in(stagger)).firstCourse(in(firstCourse));
      List<Place> places = places(plane, joints);
      assertThat(places.stream().mapToDouble(Place::area).sum() / 144)
          .isCloseTo(plane.area().value(), within(0.01));
      assertThat(places.stream().map(Place::key)).doesNotHaveDuplicates();
      for (Place place : places) {
        assertThat(PlaceKey.read(place.key().toString())).contains(place.key());
      }
      assertThat(placesByPoints(plane, places, first, stagger, firstCourse)).isGreaterThan(50);
    }
  }

  private static int placesByPoints(
      Plane plane, List<Place> places, double first, double stagger, double firstCourse) {
    Box bounds = plane.outline(ASIDE).bounds();
    int asked = 0;
    for (double x = bounds.left() + 1.3171; x < bounds.right(); x += 9.7173) {
      for (double y = bounds.bottom() + 1.1239; y < bounds.top(); y += 7.1311) {
        Box point = Box.at(x - 0.001, y - 0.001, 0.002, 0.002);
        Spot spot = new Spot(x, y);
        List<Place> holding =
            places.stream()
                .filter(place -> place.parts().stream().anyMatch(part -> holds(part, spot)))
                .toList();
        boolean isWood = plane.outline(ASIDE).covers(point);
        assertThat(holding).as("places at %s, %s", x, y).hasSize(isWood ? 1 : 0);
        if (isWood) {
          asked++;
          int course = y < firstCourse ? 1 : 2 + (int) ((y - firstCourse) / 48);
          double start = first + (course % 2 == 0 ? stagger : 0);
          double left = start + 96 * Math.floor((x - start) / 96);
          Place place = holding.get(0);
          boolean isOfItsPiece = holds(place.piece(), spot);
          if (isOfItsPiece) {
            assertThat(place.key().course()).isEqualTo(course);
            assertThat(place.piece().bounds().left()).isGreaterThanOrEqualTo(left - 0.01);
            assertThat(place.piece().bounds().right()).isLessThanOrEqualTo(left + 96.01);
          }
        }
      }
    }
    return asked;
  }

  /** Whether a ray to the right crosses the sides an odd number of times. */
  private static boolean holds(Region part, Spot spot) {
    List<List<Spot>> rings = new ArrayList<>(List.of(part.corners()));
    rings.addAll(part.holes());
    boolean isInside = false;
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Spot from = ring.get(i);
        Spot to = ring.get((i + 1) % ring.size());
        if (from.y() > spot.y() != to.y() > spot.y()) {
          double x = from.x() + (spot.y() - from.y()) / (to.y() - from.y()) * (to.x() - from.x());
          isInside ^= x > spot.x();
        }
      }
    }
    return isInside;
  }

  /** Measured joints anywhere keep every number: letters are added, and nothing else. */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void measuredJoints_neverRenumber(long seed) {
    RandomDecks decks = new RandomDecks(seed);
    Random random = new Random(seed);
    for (int i = 0; i < 15; i++) {
      Plane plane = decks.plane();
      Box bounds = plane.outline(ASIDE).bounds();
      List<MeasuredJoint> measured = new ArrayList<>();
      for (int j = 0; j < 4; j++) {
        double share = 0.3 + 0.4 * random.nextDouble();
        measured.add(measured(1, bounds.left() + share * bounds.width()));
      }
      List<Place> before = places(plane, OldJoints.ASSUMED);
      List<Place> after = places(plane, OldJoints.ASSUMED.measured(measured));
      assertThat(after.stream().map(Place::key).map(PlaceMapTest::withoutLetter).distinct())
          .containsExactlyElementsOf(before.stream().map(Place::key).toList());
      assertThat(after.stream().mapToDouble(Place::area).sum())
          .isCloseTo(before.stream().mapToDouble(Place::area).sum(), within(1.0));
    }
  }

  private static PlaceKey withoutLetter(PlaceKey key) {
    return new PlaceKey(key.plane(), key.course(), key.number(), "");
  }
}
