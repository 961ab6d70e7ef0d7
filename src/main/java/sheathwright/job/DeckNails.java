package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import sheathwright.fastening.count.NailPattern;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.roof.Box;
import sheathwright.roof.Region;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.Sheet;

/**
 * The nails of new sheets on a whole deck, counted sheet by sheet on its layout: where two share a
 * rafter, both have a row.
 */
final class DeckNails {

  private static final Source COUNTED = Source.derived("counted on the layout, sheet by sheet");

  private DeckNails() {}

  static Figure<Nails> of(Job job, List<CourseLayout> planes) {
    double edge = job.fact(JobFields.EDGE_SPACING).value();
    double field = job.fact(JobFields.FIELD_SPACING).value();
    boolean isBlocked = job.fact(JobFields.BLOCKED_EDGES).value() == YesNo.YES;
    double nails = 0;
    List<Solution.Input> inputs = new ArrayList<>();
    for (CourseLayout plane : planes) {
      inputs.addAll(plane.plane().given());
      inputs.addAll(plane.supports().given());
      inputs.addAll(plane.rules().given());
      for (Sheet sheet : plane.sheets()) {
        for (Region part : sheet.parts()) {
          nails += nails(plane, part.bounds(), edge, field, isBlocked);
        }
      }
    }
    for (Field<?> spacing :
        List.of(JobFields.EDGE_SPACING, JobFields.FIELD_SPACING, JobFields.BLOCKED_EDGES)) {
      inputs.add(new Solution.Input(Shown.inWords(spacing.name()), job.fact(spacing)));
    }
    return Solution.of("nails_of_the_layout", inputs)
        .figure("layout_nails", nails, Units.NAIL, COUNTED);
  }

  private static int nails(
      CourseLayout plane, Box part, double edge, double field, boolean isBlocked) {
    return NailPattern.nails(
        part.left(),
        part.right(),
        part.height(),
        plane.supports().between(part.left() - 1, part.right() + 1),
        edge,
        field,
        isBlocked);
  }
}
