package sheathwright.workbook.page;

import java.util.List;
import java.util.Map;
import sheathwright.figure.Roll;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.Patch;

/** A part of what a session's variable holds that takes more than single cells. */
public sealed interface SessionPart {

  /** What it is called: the variable's name and its own. */
  String name();

  /** A list whose cells are live. */
  record Listed(String name, Roll roll) implements SessionPart {}

  /**
   * A table of plain numbers and words, as they were when the session was saved.
   *
   * @param rows each by its columns' names, the same in all
   */
  record Printed(String name, List<Map<String, Object>> rows) implements SessionPart {}

  /** A plane as it is laid, drawn to scale. */
  record Drawn(String name, CourseLayout courses, List<Mark> marks, List<Patch> patches)
      implements SessionPart {}
}
