package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.loads.wind.ZoneMap;
import sheathwright.roof.Box;
import sheathwright.roof.Spot;

/** The wind zones of a plane in characters, the eave below; a zone has the number of its label. */
final class ZoneChart {

  private ZoneChart() {}

  static String of(ZoneMap map, int columns) {
    Box bounds = map.plane().outline(Reading.aside()).bounds();
    double cell = Math.max(4, bounds.width() / columns);
    List<String> lines = new ArrayList<>(Shown.wrapped(map.toString(), columns, "", "  "));
    int rows = Math.max(1, (int) Math.round(bounds.height() / (2 * cell)));
    int cells = (int) Math.ceil(bounds.width() / cell);
    for (int row = 0; row < rows; row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < cells; column++) {
        double x = bounds.left() + (column + 0.5) * cell;
        double y = bounds.top() - (row + 0.5) * 2 * cell;
        line.append(zone(map, x, y));
      }
      lines.add(line.toString().stripTrailing());
    }
    lines.add("1 field   2 edges   3 corners; drawn from memory, screening only");
    return String.join("\n", lines);
  }

  private static char zone(ZoneMap map, double x, double y) {
    return map.parts().stream()
        .filter(part -> isIn(part.corners(), x, y))
        .map(part -> part.zone().word().charAt(0))
        .findFirst()
        .orElse(' ');
  }

  /**
   * Whether a point lies in a polygon: it crosses an odd number of sides on its way to the right.
   */
  private static boolean isIn(List<Spot> ring, double x, double y) {
    boolean isInside = false;
    for (int i = 0; i < ring.size(); i++) {
      Spot from = ring.get(i);
      Spot to = ring.get((i + 1) % ring.size());
      if (from.y() > y != to.y() > y
          && x < from.x() + (y - from.y()) / (to.y() - from.y()) * (to.x() - from.x())) {
        isInside = !isInside;
      }
    }
    return isInside;
  }
}
