package sheathwright.loads.wind;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Shown;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * Where a number stands between the printed columns of a table, and the value there. Outside the
 * first and the last column the value is flat. It is one formula whatever the number, so that it
 * stays right when another number is typed into the workbook.
 *
 * <pre>
 * value = first + share × (second − first) + share × (third − second) + …
 * share = how far the number is from one column to the next, 0 to 1
 * </pre>
 */
final class BetweenPrinted {

  /** A sum of more would not fit into a cell under long names. */
  private static final int GAINS_A_FORMULA = 3;

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> ALL = Figure.of(1, Units.RATIO);

  private final List<String> spans = new ArrayList<>();
  private final List<Figure<Ratio>> shares = new ArrayList<>();

  private BetweenPrinted() {}

  /** Straight between columns. */
  static <Q extends Quantity> BetweenPrinted straight(Figure<Q> at, List<Figure<Q>> printed) {
    BetweenPrinted place = new BetweenPrinted();
    for (int i = 1; i < printed.size(); i++) {
      Figure<Q> from = printed.get(i - 1);
      Figure<Q> to = printed.get(i);
      place.add(from, to, at.minus(from).dividedBy(to.minus(from)));
    }
    return place;
  }

  /** Straight on a logarithmic scale between columns. */
  static <Q extends Quantity> BetweenPrinted logarithmic(Figure<Q> at, List<Figure<Q>> printed) {
    BetweenPrinted place = new BetweenPrinted();
    for (int i = 1; i < printed.size(); i++) {
      Figure<Q> from = printed.get(i - 1);
      Figure<Q> to = printed.get(i);
      place.add(from, to, at.dividedBy(from).logarithm().dividedBy(to.dividedBy(from).logarithm()));
    }
    return place;
  }

  private void add(Figure<?> from, Figure<?> to, Figure<?> share) {
    String span = Shown.plain(from.value()) + "_to_" + Shown.plain(to.value());
    spans.add(span);
    shares.add(
        share
            .in(Units.RATIO)
            .max(NONE)
            .min(ALL)
            .as("share_" + span, Units.RATIO, Source.derived("between printed columns")));
  }

  /** The value here, from the values in the printed columns. */
  Figure<Ratio> value(String name, List<Figure<Ratio>> printed, Source source) {
    Figure<Ratio> value = printed.get(0);
    for (int i = 0; i < shares.size(); i++) {
      Figure<Ratio> gain =
          printed
              .get(i + 1)
              .minus(printed.get(i))
              .times(shares.get(i))
              .as(name + "_gain_" + spans.get(i), Units.RATIO, source);
      value = value.plus(gain);
      if ((i + 1) % GAINS_A_FORMULA == 0) {
        value = value.as(name + "_with_gain_" + spans.get(i), Units.RATIO, source);
      }
    }
    return value.as(name, Units.RATIO, source);
  }
}
