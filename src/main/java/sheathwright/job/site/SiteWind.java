package sheathwright.job.site;

import java.util.EnumMap;
import java.util.Map;
import sheathwright.fastening.schedule.NailingCode;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Facts;
import sheathwright.loads.wind.RoofHeight;
import sheathwright.loads.wind.RoofPlace;
import sheathwright.loads.wind.RoofShape;
import sheathwright.loads.wind.WindPressures;
import sheathwright.loads.wind.WindSite;
import sheathwright.loads.wind.WindZone;
import sheathwright.loads.wind.WindZoneWidths;
import sheathwright.loads.wind.WorstZones;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Slope;
import sheathwright.wood.Knowledge;

/**
 * The wind at a job's roof: by the code, whose edition of ASCE 7 follows from it, by the site and
 * by the height and shape of the roof. Whatever the job does not say is refused by its name.
 */
public final class SiteWind {

  private static final Source NAMED =
      Source.fromMemory(
          "ASCE 7 as each code names it: 7-10 in 2015, 7-16 in 2018 and 2021, 7-22 in 2024 and in FBC 2023;"
              + " IRC 2018 still prints the pressures of 7-10, which are lower");
  private static final String NOT_CLOSED =
      "nobody has seen whether the house is closed on all sides: say so by enclosed_known";
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private final Choice<LoadEdition> edition;
  private final Choice<RoofShape> roof;
  private final Figure<Ratio> rise;
  private final Figure<Length> height;
  private final Figure<Length> zoneWidth;
  private final Figure<Pressure> overhang;
  private final Map<RoofArea, Figure<Pressure>> uplifts = new EnumMap<>(RoofArea.class);

  SiteWind(Facts said) {
    edition = editionOf(said.word(SiteFields.CODE));
    roof = said.word(SiteFields.ROOF_SHAPE);
    rise = said.figure(SiteFields.RISE);
    Figure<Length> width = said.figure(SiteFields.BUILDING_WIDTH);
    Figure<Length> leastWidth =
        width
            .min(said.figure(SiteFields.BUILDING_LENGTH))
            .as("least_building_width_ft", Units.FOOT);
    height =
        WindZoneWidths.meanRoofHeight(
                said.figure(SiteFields.EAVE_HEIGHT),
                Slope.run(width.dividedBy(TWO).as("half_width_ft", Units.FOOT)).rise(rise))
            .as("mean_roof_height_ft", Units.FOOT);
    zoneWidth =
        WindZoneWidths.zoneWidth(leastWidth, RoofHeight.mean(height))
            .as("wind_zone_width_ft", Units.FOOT);
    WindSite site =
        WindSite.of(edition, said.figure(SiteFields.WIND), said.word(SiteFields.EXPOSURE))
            .height(height);
    Condition isClosed = isClosed(said.word(SiteFields.ENCLOSED_KNOWN));
    overhang =
        WindPressures.overhangUplift(site, RoofPlace.of(roof, rise, zone(RoofArea.CORNERS)))
            .onlyIf(isClosed, NOT_CLOSED)
            .as("uplift_overhang_psf", Units.PSF);
    for (RoofArea area : RoofArea.values()) {
      uplifts.put(
          area,
          WindPressures.sheathingUplift(site, RoofPlace.of(roof, rise, zone(area)))
              .uplift()
              .onlyIf(isClosed, NOT_CLOSED)
              .as("uplift_%s_psf".formatted(area.word()), Units.PSF));
    }
  }

  /** Whether somebody has seen that the wind cannot get in. */
  private static Condition isClosed(Choice<Knowledge> known) {
    return Condition.any(
            known.is(Knowledge.IS_MEASURED),
            known.is(Knowledge.IS_STAMPED),
            known.is(Knowledge.IS_TOLD))
        .as("house_is_closed")
        .is(YesNo.YES);
  }

  /** The edition of ASCE 7 that a code names. */
  static Choice<LoadEdition> editionOf(Choice<NailingCode> code) {
    Condition of2010 = Condition.any(code.is(NailingCode.IRC_2015), code.is(NailingCode.IBC_2015));
    Condition of2016 =
        Condition.any(
            code.is(NailingCode.IRC_2018),
            code.is(NailingCode.IRC_2021),
            code.is(NailingCode.IBC_2021));
    Condition of2022 =
        Condition.any(
            code.is(NailingCode.IRC_2024),
            code.is(NailingCode.IBC_2024),
            code.is(NailingCode.FBC_2023));
    Choice<LoadEdition> later =
        Choice.choose(of2016, LoadEdition.ASCE7_16, LoadEdition.ASCE7_22).as("edition_since_2016");
    return Choice.choose(of2010, LoadEdition.ASCE7_10, later)
        .as("edition_by_year")
        .onlyIf(
            Condition.any(of2010, of2016, of2022),
            "code is other: which edition of ASCE 7 it names is not known here; ask the building"
                + " department, and give the nearest code of the list")
        .as("asce7_edition", NAMED);
  }

  /** The edition of ASCE 7 that the code names. */
  public Choice<LoadEdition> edition() {
    return edition;
  }

  /** Mean height of the roof. */
  public Figure<Length> height() {
    return height;
  }

  /** How wide the strips are in which the wind pulls harder, on the flat. */
  public Figure<Length> zoneWidth() {
    return zoneWidth;
  }

  /** How hard the wind pulls at a part of the roof, at ASD level. */
  public Figure<Pressure> uplift(RoofArea area) {
    return uplifts.get(area);
  }

  /** How hard it lifts the eave's overhang at the corners, at ASD level. */
  public Figure<Pressure> overhang() {
    return overhang;
  }

  private OneOf<WindZone> zone(RoofArea area) {
    return switch (area) {
      case FIELD -> WindZone.ZONE_1;
      case EDGES -> WorstZones.edges(edition, roof, rise);
      case CORNERS -> WorstZones.corners(edition, roof, rise);
    };
  }
}
