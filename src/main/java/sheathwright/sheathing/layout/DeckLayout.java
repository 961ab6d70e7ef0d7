package sheathwright.sheathing.layout;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.YesNo;

/**
 * Planes laid with sheets, their cut sheets shared.
 *
 * @param sheets to buy for all of it
 * @param atLeast no cutting of the cut sheets' pieces out of sheets takes fewer
 * @param whole sheets that are laid uncut
 * @param places where a sheet or a part of one lies
 * @param cuts of the saw
 * @param jointsOff joints where a sheet end lacks its bearing
 * @param jointOff length of those joints
 * @param jointOn length of the joints that have it
 * @param edge length of the long edges between courses, which supports only cross
 * @param bays spaces between supports that those edges cross: a clip in each, where clips are used
 * @param shortPieces places whose sheet crosses fewer than two spans
 * @param slivers places with a part so thin that it is better left out or joined to its neighbor
 * @param lastCourse height of the course at the ridge
 * @param narrow whether that is less than the least strip
 * @param planes each plane as it was laid
 * @param cutList how the pieces are cut
 */
public record DeckLayout(
    @Column("sheets") Figure<Sheets> sheets,
    @Column("sheets_at_least") Figure<Sheets> atLeast,
    @Column("whole_sheets") Figure<Sheets> whole,
    @Column("places") Figure<Pieces> places,
    @Column("cuts") Figure<Ratio> cuts,
    @Column("joints_off") Figure<Ratio> jointsOff,
    @Column("joint_off_ft") Figure<Length> jointOff,
    @Column("joint_on_ft") Figure<Length> jointOn,
    @Column("edge_ft") Figure<Length> edge,
    @Column("edge_bays") Figure<Ratio> bays,
    @Column("short_pieces") Figure<Pieces> shortPieces,
    @Column("slivers") Figure<Pieces> slivers,
    @Column(value = "last_course_in", marked = Marked.DOWN) Figure<Length> lastCourse,
    @Column("narrow") Choice<YesNo> narrow,
    List<CourseLayout> planes,
    CutList cutList) {}
