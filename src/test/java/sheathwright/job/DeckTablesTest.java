package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Origins;
import sheathwright.figure.Traced;
import sheathwright.figure.YesNo;
import sheathwright.job.site.RoofArea;
import sheathwright.job.table.JobText;

/** A small job with openings, measured rafters, marks, and what the covering's maker asks for. */
class DeckTablesTest {

  private static final String MAKER = "requirement,unit,sense,required,found,evidence\n";
  private static final String MARKS = "mark,plane,finding,along_in,up_in,width_in,height_in\n";
  private static final String OPENINGS = "plane,along_ft,up_ft,width_ft,height_ft\n";

  /** By hand: 20 by 12 and 20 by 12 ft 1/2 in less an opening of 3 by 2 ft. */
  @Test
  void anOpening_isTakenOffTheDeck() {
    Estimate estimate =
        new Estimate(JobText.small().withTable("openings", OPENINGS + "front,4,4,3,2\n").job());
    assertThat(estimate.deckArea().value())
        .isCloseTo(20 * 12 + 20 * (12 + 0.5 / 12) - 6, within(1e-9));
  }

  /** By hand: an L of 10 by 8 ft less 4 by 3. */
  @Test
  void aPlaneOfCorners_hasTheAreaOfItsOutline() {
    JobText job =
        JobText.small()
            .withTable(
                "planes",
                "plane,eave_ft,slope_length_ft,corners_ft\nporch,,,\"0 0, 10 0, 10 5, 6 5, 6 8, 0 8\"\n");
    assertThat(new Estimate(job.job()).deckArea().value()).isCloseTo(68, within(1e-9));
  }

  /**
   * By hand: 24 by 4 ft on rafters 16 in apart are three whole sheets in one course; each sheet has
   * 2 ends of 9 nails and 5 rafters of 5 between, a row for each of two sheets that share a rafter.
   */
  @Test
  void theNailsOfTheDeck_areCountedSheetBySheet() {
    JobText job =
        JobText.small().withTable("planes", "plane,eave_ft,slope_length_ft\nfront,24,4\n");
    assertThat(new Estimate(job.job()).deck().nails().value()).isEqualTo(3 * (2 * 9 + 5 * 5));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "marks|a,side,rot,10,10,5,5|marks.csv, line 2, column plane: \"side\" is not a plane of planes.csv; it has front, back",
        "marks|a,front,rust,10,10,5,5|marks.csv, line 2, column finding: finding is \"rust\"; did you mean rot?",
        "openings|front,4,4,3,200|openings.csv, line 2, column height_ft: height_ft is 200; it must be from 0.25 to 100",
        "maker|gap,yards,at-least,1,1,photo|maker.csv, line 2, column unit: unit is \"yards\"; it must be one of in, ft, psf, lb, count",
        "maker|gap,in,at-least,wide,1/8,photo|maker.csv, line 2, column required: "
      })
  void aTable_saysInOneLineWhatIsWrong(String table, String line, String said) {
    String head = table.equals("marks") ? MARKS : table.equals("maker") ? MAKER : OPENINGS;
    assertThat(JobText.small().withTable(table, head + line + "\n").problems())
        .singleElement()
        .asString()
        .startsWith(said);
  }

  @Test
  void anOpeningOffThePlane_isRefusedWithItsLine() {
    Job job = JobText.small().withTable("openings", OPENINGS + "front,19,4,3,2\n").job();
    assertThatThrownBy(() -> new Estimate(job))
        .hasMessageStartingWith(
            "openings.csv, line 2, column along_ft: the opening from 228 to 264 in")
        .hasMessageContaining("reaches off the plane");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "marks|a,front,rot,230,10,20,5|marks.csv, line 2, column along_in: the mark reaches from 230 to 250 in, but plane front goes from 0 to 240 in along the eave",
        "marks|a,front,rot,10,140,5,20|marks.csv, line 2, column up_in: the mark reaches from 140 to 160 in, but plane front goes from 0 to 144 in up the slope",
        "marks|a,front,rot,-20,10,5,5|marks.csv, line 2, column along_in: the mark reaches from -20 to -15 in, but",
        "marks|a,front,loose,60,60,5,5|marks.csv, line 2, column along_in: no wood is there: the mark lies in an opening of plane front (openings.csv)",
        "rafters|front,0\\nfront,48\\nfront,300|rafters.csv, line 4, column center_in: 300 is given, but plane front goes from 0 to 240 in along the eave",
        "rafters|front,110\\nfront,0\\nfront,170|rafters.csv, line 2, column center_in: no support is measured between 0.0 and 110.0 in",
        "rafters|front,0\\nfront,48\\nfront,110|rafters.csv, line 4, column center_in: no support is measured between 48.0 and 110.0 in",
        "rafters|front,16|rafters.csv, line 2, column center_in: a plane stands on at least 2 supports"
      })
  void whatLiesOffItsPlane_isSaidWithItsOwnTable(String table, String lines, String said) {
    String head = table.equals("marks") ? MARKS : "plane,center_in\n";
    Job job =
        JobText.small()
            .withTable("openings", OPENINGS + "front,4,4,3,2\n")
            .withTable(table, head + lines.replace("\\n", "\n") + "\n")
            .job();
    assertThatThrownBy(() -> new Estimate(job)).hasMessageStartingWith(said);
  }

  /** Over the hip of a plane that leans in, no wood is there. */
  @Test
  void aMarkBesideAHip_isSaidWithItsOwnTable() {
    Job job =
        JobText.small()
            .withTable(
                "planes",
                "plane,eave_ft,slope_length_ft,left_lean_ft,right_lean_ft\nfront,20,12,8,8\n")
            .withTable("marks", MARKS + "a,front,rot,0,130,6,6\n")
            .job();
    assertThatThrownBy(() -> new Estimate(job))
        .hasMessageStartingWith(
            "marks.csv, line 2, column along_in: no wood is there: the mark lies outside the sides"
                + " of plane front");
  }

  @Test
  void theMakersRequirements_areHeldAgainstWhatIsThere() {
    Estimate met =
        new Estimate(
            JobText.small()
                .withTable("maker", MAKER + "panel,in,at-least,15/32,1/2,stamp\n")
                .job());
    assertThat(met.maker().orElseThrow().cellsOf("met")).hasToString("[" + YesNo.YES.word() + "]");
    Estimate not =
        new Estimate(
            JobText.small().withTable("maker", MAKER + "dip,in,at-most,1/4,3/8,photo\n").job());
    assertThat(not.maker().orElseThrow().cellsOf("met")).hasToString("[no]");
  }

  /** What is screwed down answers the maker by the cell that it stands in, not by a copy of it. */
  @Test
  void theMaker_isAnsweredByACellOfTheJob() {
    JobText seam = JobText.demo("gannet-spit");
    Estimate estimate =
        new Estimate(
            seam.withTable("maker", MAKER + "clips,in,at-most,24,clips_apart_corners_in,sheet\n")
                .job());

    Figure<?> found = (Figure<?>) estimate.maker().orElseThrow().cellsOf("found").get(0);
    assertThat(found.step().isInput()).isFalse();
    assertThat(found.value()).isEqualTo(estimate.site().covering().used(RoofArea.CORNERS).value());
    assertThat(Origins.of(List.of(found))).extracting(Traced::name).contains("maker_most_in");
    assertThat(estimate.maker().orElseThrow().cellsOf("met")).hasToString("[yes]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "clips,in,at-most,24,clip_spacing_fild_in,|\"clip_spacing_fild_in\" is no cell of this job (did you mean clip_spacing_field_in?)",
        "pull,psf,at-most,24,panel_cover_in,|panel_cover_in is in inches, and this is asked in psf",
      })
  void aMakerAnsweredByNoCellOrAnotherKindOfOne_isRefused(String line, String said) {
    Job job = JobText.demo("gannet-spit").withTable("maker", MAKER + line + "\n").job();

    assertThatThrownBy(() -> new Estimate(job))
        .hasMessageStartingWith("maker.csv, line 2, column found: " + said);
  }
}
