package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.roof.PlaneSize;
import sheathwright.roof.SheetSize;

/** Nails as they are bought, and the feet of seam between panels. */
public final class NailOrders {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);

  private static final Figure<Length> NO_STRIP = Figure.of(0, Units.FOOT);

  private NailOrders() {}

  /**
   * How many boxes, pounds or coils a number of nails comes to, with something for loss.
   *
   * <pre>
   * with waste = nails × (1 + waste)
   * boxes = ⌈with waste ÷ nails a box⌉, pounds = with waste ÷ nails a pound, coils = ⌈with waste ÷ nails a coil⌉
   * </pre>
   *
   * <p>Does not cover prices, or how many nails your box, pound or coil holds: read the label.
   *
   * <pre>{@code
   * nailOrder(nails(2790), pct(5), nailsPerPiece(2500), nailsPerPound(100), nailsPerPiece(300)).boxes() // 2 pieces
   * nailOrder(nails(2790), pct(5), nailsPerPiece(2500), nailsPerPound(100), nailsPerPiece(300)).coils() // 10 pieces
   * }</pre>
   *
   * @param nails to be driven, 0 to 1000000
   * @param waste share lost, 0 % to 100 %
   * @param perBox nails in a box, 1 to 50000
   * @param perPound nails in a pound, 1 to 5000
   * @param perCoil nails in a coil or strip, 1 to 5000
   * @return nails with loss; whole boxes; pounds; whole coils
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: arithmetic"
   */
  @LibraryFunction(words = {"buy nails", "box of nails", "coil", "cut list of nails"})
  public static NailOrder nailOrder(
      @Column(value = "nails", unit = "nail") Figure<Nails> nails,
      @Column(value = "waste_pct", preset = "5") Figure<Ratio> waste,
      @Column(value = "nails_per_box", unit = "nails/piece", preset = "2500")
          Figure<Per<Nails, Pieces>> perBox,
      @Column(value = "nails_per_pound", unit = "nails/lb", preset = "100")
          Figure<Per<Nails, Force>> perPound,
      @Column(value = "nails_per_coil", unit = "nails/piece", preset = "300")
          Figure<Per<Nails, Pieces>> perCoil) {
    var driven = nails.within("nails", Units.NAIL, Limits.between(0, 1_000_000, "all the sheets"));
    var share = waste.within("waste_pct", Units.PERCENT, Limits.between(0, 100, "5 is usual"));
    var box =
        perBox.within(
            "nails_per_box", Units.NAILS_PER_PIECE, Limits.between(1, 50_000, "on the label"));
    var pound =
        perPound.within(
            "nails_per_pound", Units.NAILS_PER_POUND, Limits.between(1, 5000, "on the label"));
    var coil =
        perCoil.within(
            "nails_per_coil", Units.NAILS_PER_PIECE, Limits.between(1, 5000, "on the label"));

    var withWaste =
        driven.times(ONE.plus(share)).as("nails_with_waste", Units.NAIL, Source.COMMON_PRACTICE);
    return new NailOrder(
        withWaste,
        whole(withWaste, box).as("boxes", Units.PIECE, Source.COMMON_PRACTICE),
        withWaste.dividedBy(pound).as("pounds_lb", Units.POUND, Source.COMMON_PRACTICE),
        whole(withWaste, coil).as("coils", Units.PIECE, Source.COMMON_PRACTICE));
  }

  private static Figure<Pieces> whole(Figure<Nails> nails, Figure<Per<Nails, Pieces>> each) {
    Unit<Pieces> piece = Units.PIECE;
    return nails.dividedBy(each).in(piece).roundedUp();
  }

  /**
   * How many feet of seam lie between the sheets of a rectangular plane, to be taped or sealed.
   *
   * <pre>
   * along the eave = (⌈slope ÷ width⌉ − 1) × eave
   * up the slope   = (⌈eave ÷ length⌉ − 1) × height of the courses that begin with a whole sheet
   *                + ⌈(eave − length ÷ 2) ÷ length⌉ × height of those that begin with half a one
   * </pre>
   *
   * <p>Does not cover hips, valleys, openings, or another stagger than half a sheet in every second
   * course.
   *
   * <pre>{@code
   * seamLength(PlaneSize.eave(ft(24)).slope(ft(12)), FOUR_BY_EIGHT) // 76' 0"
   * }</pre>
   *
   * @param plane how large it is
   * @param sheet how large one is
   * @return feet of seam, both ways together
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: geometry of courses with every second one staggered by half"
   */
  @LibraryFunction(words = {"tape", "sealed deck", "water barrier", "underlayment"})
  @Column("seam_ft")
  public static Figure<Length> seamLength(PlaneSize plane, SheetSize sheet) {
    var along = plane.eave();
    var up = plane.slope();
    var length = sheet.length();
    var width = sheet.width();

    var courses = count(up, width).roundedUp().as("courses", Units.RATIO);
    var whole = count(up, width).roundedDown().as("whole_courses", Units.RATIO);
    var staggered =
        whole.dividedBy(TWO).in(Units.RATIO).roundedDown().as("staggered_courses", Units.RATIO);
    var strip = up.minus(whole.times(width)).as("last_strip_ft", Units.FOOT);
    var staggeredStrip =
        Figure.choose(TWO.times(staggered).in(Units.RATIO).isLessThan(whole), strip, NO_STRIP)
            .as("staggered_strip_ft", Units.FOOT);
    var staggeredHeight =
        staggered.times(width).in(Units.FOOT).plus(staggeredStrip).as("staggered_ft", Units.FOOT);
    var joints = count(along, length).roundedUp().minus(ONE).as("joints", Units.RATIO);
    var staggeredJoints =
        count(along.minus(length.dividedBy(TWO)), length)
            .roundedUp()
            .max(NONE)
            .as("staggered_joints", Units.RATIO);
    var alongEave = courses.minus(ONE).times(along).as("along_the_eave_ft", Units.FOOT);
    var plain = joints.times(up.minus(staggeredHeight)).as("plain_joints_ft", Units.FOOT);
    return alongEave
        .plus(plain)
        .plus(staggeredJoints.times(staggeredHeight))
        .as("seam_ft", Units.FOOT, Source.COMMON_PRACTICE);
  }

  private static Figure<Ratio> count(Figure<Length> along, Figure<Length> step) {
    return along.dividedBy(step).in(Units.RATIO);
  }
}
