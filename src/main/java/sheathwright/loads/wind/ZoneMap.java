package sheathwright.loads.wind;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Box;
import sheathwright.roof.Edge;
import sheathwright.roof.Outline;
import sheathwright.roof.Plane;
import sheathwright.roof.Spot;

/**
 * Where on a plane the wind pulls how hard: its wind zones, drawn from memory of the standard's
 * figures.
 *
 * @param plane the plane, openings left out of account
 * @param parts its zones, which cover it once
 * @param areas square feet of each zone
 */
public record ZoneMap(Plane plane, List<WindZones.Part> parts, Map<WindZone, Figure<Area>> areas) {

  private static final double SQUARE_INCHES = 144;

  /**
   * The wind zones of a plane between a level eave and a level ridge.
   *
   * @param rise rise in 12 of run, over 0
   * @param zoneWidth on the horizontal projection, as {@code zone_width} gives it
   * @throws RefusedException if the plane has more than one eave or ridge, or its sides do not
   *     belong to such a roof
   */
  public static ZoneMap of(
      Plane plane,
      Figure<Ratio> rise,
      OneOf<RoofShape> roof,
      OneOf<LoadEdition> edition,
      Figure<Length> zoneWidth) {
    Reading reading = new Reading();
    Outline outline = plane.outline(reading);
    WindZones.Shape shape =
        shape(plane.name(), outline, reading.number("rise", rise, Units.RISE_IN_12));
    RoofShape kind = reading.word("roof", roof);
    LoadEdition book = reading.word("edition", edition);
    double width = reading.number("zone width", zoneWidth, Units.INCH);
    List<WindZones.Part> parts = WindZones.of(book, kind, shape, width);
    Solution solution = reading.solution("wind_zones_of_" + plane.name());
    Map<WindZone, Double> inches = new EnumMap<>(WindZone.class);
    parts.forEach(part -> inches.merge(part.zone(), part.area(), Double::sum));
    Map<WindZone, Figure<Area>> areas = new EnumMap<>(WindZone.class);
    inches.forEach(
        (zone, area) ->
            areas.put(
                zone,
                solution.figure(
                    "zone_" + zone.word() + "_sf",
                    area / SQUARE_INCHES,
                    Units.SQUARE_FOOT,
                    Source.fromMemory("figures of ASCE 7"))));
    double left =
        outline.edges().stream()
            .filter(edge -> edge.kind() == Edge.Kind.EAVE)
            .mapToDouble(edge -> edge.from().x())
            .min()
            .orElse(0);
    return new ZoneMap(plane, parts.stream().map(part -> shifted(part, left)).toList(), areas);
  }

  /** A part as it lies from the plane's own left corner. */
  private static WindZones.Part shifted(WindZones.Part part, double along) {
    return new WindZones.Part(
        part.zone(),
        part.corners().stream().map(corner -> new Spot(corner.x() + along, corner.y())).toList(),
        part.area());
  }

  private static WindZones.Shape shape(String plane, Outline outline, double rise) {
    List<Edge> edges = outline.edges();
    List<Edge> eaves = edges.stream().filter(edge -> edge.kind() == Edge.Kind.EAVE).toList();
    List<Edge> ridges = edges.stream().filter(edge -> edge.kind() == Edge.Kind.RIDGE).toList();
    if (eaves.size() != 1 || ridges.size() > 1 || edges.size() > 4) {
      throw new RefusedException(
          "plane %s has %s sides; wind zones are drawn on planes between one level eave and one level ridge"
              .formatted(plane, edges.size()));
    }
    Edge eave = eaves.get(0);
    Box bounds = outline.bounds();
    double left = eave.from().x();
    double right = eave.to().x();
    double ridgeLeft = ridges.isEmpty() ? peak(edges, bounds.top()) : ridges.get(0).to().x();
    double ridgeRight = ridges.isEmpty() ? ridgeLeft : ridges.get(0).from().x();
    return new WindZones.Shape(
        right - left, bounds.height(), ridgeLeft - left, right - ridgeRight, rise);
  }

  private static double peak(List<Edge> edges, double top) {
    return edges.stream()
        .map(Edge::to)
        .filter(corner -> corner.y() == top)
        .findFirst()
        .orElseThrow()
        .x();
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("wind zones of " + plane.name());
    areas.forEach(
        (zone, area) -> text.append(", zone ").append(zone.word()).append(": ").append(area));
    return text.toString();
  }
}
