package sheathwright.fastening.uplift;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;

/**
 * One thing that the covering's maker asks of the deck and its fasteners, held against what is
 * there: a least thickness, a greatest spacing, a greatest gap.
 *
 * @param what it is about, in words: {@code deck thickness}
 * @param required as the maker's engineering states it
 * @param sense whether that is the least or the greatest allowed
 * @param found what is there, in the same unit; absent where nobody has shown it yet
 * @param evidence what shows it: a photograph, a stamp, a measurement; may be empty
 */
public record MakerRequirement(
    Choice<String> what,
    Figure<?> required,
    Choice<Sense> sense,
    Figure<?> found,
    Choice<String> evidence) {

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  /** How something stands that is asked for. */
  public enum Met implements Option<Met> {
    YES,
    NO,
    /** Nobody has shown yet what is there. */
    NOT_SHOWN
  }

  /** Which way a requirement bounds. */
  public enum Sense implements Option<Sense> {
    AT_LEAST,
    AT_MOST
  }

  /**
   * A requirement typed at the prompt.
   *
   * @throws sheathwright.figure.RefusedException if the two figures do not measure the same thing
   */
  public static <Q extends Quantity> MakerRequirement of(
      String what, Sense sense, Figure<Q> required, Figure<Q> found, String evidence) {
    return new MakerRequirement(
        Choice.literal(what),
        required,
        Choice.literal(sense),
        found.in(required.unit()),
        Choice.literal(evidence));
  }

  /** Whether somebody has shown what is there. */
  private Condition isShown() {
    return found.isMeasured();
  }

  /** Whether what is there meets it; the same comparison whichever way it bounds. */
  public Condition met() {
    return Condition.any(
        Condition.all(sense.is(Sense.AT_LEAST), found.isAtLeast(required)),
        Condition.all(sense.is(Sense.AT_MOST), found.isAtMost(required)));
  }

  /**
   * Requirements as a list: each with its unit in words, met or not, and a one where what is there
   * does not meet it, so that the ones can be summed.
   */
  public static Roll roll(List<MakerRequirement> requirements) {
    return Roll.of(
        "maker",
        "the maker's requirements",
        requirements.stream().map(Line::new).toList(),
        Roll.column("requirement", line -> line.requirement().what()),
        Roll.column("unit", Line::unit),
        Roll.column("sense", line -> line.requirement().sense()),
        Roll.column("required", line -> line.requirement().required()),
        Roll.column("found", line -> line.requirement().found()),
        Roll.column("met", Line::met),
        Roll.column("unmet", Line::unmet),
        Roll.column("evidence", line -> line.requirement().evidence()));
  }

  /** How many requirements of a list are not met. */
  public static Figure<Ratio> unmet(Roll roll) {
    return roll.sum("unmet", Units.RATIO).as("maker_requirements_unmet", Units.RATIO);
  }

  /** One line of the list, its answers made once. */
  private record Line(
      MakerRequirement requirement, Choice<String> unit, Choice<Met> met, Figure<Ratio> unmet) {

    Line(MakerRequirement requirement) {
      this(
          requirement,
          Choice.choose(
                  requirement.isShown(),
                  Choice.choose(requirement.met(), Choice.literal(Met.YES), Choice.literal(Met.NO)),
                  Choice.literal(Met.NOT_SHOWN))
              .as("met"));
    }

    private Line(MakerRequirement requirement, Choice<Met> met) {
      this(
          requirement,
          Choice.literal(requirement.required().unit().spoken()),
          met,
          Figure.choose(met.is(Met.NO), ONE, NONE).as("unmet", Units.RATIO));
    }
  }

  @Override
  public String toString() {
    String answer = !isShown().holds() ? "not shown yet" : met().holds() ? "met" : "NOT met";
    return "%s: %s %s, found %s, %s"
        .formatted(what, sense.plain().replace('-', ' '), required, found, answer);
  }
}
