package sheathwright.sheathing.triage;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.sheathing.patch.Finding;

/**
 * What was found in a sheet, and what was measured of its wood; a blank was not measured.
 *
 * @param finding what was found
 * @param probe how far an awl goes in under hand pressure
 * @param hole the smaller of its width and height
 * @param thickness of the panel
 * @param leastThickness what the maker or the span table asks for
 * @param moisture of the wood by weight, by a meter
 * @param hold what one screw held when it was pulled
 * @param wantedHold what a screw has to hold here
 */
public record SheetEvidence(
    @Column("finding") OneOf<Finding> finding,
    @Column(
            value = "probe_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "how far an awl goes in under hand pressure")
        Figure<Length> probe,
    @Column(
            value = "hole_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 96,
            rule = "the smaller of its width and height")
        Figure<Length> hole,
    @Column(
            value = "thickness_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "of the panel, at a sound place")
        Figure<Length> thickness,
    @Column(
            value = "least_thickness_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "what the maker or the span table asks for")
        Figure<Length> leastThickness,
    @Column(
            value = "moisture_pct",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 100,
            rule = "by a meter, in the wood")
        Figure<Ratio> moisture,
    @Column(
            value = "hold_lb",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 5000,
            rule = "what one screw held when it was pulled")
        Figure<Force> hold,
    @Column(
            value = "wanted_lb",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 5000,
            rule = "what the screw of a clip has to hold")
        Figure<Force> wantedHold) {

  private static final Columns COLUMNS = Columns.of(SheetEvidence.class);

  public SheetEvidence {
    finding = COLUMNS.let("finding", finding);
    probe = COLUMNS.let("probe", probe);
    hole = COLUMNS.let("hole", hole);
    thickness = COLUMNS.let("thickness", thickness);
    leastThickness = COLUMNS.let("leastThickness", leastThickness);
    moisture = COLUMNS.let("moisture", moisture);
    hold = COLUMNS.let("hold", hold);
    wantedHold = COLUMNS.let("wantedHold", wantedHold);
  }

  /** This was found; nothing is measured yet. */
  public static SheetEvidence of(OneOf<Finding> finding) {
    return new SheetEvidence(finding, null, null, null, null, null, null, null);
  }

  public SheetEvidence probe(Figure<Length> depth) {
    return new SheetEvidence(
        finding, depth, hole, thickness, leastThickness, moisture, hold, wantedHold);
  }

  public SheetEvidence hole(Figure<Length> width) {
    return new SheetEvidence(
        finding, probe, width, thickness, leastThickness, moisture, hold, wantedHold);
  }

  /** How thick the panel is, and how thick it has to be. */
  public SheetEvidence thickness(Figure<Length> there, Figure<Length> least) {
    return new SheetEvidence(finding, probe, hole, there, least, moisture, hold, wantedHold);
  }

  public SheetEvidence moisture(Figure<Ratio> share) {
    return new SheetEvidence(
        finding, probe, hole, thickness, leastThickness, share, hold, wantedHold);
  }

  /** What a screw held, and what it has to hold. */
  public SheetEvidence hold(Figure<Force> pulled, Figure<Force> wanted) {
    return new SheetEvidence(
        finding, probe, hole, thickness, leastThickness, moisture, pulled, wanted);
  }
}
