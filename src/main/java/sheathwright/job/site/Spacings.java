package sheathwright.job.site;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Refusal;
import sheathwright.figure.Units;

/**
 * How far apart the nails of a deck stand, zone by zone.
 *
 * @param edge on panel edges, away from the roof's own edges
 * @param field on the supports between, away from the roof's own edges
 * @param nearEdge on panel edges near eaves, rakes, ridges and hips
 * @param nearField on the supports between, near eaves, rakes, ridges and hips
 * @param gable on gable-end framing
 */
public record Spacings(
    Figure<Length> edge,
    Figure<Length> field,
    Figure<Length> nearEdge,
    Figure<Length> nearField,
    Figure<Length> gable) {

  /** The same everywhere. */
  static Spacings everywhere(Figure<Length> edge, Figure<Length> field) {
    return new Spacings(edge, field, edge, field, edge);
  }

  /** Why they cannot be said; nothing if they can. */
  public java.util.Optional<Refusal> refusal() {
    return Stream.of(edge, field, nearEdge, nearField, gable)
        .flatMap(spacing -> spacing.refusal().stream())
        .findFirst();
  }

  /** These if a condition holds, else those, each under a name of its own. */
  static Spacings choose(Condition when, String name, Spacings these, Spacings those) {
    List<Figure<Length>> first = these.each();
    List<Figure<Length>> second = those.each();
    return named(
        name,
        Stream.iterate(0, i -> i + 1)
            .limit(first.size())
            .map(i -> Figure.choose(when, first.get(i), second.get(i)))
            .toList());
  }

  /** The lesser of each. */
  Spacings within(String name, Spacings other) {
    List<Figure<Length>> second = other.each();
    List<Figure<Length>> first = each();
    return named(
        name,
        Stream.iterate(0, i -> i + 1)
            .limit(first.size())
            .map(i -> first.get(i).min(second.get(i)))
            .toList());
  }

  private static Spacings named(String name, List<Figure<Length>> each) {
    return new Spacings(
        each.get(0).as(name + "_edge_spacing_in", Units.INCH),
        each.get(1).as(name + "_field_spacing_in", Units.INCH),
        each.get(2).as(name + "_near_edge_spacing_in", Units.INCH),
        each.get(3).as(name + "_near_field_spacing_in", Units.INCH),
        each.get(4).as(name + "_gable_spacing_in", Units.INCH));
  }

  private List<Figure<Length>> each() {
    return List.of(edge, field, nearEdge, nearField, gable);
  }
}
