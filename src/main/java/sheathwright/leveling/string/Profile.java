package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Heights along a line, in inches. Between two readings the wood is taken as straight; beyond the
 * first and the last it is taken to stay as it is there.
 *
 * @param places strictly rising
 * @param heights one for each place
 */
public record Profile(double[] places, double[] heights) {

  /** A stretch of a line, in inches. */
  public record Stretch(double from, double to) {

    public double length() {
      return to - from;
    }
  }

  double first() {
    return places[0];
  }

  double last() {
    return places[places.length - 1];
  }

  double length() {
    return last() - first();
  }

  public double at(double place) {
    if (place <= first()) {
      return heights[0];
    }
    for (int i = 1; i < places.length; i++) {
      if (place <= places[i]) {
        double share = (place - places[i - 1]) / (places[i] - places[i - 1]);
        return heights[i - 1] + share * (heights[i] - heights[i - 1]);
      }
    }
    return heights[heights.length - 1];
  }

  /** Whether a place lies between the first and the last reading, or on one of them. */
  boolean reaches(double place) {
    return places.length > 0 && place >= first() && place <= last();
  }

  public double greatest() {
    return IntStream.range(0, heights.length).mapToDouble(i -> heights[i]).max().orElse(0);
  }

  public double least() {
    return IntStream.range(0, heights.length).mapToDouble(i -> heights[i]).min().orElse(0);
  }

  /** Places read that lie inside a stretch, its ends left out. */
  public List<Double> inside(Stretch stretch) {
    List<Double> inside = new ArrayList<>();
    for (double place : places) {
      if (place > stretch.from() && place < stretch.to()) {
        inside.add(place);
      }
    }
    return inside;
  }

  /** Where it is higher than a level, between the two ends of the line, from the first on. */
  public List<Stretch> above(double level, Stretch line) {
    List<Double> knots = new ArrayList<>(List.of(line.from()));
    knots.addAll(inside(line));
    knots.add(line.to());
    List<Stretch> above = new ArrayList<>();
    double began = at(line.from()) > level ? line.from() : Double.NaN;
    for (int i = 1; i < knots.size(); i++) {
      double left = at(knots.get(i - 1)) - level;
      double right = at(knots.get(i)) - level;
      if ((left > 0) != (right > 0)) {
        double crossing =
            knots.get(i - 1) + left / (left - right) * (knots.get(i) - knots.get(i - 1));
        if (right > 0) {
          began = crossing;
        } else {
          above.add(new Stretch(began, crossing));
        }
      }
    }
    if (at(line.to()) > level) {
      above.add(new Stretch(began, line.to()));
    }
    return above;
  }
}
