package sheathwright.sheathing.triage;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;

/**
 * What was measured of how a sheet is held: at its joints, on its rafters, by its nails; a blank
 * was not measured.
 *
 * @param hump how far the joint stands up
 * @param jointGap between two sheets
 * @param bearing of the end on its rafter
 * @param edgeSupport whether the long edge is held between the rafters
 * @param edgeNeeded whether the span table wants it held
 * @param soundNails nails that hold
 * @param wantedNails nails that the schedule asks for
 */
public record HoldEvidence(
    @Column(
            value = "hump_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "how far the joint stands up")
        Figure<Length> hump,
    @Column(
            value = "joint_gap_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "between the two sheets; 1/8 is asked for")
        Figure<Length> jointGap,
    @Column(
            value = "bearing_in",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 3,
            rule = "of the end on its rafter")
        Figure<Length> bearing,
    @Column(value = "edge_support", preset = "not-looked") OneOf<Told> edgeSupport,
    @Column(value = "edge_needed", preset = "not-looked") OneOf<Told> edgeNeeded,
    @Column(
            value = "sound_nails",
            unit = "nails/sheet",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 500,
            rule = "counted on the sheet; 0 if none holds")
        Figure<Per<Nails, Sheets>> soundNails,
    @Column(
            value = "wanted_nails",
            unit = "nails/sheet",
            preset = Figure.NOT_MEASURED,
            allowed = Limits.Kind.IF_MEASURED,
            least = 0,
            most = 500,
            rule = "from nails_per_sheet")
        Figure<Per<Nails, Sheets>> wantedNails) {

  private static final Columns COLUMNS = Columns.of(HoldEvidence.class);

  /** Nothing was measured. */
  public static final HoldEvidence NOT_LOOKED_AT =
      new HoldEvidence(null, null, null, null, null, null, null);

  public HoldEvidence {
    hump = COLUMNS.let("hump", hump);
    jointGap = COLUMNS.let("jointGap", jointGap);
    bearing = COLUMNS.let("bearing", bearing);
    edgeSupport = COLUMNS.let("edgeSupport", edgeSupport);
    edgeNeeded = COLUMNS.let("edgeNeeded", edgeNeeded);
    soundNails = COLUMNS.let("soundNails", soundNails);
    wantedNails = COLUMNS.let("wantedNails", wantedNails);
  }

  /** A joint that stands up so far, with this gap. */
  public static HoldEvidence joint(Figure<Length> hump, Figure<Length> gap) {
    return new HoldEvidence(hump, gap, null, null, null, null, null);
  }

  public HoldEvidence bearing(Figure<Length> width) {
    return new HoldEvidence(
        hump, jointGap, width, edgeSupport, edgeNeeded, soundNails, wantedNails);
  }

  /** Whether the long edge is held, and whether it has to be. */
  public HoldEvidence edge(OneOf<Told> held, OneOf<Told> needed) {
    return new HoldEvidence(hump, jointGap, bearing, held, needed, soundNails, wantedNails);
  }

  /** Nails that hold, and nails that are asked for. */
  public HoldEvidence nails(Figure<Per<Nails, Sheets>> sound, Figure<Per<Nails, Sheets>> wanted) {
    return new HoldEvidence(hump, jointGap, bearing, edgeSupport, edgeNeeded, sound, wanted);
  }
}
