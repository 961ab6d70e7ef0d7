package sheathwright.job.site;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.fastening.count.Nailing;
import sheathwright.fastening.schedule.NailingCode;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Ceiling;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.job.table.Field;
import sheathwright.loads.snow.GroundSnow;
import sheathwright.loads.snow.RoofWarmth;
import sheathwright.loads.snow.SnowShelter;
import sheathwright.loads.wind.CodeWind;
import sheathwright.loads.wind.Exposure;
import sheathwright.loads.wind.RoofPlace;
import sheathwright.loads.wind.RoofShape;
import sheathwright.roof.HouseBody;
import sheathwright.sheathing.panel.PanelKind;
import sheathwright.sheathing.panel.RatedPanel;
import sheathwright.sheathing.panel.SpanRating;
import sheathwright.wood.Knowledge;

/** What job.csv may say of the site, its code, and the deck that the code speaks of. */
public final class SiteFields {

  public static final Field<Choice<NailingCode>> CODE =
      Field.word("code", "Building code, adopted edition", NailingCode.class).ifKnown();

  public static final Field<Figure<Speed>> WIND =
      Field.<Figure<Speed>>of(CodeWind.class, "speed", "Ultimate wind speed of the code's map")
          .ifKnown();

  public static final Field<Choice<Exposure>> EXPOSURE =
      Field.<Choice<Exposure>>of(CodeWind.class, "exposure", "Exposure to the wind").ifKnown();

  /** An open house catches the wind from below as well: the code's pressures are not for it. */
  public static final Field<Choice<Knowledge>> ENCLOSED_KNOWN =
      Field.word("enclosed_known", "House closed on all sides, how known", Knowledge.class)
          .ifKnown();

  public static final Field<Figure<Length>> EAVE_HEIGHT =
      Field.number("eave_height_ft", "Eave above the ground", Units.FOOT, 1, 60).ifKnown();

  public static final Field<Choice<RoofShape>> ROOF_SHAPE =
      Field.<Choice<RoofShape>>of(RoofPlace.class, "roof", "Roof shape, for the wind")
          .named("roof_shape")
          .ifKnown();

  public static final Field<Figure<Length>> BUILDING_LENGTH =
      Field.<Figure<Length>>of(HouseBody.class, "length", "Building length, along the ridge")
          .named("building_length_ft")
          .ifKnown();

  public static final Field<Figure<Length>> BUILDING_WIDTH =
      Field.<Figure<Length>>of(HouseBody.class, "width", "Building width, across the ridge")
          .named("building_width_ft")
          .ifKnown();

  /** Asked for once, with the layers of the roof where there are any. */
  public static final Field<Figure<Ratio>> RISE =
      Field.of(RoofTriangle.class, "rise", "Rise in 12");

  public static final Field<Figure<Pressure>> GROUND_SNOW =
      Field.<Figure<Pressure>>of(GroundSnow.class, "load", "Ground snow of the code's map")
          .named("snow_ground_psf")
          .ifKnown();

  public static final Field<Choice<SnowShelter>> SNOW_SHELTER =
      Field.word("snow_shelter", "Roof sheltered, for snow", SnowShelter.class).ifKnown();

  public static final Field<Choice<RoofWarmth>> ROOF_WARMTH =
      Field.word("roof_warmth", "Roof warmed from below, for snow", RoofWarmth.class).ifKnown();

  public static final Field<Choice<Ceiling>> CEILING =
      Field.word("ceiling", "Ceiling below the rafters", Ceiling.class).ifKnown();

  public static final Field<Figure<Length>> PANEL_THICKNESS =
      Field.number("panel_thickness_in", "New panels, thickness", Units.INCH, 0.25, 1.5).ifKnown();

  public static final Field<Choice<PanelKind>> PANEL_KIND =
      Field.word("panel_kind", "New panels, plywood or OSB", PanelKind.class).ifKnown();

  public static final Field<Choice<SpanRating>> PANEL_RATING =
      Field.<Choice<SpanRating>>of(RatedPanel.class, "rating", "New panels, span rating")
          .named("panel_span_rating")
          .ifKnown();

  public static final Field<Choice<NailType>> NAIL =
      Field.word("nail", "Deck nail, as the code calls it", NailType.class).ifKnown();

  public static final Field<Choice<YesNo>> RING_SHANK =
      Field.word("ring_shank", "Deck nail, ring shank", YesNo.class).ifKnown();

  public static final Field<Figure<Length>> EDGE_SPACING =
      Field.of(Nailing.class, "edge", "Nail spacing, panel edges");

  public static final Field<Figure<Length>> FIELD_SPACING =
      Field.of(Nailing.class, "field", "Nail spacing, field");

  /** Needed where no code says it; else it is held against the code's. */
  public static final List<Field<?>> SPACINGS = List.of(EDGE_SPACING, FIELD_SPACING);

  static final Field<Choice<String>> SPACING_DECIDED_BY =
      Field.line("spacing_decided_by", "Nail spacing decided by");

  static final Field<Choice<String>> SPACING_DECIDED_WHY =
      Field.line("spacing_decided_why", "Why the nail spacing was decided so");

  /** With these, what was typed stands, whatever the code asks. */
  public static final List<Field<?>> SPACING_DECISION =
      List.of(SPACING_DECIDED_BY, SPACING_DECIDED_WHY);

  /** The site and its code; whatever is left out is said not to have been looked at. */
  public static final List<Field<?>> SITE =
      List.of(
          CODE,
          WIND,
          EXPOSURE,
          ENCLOSED_KNOWN,
          EAVE_HEIGHT,
          ROOF_SHAPE,
          BUILDING_LENGTH,
          BUILDING_WIDTH,
          GROUND_SNOW,
          SNOW_SHELTER,
          ROOF_WARMTH,
          CEILING,
          PANEL_THICKNESS,
          PANEL_KIND,
          PANEL_RATING,
          NAIL,
          RING_SHANK);

  /** The same with the slope, unless the layers of the roof ask for it already. */
  public static List<Field<?>> facts(boolean isLayered) {
    return isLayered
        ? SITE
        : Stream.concat(SITE.stream(), Stream.of(RISE.ifKnown())).<Field<?>>map(f -> f).toList();
  }

  private SiteFields() {}
}
