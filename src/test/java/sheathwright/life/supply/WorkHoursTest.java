package sheathwright.life.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.table.JobText;

/** Hours of the second invented scenario: 9 sheets, 31 refastened, 148 ft of relief, 8 scabs. */
class WorkHoursTest {

  private static final JobText JOB =
      JobText.demo("quince-hollow")
          .with("job", "planned_sheets,3", "planned_sheets,0")
          .withLines(
              "rates",
              "refasten_nails,19,",
              "refasten_h,0.12,",
              "relief_ft_h,0.016666666666666666,",
              "scab_h,0.30,")
          .withLines("prices", "sister_nail,0.026,")
          .withTable("lumber", "size,length_ft,usd\n2x4,8,4.10\n");

  private static final Map<Item, Figure<?>> FOUND =
      Map.of(
          Item.SHEET, Figure.of(9, Units.SHEET),
          Item.REFASTEN, Figure.of(31, Units.PIECE),
          Item.RELIEF, Figure.of(148, Units.FOOT),
          Item.SCAB, Figure.of(8, Units.PIECE));

  private static WorkHours hours(JobText job, Map<Item, Figure<?>> found) {
    Estimate estimate = new Estimate(job.job());
    return new WorkHours(estimate, found, new Supply(estimate, found));
  }

  /** 9 × 0.90 + 31 × 0.12 + 148 ÷ 60 + 8 × 0.30 = 16.687, as an independent script has it. */
  @Test
  void hours_areQuantitiesTimesRates() {
    assertThat(hours(JOB, FOUND).total().value()).isCloseTo(16.687, within(0.0005));
    assertThat(hours(JOB, FOUND).unrated()).isEmpty();
  }

  /** Four people at 85 % of 8 h work 27.2 h a day: 0.61 of one, up to a quarter. */
  @Test
  void days_areSaidWhereTheCrewIsKnown() {
    assertThat(hours(JOB, FOUND).days()).isEmpty();
    JobText crew = JOB.withLines("job", "crew,4,", "crew_hours,8,", "efficiency_pct,85,");
    assertThat(hours(crew, FOUND).ofADay().orElseThrow().value()).isCloseTo(27.2, within(1e-9));
    assertThat(hours(crew, FOUND).days().orElseThrow().value()).isEqualTo(0.75);
  }

  @Test
  void aTaskWithoutARate_isSaid() {
    assertThat(hours(JOB, Map.of(Item.LIFT, Figure.of(2, Units.PIECE))).unrated())
        .containsExactly("A sheet lifted and laid again (lift_h)");
  }

  /** 28 × 0.62 for the deck; 18 × 1.5 and 7 × 0.25 wait for the engineer. */
  @Test
  void underAStop_theHoursOfTheRaftersWait() {
    WorkHours cottage = hours(JobText.demo("mistwater-cottage"), Map.of());
    assertThat(cottage.total().value()).isCloseTo(28 * 0.62, within(1e-9));
    assertThat(cottage.waiting().orElseThrow().sum("hours_h", Units.HOUR).value())
        .isCloseTo(27 + 1.75, within(1e-9));
  }

  /** Somebody makes it five afterwards: the owner has agreed to three. */
  @Test
  void onceAgreed_theSheetsInThePriceAreThoseAgreed() {
    JobText changed =
        JobText.demo("quince-hollow")
            .with("job", "planned_sheets,3", "planned_sheets,5")
            .withTable(
                "agreed",
                "item,unit,usd,included,credit_usd,most,words\nsheet,half,117,3,80,50,a sheet\n");
    Estimate estimate = new Estimate(changed.job());
    assertThat(new Supply(estimate, Map.of()).sheets().planned().value()).isEqualTo(3);
  }
}
