package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sheathwright.roof.Spot;

/** Parallel lines that fill an area, so that it is told apart in black and white as well. */
final class Hatching {

  private final double cosine;
  private final double sine;

  private Hatching(double degrees) {
    this.cosine = Math.cos(Math.toRadians(degrees));
    this.sine = Math.sin(Math.toRadians(degrees));
  }

  /**
   * The lines of a direction that lie inside an area.
   *
   * @param rings round the area and round its holes
   * @param degrees of the lines against the eave
   * @param apart distance between two lines
   */
  static List<List<Spot>> lines(List<List<Spot>> rings, double degrees, double apart) {
    return new Hatching(degrees).filling(rings, apart);
  }

  private List<List<Spot>> filling(List<List<Spot>> rings, double apart) {
    List<List<Spot>> lines = new ArrayList<>();
    double lowest = rings.stream().flatMap(List::stream).mapToDouble(this::across).min().orElse(0);
    double highest = rings.stream().flatMap(List::stream).mapToDouble(this::across).max().orElse(0);
    for (double level = Math.floor(lowest / apart) * apart + apart / 2;
        level < highest;
        level += apart) {
      List<Double> crossings = crossings(rings, level);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        lines.add(List.of(at(crossings.get(i), level), at(crossings.get(i + 1), level)));
      }
    }
    return lines;
  }

  private List<Double> crossings(List<List<Spot>> rings, double level) {
    List<Double> crossings = new ArrayList<>();
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Spot from = ring.get(i);
        Spot to = ring.get((i + 1) % ring.size());
        double start = across(from);
        double end = across(to);
        if (start < level != end < level) {
          double share = (level - start) / (end - start);
          crossings.add(along(from) + share * (along(to) - along(from)));
        }
      }
    }
    Collections.sort(crossings);
    return crossings;
  }

  private double along(Spot spot) {
    return spot.x() * cosine + spot.y() * sine;
  }

  private double across(Spot spot) {
    return -spot.x() * sine + spot.y() * cosine;
  }

  private Spot at(double along, double across) {
    return new Spot(along * cosine - across * sine, along * sine + across * cosine);
  }
}
