package sheathwright.loads.wind;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.RefusedException;
import sheathwright.loads.wind.ConvexPart.Cut;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Spot;

/**
 * The map of wind zones on one plane between a level eave and a level ridge: the field, the strips
 * along eave, rake, ridge and hip, and the corners. Strips are as wide as the zone width on the
 * flat, so that they are wider along the wood.
 *
 * <p>The zones are those of the standard's figures, from memory. The figure of ASCE 7-22 was not
 * had: all edges count as zone 2 and all corners as zone 3, which is as severe as it can be. Does
 * not cover overhangs, dormers, and slopes of 7 degrees or less under ASCE 7-16 and 7-22, whose
 * zones go by the height. A valley has no strip. Where a plane is so small that strips meet, ridge
 * and corner go before eave.
 */
public final class WindZones {

  private static final double SEVEN_DEGREES = Math.tan(Math.toRadians(7));

  /**
   * A part of the plane in one zone.
   *
   * @param zone its label
   * @param corners in order round it, inches along the eave and up the slope
   * @param area square inches on the slope
   */
  public record Part(WindZone zone, List<Spot> corners, double area) {}

  /**
   * A plane, in inches.
   *
   * @param eave along the eave
   * @param slopeLength from eave to ridge along the wood
   * @param leftLean how far the left side leans in at the ridge: 0 for a rake, more for a hip, less
   *     for a valley
   * @param rightLean the same of the right side
   * @param riseIn12 rise in 12 of run, over 0
   */
  public record Shape(
      double eave, double slopeLength, double leftLean, double rightLean, double riseIn12) {

    private double slopeFactor() {
      return Math.hypot(1, riseIn12 / 12);
    }

    private double depth() {
      return slopeLength / slopeFactor();
    }
  }

  private final LoadEdition edition;
  private final RoofShape roof;
  private final Shape plane;
  private final double width;
  private final List<Part> parts = new ArrayList<>();

  private WindZones(LoadEdition edition, RoofShape roof, Shape plane, double width) {
    this.edition = edition;
    this.roof = roof;
    this.plane = plane;
    this.width = width;
  }

  /**
   * The parts of a plane, which together cover it once.
   *
   * @param edition of ASCE 7
   * @param roof gable, with rakes and valleys, or hip, with hips and valleys
   * @param plane in inches
   * @param zoneWidth on the horizontal projection, in inches, as {@code zone_width} gives it
   * @throws RefusedException if a side does not belong to the roof, or the edition's zones go by
   *     the height
   */
  public static List<Part> of(LoadEdition edition, RoofShape roof, Shape plane, double zoneWidth) {
    WindZones zones = new WindZones(edition, roof, plane, zoneWidth);
    zones.check();
    zones.divide();
    return List.copyOf(zones.parts);
  }

  private void check() {
    if (isNearlyFlat() && edition != LoadEdition.ASCE7_10) {
      throw new RefusedException(
          "zones of slopes to 7 degrees go by the height under %s and are not drawn here; treat the whole plane as zone 3"
              .formatted(edition.word()));
    }
    boolean isGable = roof == RoofShape.GABLE;
    for (double lean : List.of(plane.leftLean(), plane.rightLean())) {
      if (isGable ? lean > 0 : lean == 0) {
        throw new RefusedException(
            isGable
                ? "a hip stands on a gable roof; call the roof hip"
                : "a rake stands on a hip roof; call the roof gable, or give the hip's lean");
      }
    }
  }

  private void divide() {
    double depth = plane.depth();
    ConvexPart rest =
        new ConvexPart(
            List.of(
                new Spot(0, 0),
                new Spot(plane.eave(), 0),
                new Spot(plane.eave() - plane.rightLean(), depth),
                new Spot(plane.leftLean(), depth)));
    Cut eave = new Cut(0, 1, width);
    Cut ridge = new Cut(0, -1, width - depth);
    if (roof == RoofShape.GABLE) {
      for (Cut rake : ends()) {
        ConvexPart strip = rake.within(rest);
        addStrip(strip, ridge, eave, WindPart.RIDGE_CORNER, WindPart.RAKE, WindPart.EAVE_CORNER);
        rest = rake.beyond(rest);
      }
      addStrip(rest, ridge, eave, WindPart.RIDGE, WindPart.FIELD, WindPart.EAVE);
      return;
    }
    ConvexPart low = eave.within(rest);
    rest = eave.beyond(rest);
    for (Cut corner : ends()) {
      add(WindPart.EAVE_CORNER, corner.within(low));
      low = corner.beyond(low);
    }
    add(WindPart.EAVE, low);
    for (Cut hip : hips(depth)) {
      add(WindPart.RIDGE, hip.within(rest));
      rest = hip.beyond(rest);
    }
    addStrip(rest, ridge, eave, WindPart.RIDGE, WindPart.FIELD, WindPart.EAVE);
  }

  /** What lies along the ridge, along the eave, and between. */
  private void addStrip(
      ConvexPart strip, Cut ridge, Cut eave, WindPart high, WindPart middle, WindPart low) {
    ConvexPart rest = strip;
    if (!isNearlyFlat()) {
      add(high, ridge.within(rest));
      rest = ridge.beyond(rest);
    }
    add(low, eave.within(rest));
    add(middle, eave.beyond(rest));
  }

  /** Straight up from the eave, a zone width in from each end that is no valley. */
  private List<Cut> ends() {
    List<Cut> ends = new ArrayList<>();
    if (plane.leftLean() >= 0) {
      ends.add(new Cut(1, 0, width));
    }
    if (plane.rightLean() >= 0) {
      ends.add(new Cut(-1, 0, width - plane.eave()));
    }
    return ends;
  }

  private List<Cut> hips(double depth) {
    List<Cut> hips = new ArrayList<>();
    if (plane.leftLean() > 0) {
      double length = Math.hypot(plane.leftLean(), depth);
      hips.add(new Cut(depth / length, -plane.leftLean() / length, width));
    }
    if (plane.rightLean() > 0) {
      double length = Math.hypot(plane.rightLean(), depth);
      double along = -depth / length;
      hips.add(new Cut(along, -plane.rightLean() / length, width + along * plane.eave()));
    }
    return hips;
  }

  private void add(WindPart kind, ConvexPart part) {
    if (!part.isEmpty()) {
      double factor = plane.slopeFactor();
      List<Spot> onSlope =
          part.corners().stream().map(spot -> new Spot(spot.x(), spot.y() * factor)).toList();
      parts.add(new Part(kind.label(edition, roof), onSlope, part.area() * factor));
    }
  }

  private boolean isNearlyFlat() {
    return plane.riseIn12() / 12 <= SEVEN_DEGREES;
  }
}
