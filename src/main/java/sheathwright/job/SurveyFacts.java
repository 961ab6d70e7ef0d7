package sheathwright.job;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.leveling.string.RafterProfile;
import sheathwright.leveling.string.RafterStation;

/** Whether the readings of a plane fit what else the job says of it. */
final class SurveyFacts {

  private static final int FEWEST_STATIONS = 3;
  private static final double SLACK = 1;

  private final Job job;
  private final String plane;

  SurveyFacts(Job job, String plane) {
    this.job = job;
    this.plane = plane;
  }

  /**
   * Refuses readings that contradict the job's own facts.
   *
   * @throws RefusedException with what is given, and by what it is contradicted
   */
  void check(List<RafterProfile> rafters) {
    double screened = job.fact(JobFields.SUPPORT_SPACING).value();
    for (int i = 0; i < rafters.size(); i++) {
      RafterProfile rafter = rafters.get(i);
      if (rafter.stations().size() < FEWEST_STATIONS) {
        throw new RefusedException(
            "rafter %s of plane %s is read at %s; read its two bearings and at least one station between"
                .formatted(rafter.rafter(), plane, rafter.stations().size()),
            List.of(rafter.stations().get(0).up()));
      }
      double apart = i == 0 ? 0 : inches(rafter) - inches(rafters.get(i - 1));
      if (apart > screened + SLACK) {
        throw new RefusedException(
            "support_spacing_in is %s in, but rafters %s and %s of plane %s are read %s in apart; give the greatest spacing that is there"
                .formatted(
                    plain(screened),
                    rafters.get(i - 1).rafter(),
                    rafter.rafter(),
                    plane,
                    plain(apart)),
            List.of(job.fact(JobFields.SUPPORT_SPACING)));
      }
    }
    slopeLength(rafters);
  }

  private void slopeLength(List<RafterProfile> rafters) {
    job.planes().stream()
        .filter(row -> row.of(PlaceFields.PLANE).plain().equals(plane))
        .filter(row -> row.has(PlaceFields.SLOPE_LENGTH))
        .map(row -> row.of(PlaceFields.SLOPE_LENGTH).in(Units.INCH).value())
        .findFirst()
        .ifPresent(
            length -> {
              refuseBeyond(length, "upper_bearing_in", job.fact(SurveyFields.UPPER_BEARING));
              for (RafterProfile rafter : rafters) {
                for (RafterStation station : rafter.stations()) {
                  refuseBeyond(length, "up_in of rafter " + rafter.rafter(), station.up());
                }
              }
            });
  }

  private void refuseBeyond(double length, String what, Figure<Length> up) {
    double inches = up.in(Units.INCH).value();
    if (inches > length + SLACK) {
      throw new RefusedException(
          "%s is %s in, but plane %s is %s in long up the slope"
              .formatted(what, plain(inches), plane, plain(length)),
          List.of(up));
    }
  }

  private static double inches(RafterProfile rafter) {
    return rafter.center().in(Units.INCH).value();
  }

  private static String plain(double number) {
    return sheathwright.figure.Shown.plain(number);
  }
}
