package sheathwright.sheathing;

import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.comparingLong;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheathwright.cutting.Patience;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.roof.House;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutAnswer;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.layout.StripRule;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.PatchAnswer;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.sheathing.patch.PatchRules;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.PlaceMap;

/**
 * Sheets laid on planes, and patches cut out of them. The answers are solved, not computed by a
 * formula: in a workbook they stand as numbers, with a guard that says when an input has changed
 * since.
 *
 * <p>Source of the rules: common practice, no source, unless a rule says otherwise. Does not cover
 * the order of work, how a sheet is carried up, or whether the panel may span so far (see {@code
 * panel_span}).
 */
public final class Layouts {

  /**
   * First joints that are tried, and layouts that are cut. OriginsWork, 60 planes: double gives the
   * same short pieces and sheets with 1.93 of the turns; half was not measured.
   */
  private static final int MOST_ORIGINS = 6;

  private static final Comparator<CourseLayout> FEWEST_OFF =
      comparingDouble((CourseLayout each) -> Math.rint(offSupports(each)))
          .thenComparingLong(Layouts::shortPieces);
  private static final Comparator<CourseLayout> FEWEST_SHORT =
      comparingLong(Layouts::shortPieces).thenComparingDouble(each -> Math.rint(offSupports(each)));

  private Layouts() {}

  /**
   * Sheets on one plane by the usual rules: from the left edge, shifted by 4 ft, the strip at the
   * ridge ripped.
   */
  public static DeckLayout layout(Plane plane, Supports supports) {
    return layout(plane, supports, LayoutRules.USUAL);
  }

  /** Sheets on one plane by rules of one's own: {@code usual().stagger(in(32)).origin(ft(5))}. */
  public static DeckLayout layout(Plane plane, Supports supports, LayoutRules rules) {
    return LayoutAnswer.of(
        List.of(courses(plane, supports, rules)), Patience.asked(LayoutAnswer.PATIENCE));
  }

  /** The usual rules, to be changed by the method of each one's name. */
  public static LayoutRules usual() {
    return LayoutRules.USUAL;
  }

  /** Several planes, what is cut off the one used on the other. */
  public static DeckLayout together(DeckLayout... layouts) {
    return together(Arrays.stream(layouts).flatMap(each -> each.planes().stream()).toList());
  }

  /** Several planes that are laid already, what is cut off the one used on the other. */
  public static DeckLayout together(List<CourseLayout> planes) {
    return LayoutAnswer.of(planes, Patience.asked(LayoutAnswer.PATIENCE));
  }

  /** The sheets of one plane place by place, not yet cut. */
  public static CourseLayout courses(Plane plane, Supports supports, LayoutRules rules) {
    return CourseLayout.of(plane, supports, rules);
  }

  /** The same plane by each rule for the strip at the ridge, in the order rip, equal, two-foot. */
  public static List<DeckLayout> byStripRule(Plane plane, Supports supports, LayoutRules rules) {
    return Stream.of(StripRule.values())
        .map(rule -> layout(plane, supports, rules.strips(Choice.literal(rule))))
        .toList();
  }

  /**
   * The layout that leaves the fewest feet of joint off their supports, then the fewest short
   * pieces, then takes the fewest sheets. The first joint is tried on every support within 8 ft and
   * every shift that keeps to the supports.
   */
  public static DeckLayout bestLayout(Plane plane, Supports supports, LayoutRules rules) {
    Reading trying = Reading.aside();
    List<CourseLayout> tried = tried(plane, supports, rules);
    double leastOff = offSupports(tried.stream().min(FEWEST_OFF).orElseThrow());
    return tried.stream()
        .filter(each -> offSupports(each) <= leastOff + 1)
        .sorted(FEWEST_OFF)
        .limit(MOST_ORIGINS)
        .map(each -> LayoutAnswer.of(List.of(each), Patience.asked(LayoutAnswer.PATIENCE)))
        .min(
            comparingDouble((DeckLayout each) -> trying.number("", each.shortPieces(), Units.PIECE))
                .thenComparingDouble(each -> trying.number("", each.sheets(), Units.SHEET)))
        .orElseThrow();
  }

  /** Inches of joint that no support bears, of a layout that is only tried. */
  private static double offSupports(CourseLayout tried) {
    return tried.laid(Reading.aside()).jointLength(false);
  }

  private static long shortPieces(CourseLayout tried) {
    return LayoutAnswer.shortPieces(tried.laid(Reading.aside()));
  }

  /** Every plane laid with the first joint on each support within 8 ft and each fitting shift. */
  private static List<CourseLayout> tried(Plane plane, Supports supports, LayoutRules rules) {
    List<CourseLayout> tried = new ArrayList<>();
    Reading trying = Reading.aside();
    double left = plane.outline(trying).bounds().left();
    List<Double> origins =
        supports.centers(trying).between(left, left + LayoutRules.MODULE_LENGTH - 1).stream()
            .limit(MOST_ORIGINS)
            .toList();
    for (double origin : origins) {
      for (double shifted : origins) {
        double stagger = shifted - origins.get(0);
        boolean isStaggered = stagger >= 24 && stagger <= 72;
        if (isStaggered) {
          tried.add(
              courses(
                  plane,
                  supports,
                  rules
                      .origin(Figure.of(origin, Units.INCH))
                      .stagger(Figure.of(stagger, Units.INCH))));
        }
      }
    }
    tried.add(courses(plane, supports, rules));
    return tried;
  }

  /**
   * Sheets on all planes of a house by the usual rules, what is cut off the one used on another.
   */
  public static DeckLayout layout(House house, Supports supports) {
    return together(
        house.planes().stream().map(plane -> courses(plane, supports, LayoutRules.USUAL)).toList());
  }

  /**
   * A house laid by each rule for the strips at its ridges, and with as few short pieces as there
   * is a way to; those that are worse in sheets and in short pieces are left out.
   *
   * @param sheet what one more sheet costs
   * @param block what it costs to block one short piece
   */
  public static LayoutChoices layoutChoices(
      House house,
      Supports supports,
      Figure<Per<Money, Sheets>> sheet,
      Figure<Per<Money, Pieces>> block) {
    List<DeckLayout> laid = new ArrayList<>();
    for (StripRule rule : StripRule.values()) {
      LayoutRules rules = LayoutRules.USUAL.strips(Choice.literal(rule));
      List<CourseLayout> fewestOff = new ArrayList<>();
      List<CourseLayout> usual = new ArrayList<>();
      for (Plane plane : house.planes()) {
        usual.add(courses(plane, supports, rules));
        fewestOff.add(tried(plane, supports, rules).stream().min(FEWEST_SHORT).orElseThrow());
      }
      laid.add(together(usual));
      laid.add(together(fewestOff));
    }
    return LayoutChoices.of(laid, sheet, block);
  }

  /**
   * Bad wood on a plane, named by its place among the marks: {@code m1}, {@code m2}.
   *
   * @param along from the plane's left corner to its left side, along the eave
   * @param up from the eave to its lower side
   */
  public static Mark mark(
      OneOf<Finding> found,
      Figure<Length> along,
      Figure<Length> up,
      Figure<Length> width,
      Figure<Length> height) {
    return Mark.of("", found, along, up, width, height);
  }

  /** A whole place of the old deck that is bad, by its key on the map: {@code A-3-5}. */
  public static Mark mark(OneOf<Finding> found, PlaceMap map, String sheet) {
    return Mark.of("", found, map, Choice.literal(sheet));
  }

  /** The map of an old plane whose joints nobody has measured. */
  public static PlaceMap places(Plane plane) {
    return places(plane, OldJoints.ASSUMED);
  }

  /** The map of an old plane: {@code places(south, OldJoints.ASSUMED.first(in(32)))}. */
  public static PlaceMap places(Plane plane, OldJoints joints) {
    return PlaceMap.of(plane, joints);
  }

  /** Patches for what was marked, by the usual rules. */
  public static PatchPlan patches(Plane plane, Supports supports, Mark... marks) {
    return patches(places(plane), supports, marks);
  }

  /** Patches for what was marked on a map, by the usual rules. */
  public static PatchPlan patches(PlaceMap map, Supports supports, Mark... marks) {
    List<Mark> named =
        IntStream.range(0, marks.length).mapToObj(i -> marks[i].called("m" + (i + 1))).toList();
    return patches(map, supports, LayoutRules.USUAL, PatchRules.USUAL, named);
  }

  /** Patches for what was marked, sought as long as a plane by itself is worth. */
  public static PatchPlan patches(
      PlaceMap map, Supports supports, LayoutRules old, PatchRules rules, List<Mark> marks) {
    return patches(map, supports, old, rules, marks, Patience.asked(LayoutAnswer.PATIENCE));
  }

  /**
   * Patches for what was marked. Marks of wood that only needs nails, a gap or a support are left
   * out.
   *
   * @param old how the deck lies now: its gaps and bearings
   * @param patience of the search for the fewest sheets; what it cannot prove, it says
   * @throws RefusedException if a mark lies off the plane, or two have one key
   */
  public static PatchPlan patches(
      PlaceMap map,
      Supports supports,
      LayoutRules old,
      PatchRules rules,
      List<Mark> marks,
      Patience patience) {
    return PatchAnswer.of(map, supports, old, rules, marks, patience);
  }
}
