package sheathwright.job;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.rafter.ClearSpan;
import sheathwright.framing.rafter.DeckOff;
import sheathwright.framing.rafter.OldRafter;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.loads.LayerFate;
import sheathwright.loads.LiveLoad;
import sheathwright.loads.RoofMaterial;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.ActualSize;
import sheathwright.wood.Grade;
import sheathwright.wood.Knowledge;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Member;
import sheathwright.wood.Moisture;
import sheathwright.wood.Seat;
import sheathwright.wood.ServiceConditions;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;
import sheathwright.wood.ValueSet;

/** What a job's tables may say of its framing. */
final class FramingFields {

  static final Field<Figure<Pressure>> DEAD =
      Field.of(UniformLoad.class, "dead", "Dead load, horizontal projection");
  static final Field<Figure<Ratio>> RISE = SiteFields.RISE;

  static final Field<Choice<RoofMaterial>> MATERIAL =
      Field.word("material", "Material", RoofMaterial.class);

  static final Field<Figure<Ratio>> LAYER_COUNT =
      Field.number("layers", "Layers", Units.RATIO, 0, 20);

  static final Field<Figure<Length>> THICKNESS =
      Field.number("thickness_in", "Thickness, each layer", Units.INCH, 0, 24).ifKnown();

  static final Field<Choice<LayerFate>> FATE =
      Field.word("fate", "What becomes of it", LayerFate.class).ifKnown();

  static final List<Field<?>> LAYERS = List.of(MATERIAL, LAYER_COUNT, THICKNESS, FATE);

  static final Field<Choice<Species>> SPECIES =
      Field.<Choice<Species>>of(Lumber.class, "species", "Species of rafters or trusses").ifKnown();

  static final Field<Choice<Grade>> GRADE =
      Field.<Choice<Grade>>of(Lumber.class, "grade", "Rafter grade").ifKnown();

  static final Field<Choice<LumberSize>> RAFTER_SIZE =
      Field.<Choice<LumberSize>>of(Lumber.class, "size", "Rafter size").named("rafter_size");

  static final Field<Choice<ValueSet>> VALUE_SET =
      Field.of(Lumber.class, "valueSet", "Design-value edition");

  static final Field<Figure<Length>> SPAN =
      Field.of(ClearSpan.class, "span", "Rafter span, clear, horizontal projection");

  static final Field<Figure<Length>> BEARING =
      Field.of(Seat.class, "bearing", "Bearing length at plate");

  static final Field<Choice<RafterLoad>> LOAD =
      Field.word("load", "Live load type", RafterLoad.class);

  static final Field<Figure<Pressure>> LIVE =
      Field.of(LiveLoad.class, "live", "Live load, horizontal projection");

  static final Field<Figure<Ratio>> DEFLECTION_LIMIT =
      Field.number("deflection_limit", "Deflection limit, live load L/", Units.RATIO, 180, 360);

  static final List<Field<?>> RAFTERS =
      List.of(GRADE, RAFTER_SIZE, VALUE_SET, SPAN, BEARING, LOAD, LIVE, DEAD, DEFLECTION_LIMIT);

  static final Field<Choice<Stock>> RAFTER_STOCK =
      Field.<Choice<Stock>>of(
              ActualSize.class, "stock", "Lumber type: dressed, rough, old full size")
          .named("rafter_stock")
          .ifKnown();

  static final Field<Figure<Length>> RAFTER_THICKNESS =
      Field.<Figure<Length>>of(ActualSize.class, "thickness", "Rafter thickness, measured")
          .named("rafter_thickness_in")
          .ifKnown();

  static final Field<Figure<Length>> RAFTER_DEPTH =
      Field.<Figure<Length>>of(ActualSize.class, "depth", "Rafter depth, measured")
          .named("rafter_depth_in")
          .ifKnown();

  static final Field<Figure<Pressure>> ROOF_LIVE =
      Field.number("roof_live_psf", "Roof live load, besides snow", Units.PSF, 1, 100).ifKnown();

  static final Field<Choice<Moisture>> MOISTURE =
      Field.<Choice<Moisture>>of(ServiceConditions.class, "moisture", "Wood moisture").ifKnown();

  static final Field<Figure<Ratio>> TEMPERATURE =
      Field.<Figure<Ratio>>of(ServiceConditions.class, "temperature", "Sustained temperature, °F")
          .ifKnown();

  static final Field<Choice<YesNo>> INCISED =
      Field.<Choice<YesNo>>of(Member.class, "incised", "Incised for treatment").ifKnown();

  static final Field<Choice<YesNo>> SEASONED =
      Field.<Choice<YesNo>>of(OldRafter.class, "seasoned", "Known dry when first loaded").ifKnown();

  static final Field<Figure<Ratio>> TOTAL_DEFLECTION_LIMIT =
      Field.number(
              "total_deflection_limit", "Deflection limit, total load L/", Units.RATIO, 60, 360)
          .ifKnown();

  static final Field<Figure<Length>> NOTCH =
      Field.<Figure<Length>>of(Birdsmouth.class, "notch", "Seat-cut depth").ifKnown();

  static final Field<Figure<Length>> END_DISTANCE =
      Field.<Figure<Length>>of(Seat.class, "endDistance", "Bearing to rafter tail").ifKnown();

  static final Field<Figure<Length>> TIE_HEIGHT =
      Field.<Figure<Length>>of(RoofTriangle.class, "tieHeight", "Rafter-tie height above plate")
          .ifKnown();

  static final Field<Figure<Length>> BRACE_SPACING =
      Field.<Figure<Length>>of(DeckOff.class, "braceSpacing", "Brace spacing, deck off").ifKnown();

  static final Field<Figure<Pressure>> DECK_OFF_LIVE =
      Field.<Figure<Pressure>>of(DeckOff.class, "live", "Construction live load, deck off")
          .ifKnown();

  static final Field<Figure<Force>> PERSON =
      Field.<Figure<Force>>of(DeckOff.class, "person", "One person with tools, deck off").ifKnown();

  static final Field<Figure<Pressure>> STACK =
      Field.<Figure<Pressure>>of(DeckOff.class, "stack", "Stacked on open rafters").ifKnown();

  /** What nobody says of it counts as if the whole dead load hung there. */
  static final Field<Figure<Pressure>> HUNG =
      Field.<Figure<Pressure>>of(DeckOff.class, "hung", "Ceiling hung from the rafters").ifKnown();

  /** What a job may say of its rafters besides; what it leaves out is taken as is usual. */
  static final List<Field<?>> OLD_RAFTERS =
      List.of(
          RAFTER_STOCK,
          RAFTER_THICKNESS,
          RAFTER_DEPTH,
          ROOF_LIVE,
          TEMPERATURE,
          INCISED,
          SEASONED,
          TOTAL_DEFLECTION_LIMIT,
          NOTCH,
          END_DISTANCE,
          TIE_HEIGHT,
          BRACE_SPACING,
          DECK_OFF_LIVE,
          PERSON,
          STACK,
          HUNG);

  static final Field<Choice<Species>> SISTER_SPECIES =
      Field.<Choice<Species>>of(Lumber.class, "species", "Sister species").named("sister_species");

  static final Field<Choice<Grade>> SISTER_GRADE =
      Field.<Choice<Grade>>of(Lumber.class, "grade", "Sister grade").named("sister_grade");

  static final Field<Figure<Pressure>> EXISTING =
      Field.of(SisterLoad.class, "existing", "Dead load in place when sistered");

  static final Field<Choice<YesNo>> JACKED =
      Field.of(SisterLoad.class, "jacked", "Shored before nailing");

  /** A sister that nobody sees bearing gives its load back through nails. */
  static final Field<Choice<Knowledge>> SISTER_BEARS_KNOWN =
      how("sister_bears", "Sister bears on plate and ridge, how known");

  static final List<Field<?>> SISTER_CHOICE =
      List.of(SISTER_SPECIES, SISTER_GRADE, EXISTING, JACKED, SISTER_BEARS_KNOWN);

  static final Field<Choice<String>> REPORT = Field.name("report", "Report");

  static final Field<Choice<StopFinding>> SEEN = Field.word("seen", "Seen", StopFinding.class);

  static final Field<Choice<String>> WHERE = Field.text("where", "Where");

  static final Field<Choice<String>> UNDER =
      Field.line("sheet", "Places on the map that it lies under, with commas").ifKnown();

  static final List<Field<?>> REPORTS = List.of(REPORT, SEEN, WHERE, PlaceFields.EVIDENCE, UNDER);

  /**
   * What a job says of its rafters: their dead load, or the slope under the layers that make it;
   * how far they may sag, or the ceiling that says it; their live load, or the ground's snow.
   */
  static List<Field<?>> rafters(boolean isLayered, boolean hasCeiling, boolean hasGroundSnow) {
    return RAFTERS.stream()
        .flatMap(
            field ->
                field == DEAD
                    ? isLayered ? Stream.of(RISE, DEAD.ifKnown()) : Stream.of(DEAD.ifKnown())
                    : field == DEFLECTION_LIMIT && hasCeiling
                        ? Stream.of(DEFLECTION_LIMIT.ifKnown())
                        : field == LIVE && hasGroundSnow
                            ? Stream.of(LIVE.ifKnown())
                            : Stream.of(field))
        .toList();
  }

  /** How a fact is known. */
  static Field<Choice<Knowledge>> how(String fact, String label) {
    return Field.word(fact + "_known", label, Knowledge.class).ifKnown();
  }

  private FramingFields() {}
}
