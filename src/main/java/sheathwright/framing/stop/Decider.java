package sheathwright.framing.stop;

import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * Who decides where a repair is stopped. Whoever comes later stands at the head of a list on which
 * several are named: what holds the roof up is asked first.
 */
enum Decider implements Option<Decider> {
  NOBODY("nobody else"),
  MAKER("the covering's maker"),
  OFFICIAL("the building official"),
  ENVIRONMENTAL("an environmental firm"),
  ELECTRICIAN("an electrician or the utility"),
  ENGINEER("a licensed engineer"),
  TRUSS_DESIGNER("the truss designer or a licensed engineer");

  private final String word;
  private final Figure<Ratio> order;

  Decider(String word) {
    this.word = word;
    this.order =
        Figure.constant(
            "order_of_%s".formatted(name().toLowerCase(java.util.Locale.ROOT)),
            ordinal(),
            Units.RATIO,
            Source.COMMON_PRACTICE);
  }

  @Override
  public String word() {
    return word;
  }

  /** Its place among all who decide; the greatest stands at the head. */
  Figure<Ratio> order() {
    return order;
  }

  /** What stands at the head of a list on which nobody greater decides. */
  Decision decision() {
    return switch (this) {
      case NOBODY -> Decision.WITHIN;
      case MAKER -> Decision.STOP_MAKER;
      case OFFICIAL -> Decision.STOP_OFFICIAL;
      case ENVIRONMENTAL -> Decision.STOP_ENVIRONMENTAL;
      case ELECTRICIAN -> Decision.STOP_ELECTRICIAN;
      case ENGINEER -> Decision.STOP_ENGINEER;
      case TRUSS_DESIGNER -> Decision.STOP_TRUSS;
    };
  }
}
