package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.page.JobBooks;

/** Keys that belong together are given together; some of them only if the job asks for them. */
class JobGroupsTest {

  private static final String[] RAFTERS = {
    "species,spruce-pine-fir,",
    "grade,no-2,",
    "rafter_size,2x6,",
    "value_set,nds2018,",
    "span_ft,12-0,",
    "bearing_in,1-1/2,",
    "load,roof-live,",
    "live_psf,20,",
    "dead_psf,10,",
    "deflection_limit,180,"
  };

  private static final String READINGS = "plane,rafter,drop_in,note\nfront,1,1/2,\n";

  @Test
  void job_mayLeaveItsRaftersOut() {
    assertThat(JobText.small().job().knowsItsRafters()).isFalse();
    assertThat(JobText.small().withLines("job", RAFTERS).job().knowsItsRafters()).isTrue();
  }

  @Test
  void job_givesItsRaftersWholeOrNotAtAll() {
    assertThat(JobText.small().withLines("job", RAFTERS[0], RAFTERS[2]).problems())
        .containsExactly(
            "job.csv: value_set is missing: Design-value edition",
            "job.csv: span_ft is missing: Rafter span, clear, horizontal projection",
            "job.csv: bearing_in is missing: Bearing length at plate",
            "job.csv: load is missing: Live load type",
            "job.csv: live_psf is missing: Live load, horizontal projection",
            "job.csv: deflection_limit is missing: Deflection limit, live load L/",
            "layers.csv: this table is missing, and so is dead_psf in job.csv: what the rafters carry; give dead_psf, such as 10, or a line for each layer of the roof");
  }

  @Test
  void job_withReadingsAsksForSistersTheirPricesAndHours() {
    assertThat(JobText.small().withTable("readings", READINGS).problems())
        .hasSize(7 + 2 + 2)
        .allMatch(problem -> problem.contains(" is missing: "))
        .contains(
            "job.csv: sister_size is missing: Sister size",
            "job.csv: sister_lap_in is missing: Sister runs past the drop by",
            "prices.csv: shim is missing: Shims, per rafter",
            "rates.csv: shim_h is missing: Shimmed rafter");
  }

  @Test
  void job_withoutReadingsAsksForNoSisters() {
    assertThat(JobText.small().job().levelsRafters()).isFalse();
    assertThat(JobText.demo("mistwater-cottage").job().levelsRafters()).isTrue();
  }

  /** A fact that speaks of a table which is not there would be read and forgotten. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "shim_tolerance_in,1/8,|\"shim_tolerance_in\" is for the table readings.csv",
        "cap_in,1,|\"cap_in\" is for the table readings.csv",
        "string_tension_lb,20,|\"string_tension_lb\" is for the table readings.csv",
        "beyond_mark_in,3,|\"beyond_mark_in\" is for the table marks.csv",
        "notch_in,1,|\"notch_in\" is for rafters that are checked (rafter_size and what belongs to it)",
        "sister_grade,no-2,|\"sister_grade\" is for rafters that are checked (rafter_size and what belongs to it)"
      })
  void aFact_isNotOverlookedForWantOfWhatItSpeaksOf(String line, String said) {
    assertThat(JobText.small().withLines("job", line).problems())
        .containsExactly(
            "job.csv, line 19, column key: "
                + said
                + ", which this job does not have; add it, or delete this line");
  }

  /** The demo job's own table of readings, under a name that no job knows. */
  @Test
  void sistersWithoutReadings_areNotOverlooked() {
    Map<String, String> tables = new LinkedHashMap<>(JobText.demo("mistwater-cottage").tables());
    tables.remove("readings");
    assertThat(new JobText(tables).problems())
        .singleElement()
        .asString()
        .startsWith("job.csv, line 38, column key: \"sister_size\" and 6 more (sister_span_ft, ")
        .endsWith(
            " are for the table readings.csv, which this job does not have; add it, or delete these lines");
  }

  @Test
  void factsOfASurvey_needStations() {
    assertThat(JobText.demo("mistwater-cottage").withLines("job", "objective,total,").problems())
        .singleElement()
        .asString()
        .contains(
            "\"objective\" is for readings at several stations of a rafter (a column up_in in"
                + " readings.csv), which this job does not have");
  }

  /** Trusses stop a repair, whether anybody read heights or not. */
  @Test
  void trusses_areSaidOfAnyJob() {
    Job job = JobText.demo("quince-hollow").withLines("job", "truss,yes,").job();
    assertThat(new Estimate(job).framing().decision().plain()).startsWith("STOP");
  }

  /** Nobody checks trusses, but the deck is nailed to their wood. */
  @Test
  void trusses_nameTheirWood() {
    JobText stamped =
        JobText.demo("gannet-spit")
            .withLines(
                "job", "species,southern-pine,", "species_known,told,", "told_by,the owner,");
    assertThat(stamped.problems()).isEmpty();
    assertThat(new Estimate(stamped.job()).framing().decision().plain()).startsWith("STOP");
    assertThat(JobText.small().withLines("job", "species_known,stamped,").problems())
        .containsExactly(
            "job.csv, line 19, column value: species_known: stamped is given, but species is missing; give it, or unknown here");
    assertThat(JobText.small().withLines("job", "grade,no-2,").problems())
        .contains("job.csv: rafter_size is missing: Rafter size");
  }

  @Test
  void job_saysWhichReadingIsWrong() {
    JobText cottage =
        JobText.demo("mistwater-cottage")
            .withTable(
                "readings", READINGS.replace("front", "A") + "A,2,wet,\nA,3,-1/8,\nA,4,6-1/16,\n");
    assertThat(cottage.problems())
        .hasSize(3)
        .anyMatch(
            problem -> problem.startsWith("readings.csv, line 3, column drop_in: \"wet\" is "))
        .contains(
            "readings.csv, line 4, column drop_in: drop_in is -1/8; it must be from 0 to 6",
            "readings.csv, line 5, column drop_in: drop_in is 6-1/16; it must be from 0 to 6");
  }

  @Test
  void job_takesFactsAsTheyAreKnown() {
    JobText unseen =
        JobText.small()
            .with("job", "looked_at,two sheets,\n", "")
            .with("job", "not_looked_at,the rest,", "not_looked_at,,");
    assertThat(unseen.problems()).isEmpty();
    assertThat(unseen.job().knows(JobFields.LOOKED_AT)).isFalse();
  }

  @Test
  void job_takesColumnsInAnyOrderAndWordsInAnyCase() {
    JobText turned =
        JobText.small()
            .withTable("prices", "note,usd,item\n,$40.00,sheet\n,.02,nail\n")
            .withTable("planes", "slope_length_ft,plane,eave_ft\n\"12' 6\"\"\",front,21\n")
            .with("job", "blocked_edges,no", "blocked_edges,NO")
            .with("job", "base_roofing_usd,1000", "base_roofing_usd,\"1,000.00\"");
    assertThat(turned.problems()).isEmpty();
    Estimate estimate = new Estimate(turned.job());
    assertThat(estimate.deckArea().value()).isEqualTo(12.5 * 21);
    // The sheet costs what it did under the usual headings.
    assertThat(estimate.total().value())
        .isEqualTo(new Estimate(JobText.small().job()).total().value());
  }

  @Test
  void readings_areHeldAgainstThePlanesAndEachOther() {
    JobText cottage =
        JobText.demo("mistwater-cottage")
            .withTable("readings", READINGS.replace("front", "A") + "Z,2,0,\nA,1,0,\n");
    assertThat(cottage.problems())
        .containsExactlyInAnyOrder(
            "readings.csv, line 3, column plane: \"Z\" is not a plane of planes.csv; it has A, B",
            "readings.csv, line 4, column rafter: \"1\" appears twice; give each rafter one line");
  }

  @Test
  void aStickThatIsNotSold_refusesTheJob() {
    JobText cottage =
        JobText.demo("mistwater-cottage")
            .with("job", "sister_span_ft,12-0 1/4", "sister_span_ft,20-0 1/4");
    assertThatThrownBy(() -> JobBooks.of(new Estimate(cottage.job())))
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("job.csv, line ")
        .hasMessageContaining("stock_ft is 22; it must be from 8 to 20")
        .hasMessageContaining("from sister_span_ft (job.csv, line ");
  }
}
