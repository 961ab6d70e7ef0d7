package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Units;
import sheathwright.loads.RoofLoads;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.SimpleSpan;

/**
 * What lies on one rafter of many: dead load alone, with roof live load, or with snow. Roof live
 * load and snow are never added.
 */
final class RafterLoads {

  static final double MOST_DEAD = 100;
  static final String DEAD_RULE = "on the horizontal projection; span tables use 10 and 20";
  static final double LEAST_ROOF_LIVE = 1;
  static final double MOST_ROOF_LIVE = 100;
  static final String ROOF_LIVE_RULE = "on the horizontal projection; 20 is the usual minimum";

  private static final Limits DEAD = Limits.between(0, MOST_DEAD, DEAD_RULE);
  private static final Limits ROOF_LIVE =
      Limits.between(LEAST_ROOF_LIVE, MOST_ROOF_LIVE, ROOF_LIVE_RULE);

  final LoadCase dead;
  final LoadCase roofLive;
  final LoadCase snow;

  /** The greater of roof live load and snow, without the dead load. */
  final Figure<LineForce> passing;

  /** The greatest load at once. */
  final Figure<LineForce> greatest;

  /** The greatest w ÷ C_D, which governs bending and shear. */
  final Figure<LineForce> greatestLasting;

  RafterLoads(Figure<Length> spacing, RoofLoads loads) {
    var lr = loads.roofLive().within("roof_live_psf", Units.PSF, ROOF_LIVE);
    var s = loads.snow();
    var d = loads.dead().within("dead_psf", Units.PSF, DEAD);
    this.dead =
        loadCase("dead", "dead load alone", "D", d, spacing, LoadDuration.DURATION_PERMANENT);
    this.roofLive =
        loadCase(
            "roof_live",
            "dead and roof live load",
            "D+Lr",
            d.plus(lr),
            spacing,
            LoadDuration.DURATION_ROOF_LIVE);
    this.snow =
        loadCase(
            "snow", "dead load and snow", "D+S", d.plus(s), spacing, LoadDuration.DURATION_SNOW);
    passing =
        lr.max(s)
            .times(spacing)
            .as("passing_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w_live");
    greatest =
        this.roofLive
            .load()
            .max(this.snow.load())
            .as("greatest_load_lb_per_in", Units.POUND_PER_INCH);
    greatestLasting =
        this.dead
            .lasting()
            .max(this.roofLive.lasting())
            .max(this.snow.lasting())
            .as("greatest_lasting_lb_per_in", Units.POUND_PER_INCH);
  }

  private static LoadCase loadCase(
      String name,
      String spoken,
      String letters,
      Figure<Pressure> load,
      Figure<Length> spacing,
      LoadDuration duration) {
    return new LoadCase(
        name,
        spoken,
        load.times(spacing)
            .as(name + "_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w_" + letters),
        Nds.loadDuration(name + "_duration_factor", duration));
  }

  List<LoadCase> cases() {
    return List.of(dead, roofLive, snow);
  }
}
