package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.table.JobText;

/**
 * Whatever is found, or follows from the numbers of a job, stops its repair and names who decides.
 */
class StopsTest {

  private static final String ENGINEER = "STOP: a licensed engineer decides before any repair";

  private static JobText gable() {
    return JobText.demo("quince-hollow");
  }

  private static Framing framing(JobText job) {
    return new Estimate(job.job()).framing();
  }

  /** What stands in the list of findings for a report, or for what was reckoned. */
  private static String found(Framing framing, String report) {
    Roll findings = framing.stops().findings();
    int line = findings.cellsOf("report").stream().map(Traced::plain).toList().indexOf(report);
    return findings.cellsOf("seen").get(line).plain();
  }

  @ParameterizedTest
  @EnumSource(value = StopFinding.class, mode = EnumSource.Mode.EXCLUDE, names = "NOTHING")
  void aFinding_stopsTheRepairOfAStrongRoof(StopFinding finding) {
    assertThat(framing(gable()).mayRepair().plain()).isEqualTo("yes");
    Framing stopped =
        framing(gable().withLines("reports", "F-9," + finding.word() + ",somewhere,photo 99,"));
    assertThat(stopped.mayRepair().plain()).isEqualTo("no");
    assertThat(stopped.decision().plain()).matches("STOP: .* decides before any repair");
    assertThat(stopped.stops().check().ok().holds()).isFalse();
    assertThat(stopped.stops().lines())
        .singleElement()
        .satisfies(line -> assertThat(line).startsWith(finding.word() + " (F-9, somewhere): "));
  }

  @Test
  void aCable_isForAnElectrician_untilSomethingBearing_isFoundAsWell() {
    JobText cable = gable().withLines("reports", "F-8,live-wires,by the chimney,photo 98,");
    assertThat(framing(cable).decision().plain())
        .isEqualTo("STOP: an electrician or the utility decides before any repair");
    Framing both = framing(cable.withLines("reports", "F-9,charred,rafter 2,photo 99,"));
    assertThat(both.decision().plain()).isEqualTo(ENGINEER);
    assertThat(both.stops().lines()).hasSize(2);
  }

  /** IRC 2021 R802.4.4, secondary source: below 3 in 12 the ridge is designed as a beam. */
  @ParameterizedTest
  @CsvSource({
    "3, 'ridge,', nothing",
    "2, 'ridge,', ridge-board",
    "2, 'ridge,board', ridge-board",
    "2, 'ridge,unknown', ridge-board",
    "2, 'ridge,beam', nothing",
    "6, 'ridge,board', nothing"
  })
  void aLowSlope_asksForARidgeBeam(String rise, String ridge, String expected) {
    JobText sloped =
        gable().with("job", "rise_in_12,6", "rise_in_12," + rise).with("job", "ridge,board", ridge);
    assertThat(found(framing(sloped), "slope")).isEqualTo(expected);
  }

  /**
   * Two 9 ft halves of 18 ft under 30 psf on 16 in: 9 ft is less than the 14 ft that pass, 18 ft is
   * more. What nobody has seen stand on a bearing wall is no support.
   */
  @ParameterizedTest
  @CsvSource({
    "yes, nothing, nothing, 9",
    "unknown, overloaded, nothing, 18",
    "no, overloaded, lost-strut, 18"
  })
  void aStrut_countsOnlyOnABearingWall(String wall, String strength, String strut, double span) {
    Framing framing =
        framing(
            gable()
                .with("job", "span_ft,14-0", "span_ft,18-0")
                .withLines("job", "strut_ft,9,", "strut_on_bearing_wall," + wall + ","));
    assertThat(found(framing, "screening")).isEqualTo(strength);
    assertThat(found(framing, "strut")).isEqualTo(strut);
    double load = 30 * 16 / 144.0;
    double stress = load * Math.pow(span * 12, 2) / 8 / (1.5 * 5.5 * 5.5 / 6);
    assertThat(framing.rafters().orElseThrow().liveBending().demand().in(Units.PSI).value())
        .isCloseTo(stress, within(1e-6));
  }

  /** ASCE 7-10 Table C3-1: asphalt shingles 2 psf, Spanish tile 19 psf; standing seam 1 psf. */
  @ParameterizedTest
  @CsvSource({
    "standing-seam, nothing",
    "asphalt-shingles, nothing",
    "spanish-tile, heavier-covering"
  })
  void aHeavierCovering_stops(String covering, String expected) {
    JobText roof =
        JobText.demo("tallow-end")
            .withTable(
                "layers",
                """
                material,layers,thickness_in,fate
                asphalt-shingles,1,,comes-off
                plywood,1,15/32,
                three-ply-ready-roofing,1,,stays
                %s,1,,goes-on
                """
                    .formatted(covering));
    Framing framing = framing(roof);
    assertThat(found(framing, "covering")).isEqualTo(expected);
    assertThat(framing.decision().plain().startsWith("STOP"))
        .isEqualTo(expected.equals("heavier-covering"));
  }

  @Test
  void whatComesOff_isOnNoRafterWhenTheJobIsDone() {
    String table = "material,layers,thickness_in,fate\nplywood,1,1/2,\n";
    JobText bare = JobText.demo("tallow-end").withTable("layers", table);
    JobText stripped = bare.withTable("layers", table + "spanish-tile,1,,comes-off\n");
    assertThat(framing(stripped).rafters().orElseThrow().deadBending().demand().value())
        .isCloseTo(
            framing(bare).rafters().orElseThrow().deadBending().demand().value(), within(1e-9));
  }

  @Test
  void layersThatOnlyStay_sayNothingOfAChange() {
    Framing framing =
        framing(
            JobText.demo("tallow-end")
                .withTable("layers", "material,layers,thickness_in\nplywood,1,15/32\n"));
    assertThat(framing.stops().findings().cellsOf("report"))
        .extracting(Object::toString)
        .doesNotContain("covering");
  }

  @Test
  void aWordThatIsNone_isSaidWithThoseThatAre() {
    assertThat(
            JobText.demo("tallow-end")
                .withTable("layers", "material,layers,thickness_in,fate\nplywood,1,1/2,gone\n")
                .problems())
        .containsExactly(
            "layers.csv, line 2, column fate: fate is \"gone\"; it must be one of stays, comes-off, goes-on");
  }
}
