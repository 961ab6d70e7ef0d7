package sheathwright.job;

import java.util.List;
import sheathwright.fastening.count.NailPattern;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.site.Site;
import sheathwright.job.site.Spacings;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.roof.Outline;
import sheathwright.roof.Region;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.Sheet;

/**
 * The nails of new sheets on a whole deck, counted sheet by sheet on its layout: where two share a
 * rafter, both have a row. A piece that reaches into the strip near an edge of its plane or near an
 * opening is nailed as that strip is.
 */
final class DeckNails {

  private static final Source COUNTED = Source.derived("counted on the layout, sheet by sheet");

  private DeckNails() {}

  static Figure<Nails> of(Job job, Site site, List<CourseLayout> planes) {
    Reading reading = new Reading();
    double nails = 0;
    List<CourseLayout.Laid> laid = planes.stream().map(plane -> plane.laid(reading)).toList();
    List<Centers> supports =
        planes.stream().map(plane -> plane.supports().centers(reading)).toList();
    Spacings nailing = site.nailing().used();
    double edge = inches(reading, nailing.edge());
    double field = inches(reading, nailing.field());
    double nearEdge = inches(reading, nailing.nearEdge());
    double nearField = inches(reading, nailing.nearField());
    double near = inches(reading, site.nearEdges());
    YesNo blocked = reading.word("blocked edges", job.fact(JobFields.BLOCKED_EDGES));
    for (int plane = 0; plane < planes.size(); plane++) {
      Outline outline = planes.get(plane).plane().outline(reading);
      for (Sheet sheet : laid.get(plane).sheets()) {
        for (Region part : sheet.parts()) {
          boolean isNear = !outline.covers(part.bounds().grown(near));
          nails +=
              nails(
                  supports.get(plane),
                  part.bounds(),
                  isNear ? nearEdge : edge,
                  isNear ? nearField : field,
                  blocked == YesNo.YES);
        }
      }
    }
    return reading
        .solution("nails_of_the_layout")
        .figure("layout_nails", nails, Units.NAIL, COUNTED);
  }

  private static double inches(Reading reading, Figure<Length> spacing) {
    return reading.number(Shown.inWords(spacing.name()), spacing, Units.INCH);
  }

  private static int nails(
      Centers supports, Box part, double edge, double field, boolean isBlocked) {
    return NailPattern.nails(
        part.left(),
        part.right(),
        part.height(),
        supports.between(part.left() - 1, part.right() + 1),
        edge,
        field,
        isBlocked);
  }
}
