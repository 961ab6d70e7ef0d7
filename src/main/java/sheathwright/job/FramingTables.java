package sheathwright.job;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.rafter.ClearSpan;
import sheathwright.framing.rafter.DeckOff;
import sheathwright.framing.rafter.OldRafter;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.table.Field;
import sheathwright.loads.LiveLoad;
import sheathwright.loads.RoofMaterial;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.ActualSize;
import sheathwright.wood.Lumber;
import sheathwright.wood.Member;
import sheathwright.wood.Seat;
import sheathwright.wood.ServiceConditions;

/** What a job's tables may say of its framing. */
final class FramingTables {

  private static final Field DEAD =
      Field.of(UniformLoad.class, "dead", "Dead load, horizontal projection");
  private static final Field RISE = Field.of(RoofTriangle.class, "rise", "Rise in 12");

  static final List<Field> LAYERS =
      List.of(
          Field.word("material", "Material", RoofMaterial.class),
          Field.number("layers", "Layers", Units.RATIO, 0, 20),
          Field.number("thickness_in", "Thickness of one", 0, 24).ifKnown());

  static final List<Field> RAFTERS =
      List.of(
          Field.of(Lumber.class, "species", "Rafter species"),
          Field.of(Lumber.class, "grade", "Rafter grade"),
          Field.of(Lumber.class, "size", "Rafter size").named("rafter_size"),
          Field.of(Lumber.class, "valueSet", "Edition of the design values"),
          Field.of(ClearSpan.class, "span", "Rafter span, clear, horizontal projection"),
          Field.of(Seat.class, "bearing", "Bearing length at plate"),
          Field.word("load", "Kind of live load", RafterLoad.class),
          Field.of(LiveLoad.class, "live", "Live load, horizontal projection"),
          DEAD,
          Field.number("deflection_limit", "Deflection limit, live load L/", 180, 360));

  /** What a job may say of its rafters besides; what it leaves out is taken as is usual. */
  static final List<Field> OLD_RAFTERS =
      List.of(
          Field.of(ActualSize.class, "stock", "Lumber type: dressed, rough, old full size")
              .named("rafter_stock")
              .ifKnown(),
          Field.of(ActualSize.class, "thickness", "Rafter thickness, measured")
              .named("rafter_thickness_in")
              .ifKnown(),
          Field.of(ActualSize.class, "depth", "Rafter depth, measured")
              .named("rafter_depth_in")
              .ifKnown(),
          Field.number("roof_live_psf", "Roof live load beside the snow", 1, 100).ifKnown(),
          Field.of(ServiceConditions.class, "moisture", "Moisture of the wood").ifKnown(),
          Field.of(ServiceConditions.class, "temperature", "Sustained temperature, °F").ifKnown(),
          Field.of(Member.class, "incised", "Incised for a preservative").ifKnown(),
          Field.of(OldRafter.class, "seasoned", "Known dry when first loaded").ifKnown(),
          Field.number(
                  "total_deflection_limit", "Deflection limit, total load L/", Units.RATIO, 60, 360)
              .ifKnown(),
          Field.of(Birdsmouth.class, "notch", "Depth of the birdsmouth").ifKnown(),
          Field.of(Seat.class, "endDistance", "Bearing to rafter tail").ifKnown(),
          RISE.ifKnown(),
          Field.of(RoofTriangle.class, "tieHeight", "Rafter ties above the plate").ifKnown(),
          Field.of(DeckOff.class, "braceSpacing", "Braces while the deck is off").ifKnown(),
          Field.of(DeckOff.class, "live", "Construction live load, deck off").ifKnown());

  static final List<Field> SISTER_CHOICE =
      List.of(
          Field.of(Lumber.class, "species", "Sister species").named("sister_species"),
          Field.of(Lumber.class, "grade", "Sister grade").named("sister_grade"),
          Field.of(SisterLoad.class, "existing", "Dead load in place when sistered"),
          Field.of(SisterLoad.class, "jacked", "Shored before nailing"));

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
