package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.YesNo;

/**
 * The sheets of one plane, laid in courses.
 *
 * @param sheets whole sheets to buy
 * @param lastCourse height of the course at the ridge
 * @param narrow whether that is less than the least strip
 */
public record CourseCount(
    @Column(value = "sheets", unit = "sheet") Figure<Sheets> sheets,
    @Column(value = "last_course_in", marked = Marked.DOWN) Figure<Length> lastCourse,
    @Column("narrow") Choice<YesNo> narrow) {}
