package sheathwright.job;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.table.Field;
import sheathwright.loads.RoofMaterial;
import sheathwright.wood.Grade;
import sheathwright.wood.LumberSize;
import sheathwright.wood.ServiceMoisture;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;
import sheathwright.wood.ValueSet;

/** What a job's tables may say of its framing. */
final class FramingTables {

  private static final Field DEAD =
      Field.number("dead_psf", "Dead load, horizontal projection", 0, 100);
  private static final Field RISE = Field.number("rise_in_12", "Rise in 12", 0, 24);

  static final List<Field> LAYERS =
      List.of(
          Field.word("material", "Material", RoofMaterial.class),
          Field.number("layers", "Layers", Units.RATIO, 0, 20),
          Field.number("thickness_in", "Thickness of one", 0, 24).ifKnown());

  static final List<Field> RAFTERS =
      List.of(
          Field.word("species", "Rafter species", Species.class),
          Field.word("grade", "Rafter grade", Grade.class),
          Field.word("rafter_size", "Rafter size", LumberSize.class),
          Field.word("value_set", "Edition of the design values", ValueSet.class),
          Field.number("span_ft", "Rafter span, clear, horizontal projection", 1, 40),
          Field.number("bearing_in", "Bearing length at plate", 0.5, 12),
          Field.word("load", "Kind of live load", RafterLoad.class),
          Field.number("live_psf", "Live load, horizontal projection", 1, 300),
          DEAD,
          Field.number("deflection_limit", "Deflection limit, live load L/", 180, 360));

  /** What a job may say of its rafters besides; what it leaves out is taken as is usual. */
  static final List<Field> OLD_RAFTERS =
      List.of(
          Field.word("rafter_stock", "Lumber type: dressed, rough, old full size", Stock.class)
              .ifKnown(),
          Field.number("rafter_thickness_in", "Rafter thickness, measured", 0, 6).ifKnown(),
          Field.number("rafter_depth_in", "Rafter depth, measured", 0, 24).ifKnown(),
          Field.number("roof_live_psf", "Roof live load beside the snow", 1, 100).ifKnown(),
          Field.word("moisture", "Wood stays", ServiceMoisture.class).ifKnown(),
          Field.number("temperature_f", "Sustained temperature, °F", Units.RATIO, 0, 150).ifKnown(),
          Field.word("incised", "Incised for a preservative", YesNo.class).ifKnown(),
          Field.word("seasoned", "Known dry when first loaded", YesNo.class).ifKnown(),
          Field.number(
                  "total_deflection_limit", "Deflection limit, total load L/", Units.RATIO, 60, 360)
              .ifKnown(),
          Field.number("notch_in", "Depth of the birdsmouth", 0, 8).ifKnown(),
          Field.number("end_distance_in", "Bearing to rafter tail", 0, 240).ifKnown(),
          RISE.ifKnown(),
          Field.number("tie_height_in", "Rafter ties above the plate", 0, 120).ifKnown(),
          Field.number("brace_spacing_in", "Braces while the deck is off", 0, 600).ifKnown(),
          Field.number("deck_off_live_psf", "Construction live load, deck off", 1, 100).ifKnown());

  static final List<Field> SISTER_CHOICE =
      List.of(
          Field.word("sister_species", "Sister species", Species.class),
          Field.word("sister_grade", "Sister grade", Grade.class),
          Field.number("existing_psf", "Dead load in place when sistered", 0, 100),
          Field.word("jacked", "Shored before nailing", YesNo.class));

  static final List<Field> SISTER_STICKS =
      List.of(
          Field.number("stick_2x4", "A long enough 2x4", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500),
          Field.number("stick_2x6", "A long enough 2x6", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500),
          Field.number("stick_2x8", "A long enough 2x8", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500),
          Field.number("stick_2x10", "A long enough 2x10", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500),
          Field.number("stick_2x12", "A long enough 2x12", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500));

  /**
   * What a job says of its rafters: their dead load, or the slope under the layers that make it.
   */
  static List<Field> rafters(boolean isLayered) {
    return RAFTERS.stream()
        .flatMap(
            field ->
                field == DEAD && isLayered ? Stream.of(RISE, DEAD.ifKnown()) : Stream.of(field))
        .toList();
  }

  /** The slope is asked for once, with the layers where there are any. */
  static List<Field> oldRafters(boolean isLayered) {
    return OLD_RAFTERS.stream()
        .filter(field -> !isLayered || !field.name().equals(RISE.name()))
        .toList();
  }

  static final List<Field> REPORTS =
      List.of(
          Field.name("report", "Report"),
          Field.word("seen", "Seen", StopFinding.class),
          Field.text("where", "Where"),
          Field.text("evidence", "Evidence").ifKnown());

  private FramingTables() {}
}
