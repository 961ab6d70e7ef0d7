package sheathwright.job.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.job.Estimate;
import sheathwright.job.table.Field;
import sheathwright.job.table.JobText;

/** What follows from a job's site and code, against the codes' printed rows and counts by hand. */
class SiteTest {

  private static final String TYPED = "edge_spacing_in,6,\nfield_spacing_in,12,\n";

  /** A small job with a site; nothing is typed of its nails. */
  private static JobText site(String code, String wind, String exposure, String nail) {
    return JobText.small()
        .with("job", TYPED, "")
        .withLines(
            "job",
            "code," + code + ",",
            "wind_mph," + wind + ",",
            "exposure," + exposure + ",",
            "enclosed_known,measured,",
            "nail," + nail + ",",
            "panel_thickness_in,15/32,",
            "panel_span_rating,32/16,");
  }

  private static final String[] ROOF = {
    "eave_height_ft,9,",
    "roof_shape,gable,",
    "building_length_ft,40,",
    "building_width_ft,28,",
    "rise_in_12,6,"
  };

  private static final String[] STAMPED = {
    "species,spruce-pine-fir,",
    "grade,no-2,",
    "rafter_size,2x6,",
    "value_set,nds2018,",
    "span_ft,12-0,",
    "bearing_in,1-1/2,",
    "load,roof-live,",
    "live_psf,20,",
    "dead_psf,10,",
    "deflection_limit,180,",
    "moisture,dry,",
    "species_known,stamped,",
    "moisture_known,measured,"
  };

  private static Site of(JobText job) {
    return new Estimate(job.job()).site();
  }

  /**
   * IRC Table R602.3(1) and its footnote f, as printed: 8d common in 15/32 in. The nails of a sheet
   * by hand over rafters 16 in apart: 9 on each end at 6 in; on the five supports between 5 each at
   * 12 in, 9 at 6 in, 13 at 4 in.
   */
  @ParameterizedTest(name = "{0}, {1} mph, exposure {2}")
  @CsvSource({
    "irc-2015, 115, b, 6, 12, 12, 43, 43",
    "irc-2018, 115, b, 6, 12, 6, 43, 63",
    "irc-2018, 130, b, 6, 12, 4, 43, 83",
    "irc-2021, 115, b, 6, 6, 6, 63, 63",
    "irc-2021, 115, c, 6, 6, 4, 63, 83",
    "ibc-2021, 120, c, 6, 6, 4, 63, 83"
  })
  void nailsFollowFromTheCode(
      String code,
      String wind,
      String exposure,
      double edge,
      double field,
      double near,
      double nails,
      double nearNails) {
    DeckNailing nailing = of(site(code, wind, exposure, "8d-common")).nailing();
    assertThat(nailing.used().edge().value()).isEqualTo(edge);
    assertThat(nailing.used().field().value()).isEqualTo(field);
    assertThat(nailing.used().nearField().value()).isEqualTo(near);
    assertThat(nailing.inASheet().value()).isEqualTo(nails);
    assertThat(nailing.inASheetNearEdges().value()).isEqualTo(nearNails);
  }

  /** FBC-Residential 2023, R803.2.3.1, G from 0.42: to 150 mph B 6 in, to 160 mph C 4 in. */
  @ParameterizedTest(name = "{0} mph, exposure {1}")
  @CsvSource({"150, b, 6, 6", "160, c, 4, 6", "170, c, 3, 6"})
  void theHighWindCodePrintsRingShankNails(
      String wind, String exposure, double near, double inner) {
    JobText job = site("fbc-2023", wind, exposure, "rsrs-03").withLines("job", STAMPED);
    Spacings used = of(job).nailing().used();
    assertThat(used.nearField().value()).isEqualTo(near);
    assertThat(used.nearEdge().value()).isEqualTo(near);
    assertThat(used.field().value()).isEqualTo(inner);
  }

  @Test
  void theHighWindCode_printsNoSmoothNails() {
    JobText job = site("fbc-2023", "150", "b", "8d-common").withLines("job", STAMPED);
    assertThat(problems(job)).singleElement().asString().contains("ring-shank nails alone");
  }

  private static List<String> problems(JobText job) {
    try {
      new Estimate(job.job());
      return List.of();
    } catch (sheathwright.job.table.ProblemsException wrong) {
      return wrong.problems().stream().map(Object::toString).toList();
    }
  }

  /** IRC R301.2.1.1: the table ends; without the roof's measures the way out is said. */
  @Test
  void from140Mph_theWayOutIsSaid() {
    assertThat(problems(site("irc-2021", "140", "c", "8d-common")))
        .singleElement()
        .asString()
        .contains("the prescriptive code ends", "nail_spacing_for_uplift");
  }

  /**
   * 150 mph in Exposure C, a gable at 6 in 12 with its mean height at 9 + 14/2 × 6/12 = 12.5 ft,
   * ring-shank nails of 0.131 by 2-1/2 in in 15/32 in of plywood on spruce-pine-fir, dry.
   *
   * <p>q = 0.00256 × 0.70059 × 0.85 × 150² = 34.30 psf at 30 ft in B, allowable 20.58; 1.21 for
   * height and exposure (IRC 2021, to 15 ft in C); zone 3r: 2.5 to 27 degrees is 3.0 + 0.18
   * outward, 79.2 psf; zone 1: 1.5 + 0.18, 41.8 psf. The nail: 1800 × 0.42² × 0.131 × 1.5 × 1.6 =
   * 99.8 lb of withdrawal, 690 π × 0.281 × 0.42² × 15/32 × 1.6 = 80.6 lb of head pull-through, the
   * lesser. 80.6 ÷ (79.2 × 16 ÷ 12) is 0.763 ft, 9.2 in, nailed at 6 in, which is also the most
   * that is taken.
   */
  @Test
  void from140Mph_eachZoneIsNailedForItsUplift() {
    JobText job =
        site("irc-2021", "150", "c", "rsrs-03").withLines("job", ROOF).withLines("job", STAMPED);
    Site site = of(job);
    assertThat(site.wind().height().value()).isEqualTo(12.5);
    assertThat(site.wind().uplift(RoofArea.CORNERS).value()).isCloseTo(79.2, within(0.5));
    assertThat(site.wind().uplift(RoofArea.FIELD).value()).isCloseTo(41.8, within(0.3));
    assertThat(site.nailing().used().nearField().value()).isEqualTo(6);
    assertThat(site.nailing().used().field().value()).isEqualTo(6);
    Check corners = check(site, "deck nails against uplift, corners");
    assertThat(corners.ratio().value()).isCloseTo(79.2 / (80.6 / (0.5 * 4 / 3)), within(0.01));
  }

  private static Check check(Site site, String what) {
    return site.checks().stream()
        .filter(each -> each.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  /** What is typed wider than the code prints is said, until somebody decides it by name. */
  @Test
  void typedSpacings_areHeldAgainstTheCode() {
    JobText typed =
        site("irc-2021", "115", "b", "8d-common")
            .withLines("job", "edge_spacing_in,6,", "field_spacing_in,12,");
    DeckNailing nailing = of(typed).nailing();
    DeckNailing.Beside beside = nailing.beside().orElseThrow();
    assertThat(beside.asClose().holds()).isFalse();
    assertThat(beside.typed().value()).isEqualTo(43);
    assertThat(beside.byCode().value()).isEqualTo(63);
    assertThat(failing(typed)).anyMatch(tie -> tie.startsWith("Deck nails stand as close"));
    JobText decided =
        typed.withLines(
            "job",
            "spacing_decided_by,building department,",
            "spacing_decided_why,\"said on 3 May, low roof\",");
    assertThat(failing(decided)).noneMatch(tie -> tie.startsWith("Deck nails stand as close"));
    assertThat(of(decided).nailing().decision().orElseThrow().by().value())
        .isEqualTo("building department");
  }

  private static List<String> failing(JobText job) {
    return new Estimate(job.job())
        .ties().stream().filter(tie -> !tie.holds().holds()).map(Estimate.Tie::what).toList();
  }

  @Test
  void aDecision_needsItsReasonAndWhatWasDecided() {
    assertThat(JobText.small().withLines("job", "spacing_decided_by,somebody,").problems())
        .singleElement()
        .asString()
        .contains("spacing_decided_why is missing");
    assertThat(
            site("irc-2021", "115", "b", "8d-common")
                .withLines("job", "spacing_decided_by,somebody,", "spacing_decided_why,so,")
                .problems())
        .singleElement()
        .asString()
        .contains("spacing_decided_by\" and 1 more (spacing_decided_why)")
        .contains("for nail spacings that are typed");
  }

  /** Nothing is passed that nobody looked at. */
  @Test
  void withoutASite_nothingIsLookedAt() {
    Site site = of(JobText.small());
    assertThat(site.isTold()).isFalse();
    assertThat(site.checks()).allMatch(check -> check.outcome() instanceof Check.NotLooked);
    assertThat(site.nailing().notByCode().orElseThrow()).contains("code is missing");
    assertThat(site.leftOut())
        .extracting(Field::name)
        .contains("code", "wind_mph", "panel_thickness_in", "nail");
  }

  @Test
  void aJobWithNeitherCodeNorSpacings_isToldWhatIsMissing() {
    assertThat(JobText.small().with("job", TYPED, "").problems())
        .contains("job.csv: edge_spacing_in is missing: Nail spacing, panel edges");
  }

  /** Wood whose stamp nobody read is the lightest that is listed, NDS Table 12.3.3A: 0.36. */
  @ParameterizedTest
  @CsvSource({"stamped, 0.42", "unknown, 0.36"})
  void theSpeciesCounts_whereItIsKnown(String how, double gravity) {
    JobText job =
        site("irc-2021", "115", "b", "8d-common")
            .withLines("job", ROOF)
            .withLines("job", STAMPED)
            .with("job", "species_known,stamped", "species_known," + how);
    double perInch = 1380 * Math.pow(gravity, 2.5) * 0.131;
    double holds = perInch * (2.5 - 15.0 / 32) * 1.6;
    Check field = check(of(job), "deck nails against uplift, field");
    assertThat(((Figure<?>) field.capacity()).value())
        .isCloseTo(holds / (0.5 * 16 / 12), within(0.05));
  }

  /** The same of trusses, of which the job says nothing but the stamp: 0.42, not 0.36. */
  @Test
  void theSpeciesOfTrusses_counts() {
    JobText trusses =
        site("irc-2021", "115", "b", "8d-common")
            .withLines("job", ROOF)
            .withLines("job", "moisture,dry,", "moisture_known,measured,");
    JobText stamped =
        trusses.withLines("job", "species,spruce-pine-fir,", "species_known,stamped,");
    assertThat(held(stamped) / held(trusses)).isCloseTo(Math.pow(0.42 / 0.36, 2.5), within(1e-9));
  }

  private static double held(JobText job) {
    Check field = check(of(job), "deck nails against uplift, field");
    return ((Figure<?>) field.capacity()).value();
  }

  /** A panel of 32/16 reaches 28 in without and 32 in with its edges supported; 24 in take 7/16. */
  @Test
  void theInspectorsList_saysWhatMustBeFound() {
    JobText job =
        site("irc-2018", "130", "c", "8d-common")
            .withLines("job", ROOF)
            .with("job", "support_spacing_in,16", "support_spacing_in,24");
    List<String> list =
        of(job).inspected().stream().map(item -> item.what() + ": " + item.value()).toList();
    assertThat(list)
        .contains(
            "Code: irc-2018",
            "Nail: 8d-common",
            "Nails on panel edges: 6 in",
            "Nails in the field: 12 in",
            "Field near roof edges: 4 in",
            "Gable-end framing: 4 in",
            "Clips or blocking on long edges: not needed",
            "Thinnest panel without them: 7/16 in",
            "Wind: wind design may be required here, IRC R301.2.1.1 and its map",
            "Nails for that wind: ring-shank nails are advised");
  }

  /**
   * By hand: 250 lb of clip over 79.2 psf and 16 in of cover is 28 in; two screws of 71.6 lb 16.
   */
  @Test
  void clipsOfTheCovering_standByZone() {
    JobText job =
        site("irc-2021", "150", "c", "rsrs-03")
            .withLines("job", ROOF)
            .withLines("job", STAMPED)
            .withLines(
                "job",
                "seam_psf,100,",
                "clip_lb,250,",
                "panel_cover_in,16,",
                "screw_lb,71.6,",
                "screws_per_clip,2,",
                "tested_spacing_in,24,",
                "maker_most_in,24,");
    Covering covering = of(job).covering();
    double corners = 2 * 71.6 / (79.2 * 16 / 12) * 12;
    assertThat(covering.clips(RoofArea.CORNERS).spacing().value()).isCloseTo(corners, within(0.2));
    assertThat(covering.used(RoofArea.CORNERS).value()).isEqualTo(Math.floor(corners));
    assertThat(covering.clips(RoofArea.FIELD).spacing().value()).isEqualTo(24);
    assertThat(
            Stream.of(RoofArea.values())
                .map(
                    area -> check(of(job), "clips of the covering against uplift, " + area.word())))
        .allMatch(check -> check.outcome().isSound());
  }

  /** IBC Table 1604.3: 180/120 without a ceiling, 240/180 below one, 360/240 below plaster. */
  @ParameterizedTest
  @CsvSource({"none, 180, 120", "gypsum, 240, 180", "plaster, 360, 240"})
  void theCeiling_makesTheLimitsOfSag(String ceiling, double live, double total) {
    JobText job =
        JobText.small()
            .withLines("job", STAMPED)
            .withLines("job", "rise_in_12,6,")
            .with("job", "deflection_limit,180,", "ceiling," + ceiling + ",");
    JobText typed =
        JobText.small()
            .withLines("job", STAMPED)
            .withLines("job", "rise_in_12,6,")
            .with(
                "job",
                "deflection_limit,180,",
                "deflection_limit,%s,\ntotal_deflection_limit,%s,"
                    .formatted((int) live, (int) total));
    assertThat(ratios(job)).isEqualTo(ratios(typed));
  }

  private static List<Double> ratios(JobText job) {
    return new Estimate(job.job())
        .framing().rafters().orElseThrow().checks().stream()
            .map(check -> check.ratio().value())
            .toList();
  }

  @Test
  void aCeilingAndALimit_areNotBothGiven() {
    assertThat(
            JobText.small().withLines("job", STAMPED).withLines("job", "ceiling,none,").problems())
        .singleElement()
        .asString()
        .contains("deflection_limit: the ceiling makes it");
  }

  /**
   * ASCE 7-16, 7.3 and 7.6, by hand at 40 psf, 6 in 12 and 12 ft from eave to ridge: even 0.7 C_e
   * C_t 40, which is 0.7 × 1.2 × 1.2 × 40 = 40.32 where nobody says what shelters and warms the
   * roof, and 28 where it is half exposed and heated; behind the ridge of simple rafters 40. Under
   * ASCE 7-22 0.7 of 40.32.
   */
  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "irc-2021, '', 40.32",
    "irc-2021, 'snow_shelter,partially-exposed,;roof_warmth,heated,', 40",
    "irc-2024, '', 28.224"
  })
  void groundSnow_makesTheLoadOfTheRafters(String code, String said, String live) {
    JobText rafters =
        JobText.small()
            .withLines("job", STAMPED)
            .withLines("job", "rise_in_12,6,")
            .with("job", "load,roof-live", "load,snow");
    JobText job =
        rafters
            .with("job", "live_psf,20,", "snow_ground_psf,40,")
            .withLines(
                "job",
                "code," + code + ",",
                "exposure,b,",
                "enclosed_known,measured,",
                "building_width_ft,24,")
            .withLines("job", said.split(";"));
    JobText typed = rafters.with("job", "live_psf,20,", "live_psf," + live + ",");
    List<Double> ratios = ratios(typed);
    List<Double> made = ratios(job);
    assertThat(made).hasSameSizeAs(ratios);
    for (int i = 0; i < made.size(); i++) {
      assertThat(made.get(i)).isCloseTo(ratios.get(i), within(1e-9));
    }
  }

  /**
   * One plane of 32 by 24 ft on rafters 16 in apart: by IRC 2018 all that reaches within 48 in of
   * an edge is nailed at 6 in. Of six courses the four inner ones hold sheets that do not: two of
   * four in the third and fifth, the three between two halves in the second and fourth. Each of
   * those has five supports with 5 nails in place of 9.
   */
  @Test
  void nailsOfTheLayout_areCloserNearTheEdges() {
    JobText job =
        site("irc-2018", "115", "b", "8d-common")
            .withTable("planes", "plane,eave_ft,slope_length_ft,note\nfront,32,24,\n");
    double counted = new Estimate(job.job()).deck().nails().value();
    double allClose =
        new Estimate(job.withLines("job", "edge_spacing_in,6,", "field_spacing_in,6,").job())
            .deck()
            .nails()
            .value();
    assertThat(allClose - counted).isEqualTo((2 * 2 + 2 * 3) * 5 * 4);
  }

  /** The code's pressures are for a closed house: an open one is lifted from below as well. */
  @ParameterizedTest
  @CsvSource({"measured, true", "told, true", "assumed, false", "unknown, false", "'', false"})
  void aHouseThatNobodyKnowsToBeClosed_hasNoUplift(String known, boolean isCalculated) {
    JobText closed = site("irc-2021", "115", "b", "8d-common").withLines("job", ROOF);
    JobText job =
        closed.with(
            "job",
            "enclosed_known,measured,\n",
            known.isEmpty() ? "" : "enclosed_known," + known + ",\n");
    Figure<?> uplift = of(job).wind().uplift(RoofArea.FIELD);
    assertThat(uplift.refusal().isEmpty()).isEqualTo(isCalculated);
  }
}
