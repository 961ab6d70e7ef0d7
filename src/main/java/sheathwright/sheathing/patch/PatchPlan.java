package sheathwright.sheathing.patch;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.place.SheetUnits;

/**
 * What is cut out of a deck and put in new.
 *
 * @param patches places that are cut out
 * @param pieces that are put in
 * @param area of new wood, gaps included
 * @param units the places touched, each counted by the new panel laid in it
 * @param sheets to buy for them
 * @param atLeast no cutting of the pieces out of sheets takes fewer
 * @param cuts of the saw in new sheets
 * @param scabs under ends that no support carries, each as long as the end
 * @param blocking along long edges between supports
 * @param list each patch
 * @param marks everything that was marked
 * @param old the deck as it lies
 * @param work each patch with the marks that it cures and where it lies, for whoever cuts it out
 * @param cutting each piece with the sheet that it is cut from, for whoever cuts it
 */
public record PatchPlan(
    @Column("patches") Figure<Pieces> patches,
    @Column("patch_pieces") Figure<Pieces> pieces,
    @Column("patch_area_sf") Figure<Area> area,
    SheetUnits units,
    @Column("patch_sheets") Figure<Sheets> sheets,
    @Column("patch_sheets_at_least") Figure<Sheets> atLeast,
    @Column("patch_cuts") Figure<Ratio> cuts,
    @Column("scabs") Figure<Pieces> scabs,
    @Column("blocking_ft") Figure<Length> blocking,
    List<Patch> list,
    List<Mark> marks,
    CourseLayout old,
    Roll work,
    Roll cutting) {}
