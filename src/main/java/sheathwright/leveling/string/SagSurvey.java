package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * The greatest drop of every rafter below a string from bearing to bearing, and the rafter where it
 * is the greatest part of the span.
 *
 * @param roll rafter, sag and span, for a workbook
 * @param rafter the worst, by name
 * @param worst its sag against the fraction that was asked for
 */
public record SagSurvey(Roll roll, Choice<String> rafter, SagFraction worst) {

  private static final Source GREATEST = Source.derived("the greatest drop that was read");

  /** One rafter's greatest drop; a rafter that stands high has none. */
  private record Sag(String rafter, double part, Figure<Length> sag, Figure<Length> span) {}

  /**
   * A plane surveyed.
   *
   * @param plane its name
   * @param rafters each with its drops below the string, low positive, and its bearings
   * @param fraction the n of L/n
   * @throws RefusedException if there is no rafter, or the worst sag lies outside the range of
   *     {@code sag_fraction}
   */
  public static SagSurvey of(String plane, List<LevelRafter> rafters, Figure<Ratio> fraction) {
    if (rafters.isEmpty()) {
      throw new RefusedException("plane %s has no rafter to survey".formatted(plane));
    }
    String word =
        new PlaneProfiles(plane, rafters.stream().map(LevelRafter::buildUp).toList()).word();
    Reading reading = new Reading();
    List<LevelRafter.Plain> read = rafters.stream().map(rafter -> rafter.plain(reading)).toList();
    Solution solution = reading.solution("sags_of_" + word);
    List<Sag> sags = new ArrayList<>();
    for (int i = 0; i < read.size(); i++) {
      sags.add(sag(rafters.get(i), read.get(i), solution));
    }
    Sag worst = sags.get(0);
    for (Sag each : sags) {
      worst = each.part() > worst.part() ? each : worst;
    }
    return new SagSurvey(
        Roll.of(
            "sags_on_" + word,
            "how far the rafters sag",
            sags,
            Roll.<Sag>column("rafter", each -> Choice.literal(each.rafter())),
            Roll.column("sag_in", Sag::sag),
            Roll.column("span_ft", Sag::span)),
        solution.word("worst_rafter_of_" + word, worst.rafter(), GREATEST),
        Sags.sagFraction(SaggedSpan.sag(worst.sag()).span(worst.span()), fraction));
  }

  private static Sag sag(LevelRafter rafter, LevelRafter.Plain read, Solution solution) {
    double greatest = Math.max(0, read.buildUp().along().greatest());
    return new Sag(
        rafter.buildUp().rafter(),
        greatest / read.bearings().length(),
        solution.figure("sag_in", greatest, Units.INCH, GREATEST),
        rafter.upper().minus(rafter.lower()).in(Units.FOOT));
  }
}
