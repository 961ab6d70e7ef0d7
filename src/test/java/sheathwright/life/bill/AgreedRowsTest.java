package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;

/** What the demo's quote leaves behind when the owner agrees to it. Invented numbers. */
class AgreedRowsTest {

  private static final String STAGES =
      """
      stage,part_pct,usd,when,paid_on,paid_usd
      Deposit,,1000.00,on signing,,
      Dry-in,,5436.50,when the deck is covered,,
      Final,,4436.50,when all is done,,
      """;

  private static JobText gable() {
    return JobText.demo("quince-hollow")
        .withLines(
            "rates", "refasten_nails,19,", "refasten_h,0.12,", "relief_ft_h,0.016666666666666666,")
        .withTable("stages", STAGES);
  }

  private static Tables agreed(JobText text) {
    Tables tables = new Tables();
    tables.agreed.addAll(AgreedRows.of(new Estimate(text.job())));
    return tables;
  }

  /** $10,873.00 with three at $117 and $80 back; 50 units at most were worked by a script. */
  @Test
  void theRows_areTheQuote() {
    Agreement agreement = agreed(gable()).agreement();
    assertThat(agreement.total().value()).isEqualTo(10873);
    AgreedItem sheet = agreement.item(Item.SHEET).orElseThrow();
    assertThat(sheet.unit()).isEqualTo("half");
    assertThat(sheet.price().value()).isEqualTo(117);
    assertThat(sheet.included().value()).isEqualTo(3);
    assertThat(sheet.credit().value()).isEqualTo(80);
    assertThat(sheet.most().orElseThrow().value()).isEqualTo(50);
    assertThat(agreement.item(Item.REFASTEN).orElseThrow().price().value()).isEqualTo(8);
    assertThat(agreement.item(Item.RELIEF).orElseThrow().price().value()).isEqualTo(1.05);
    assertThat(agreement.item(Item.SCAB)).isEmpty();
    assertThat(agreement.stages())
        .extracting(stage -> stage.amount().value())
        .containsExactly(1000.00, 5436.50, 4436.50);
    assertThat(agreement.reopen()).isEmpty();
    assertThat(agreement.preAgreed()).isEmpty();
    assertThat(Tables.broken(agreement.ties())).isEmpty();
  }

  /** Seven sheets over built-up rafters are in the price: none of them is billed again. */
  @Test
  void sheetsThatTheLevelingLifts_areIncluded() {
    JobText text =
        JobText.demo("tallow-end")
            .with("job", "planned_sheets,8", "planned_sheets,2")
            .withLines("job", "stage,quoted,")
            .withTable("stages", "stage,part_pct,usd,when\nall,100,,when it is done\n");
    Tables tables = agreed(text);
    assertThat(tables.agreement().item(Item.LIFT).orElseThrow().included().value()).isEqualTo(7);
    assertThat(Tables.broken(tables.agreement().ties())).isEmpty();
    for (int i = 1; i <= 7; i++) {
      tables.mark("level S-" + i, "S-" + i, Item.LIFT, 1, "");
    }
    assertThat(tables.next().row("2027-06-01").get("usd")).isEqualTo("0.00");
    tables.mark("8", "S-1-3", Item.LIFT, 1, "");
    assertThat(tables.next().row("2027-06-01").get("usd")).isEqualTo("30.00");
  }

  @Test
  void limitsAndChosenOptions_areFrozenToo() {
    JobText text =
        gable()
            .withLines(
                "job",
                "ceiling_sheets,20,",
                "reopen_sheets,12,",
                "pre_agreed_sheets,2,",
                "pre_agreed_usd,300,")
            .withTable(
                "options",
                """
                option,item,quantity,unit,usd,chosen,chosen_on
                thicker,19/32 panels,3,sheet,12.50,yes,2027-05-03
                level,level plane A,,,900,no,2027-05-03
                """)
            .with("stages", "4436.50", "4474.00");
    Agreement agreement = agreed(text).agreement();
    assertThat(agreement.item(Item.SHEET).orElseThrow().most().orElseThrow().value()).isEqualTo(20);
    assertThat(agreement.reopen().orElseThrow().value()).isEqualTo(12);
    assertThat(agreement.preAgreed().orElseThrow().sum().orElseThrow().value()).isEqualTo(300);
    assertThat(agreement.options())
        .extracting(AgreedSum::what)
        .containsExactly("thicker: 19/32 panels");
    assertThat(agreement.total().value()).isEqualTo(10873 + 37.50);
    assertThat(Tables.broken(agreement.ties())).isEmpty();
  }

  @Test
  void doubledPrices_changeNothingThatTheOwnerPays() {
    JobText dear =
        gable()
            .with("prices", "sheet,38.50", "sheet,77.00")
            .with("prices", "0.020", "0.040")
            .withTable("stages", "stage,part_pct,usd,when\nAll,100,,when all is done\n");
    assertThat(new Estimate(dear.job()).quote().extraSheet().value()).isGreaterThan(117);
    Tables tables = agreed(gable());
    for (int i = 1; i <= 5; i++) {
      tables.mark(String.valueOf(i), "A-1-" + i, Item.SHEET, 1);
    }
    for (JobText text : List.of(gable(), dear)) {
      NextOrder order = NextOrder.of(tables.accounts(), Optional.empty(), ItemHours.of(text.job()));
      assertThat(order.sum().value()).isEqualTo(234);
      assertThat(order.newTotal().value()).isEqualTo(11107);
    }
  }

  /** 2 sheets at 0.90 h are 1.8 h; 3 people of 8 h at 80 % make 19.2 h a day: up to a quarter. */
  @Test
  void days_areSaidOnlyWhereAllIsKnown() {
    Tables tables = agreed(gable());
    for (int i = 1; i <= 5; i++) {
      tables.mark(String.valueOf(i), "A-1-" + i, Item.SHEET, 1);
    }
    JobText crew = gable().withLines("job", "crew,3,", "crew_hours,8,", "efficiency_pct,80,");
    assertThat(days(tables, crew)).contains(0.25);
    assertThat(days(tables, gable().withLines("job", "crew,3,", "crew_hours,8,"))).isEmpty();
    for (int i = 6; i <= 25; i++) {
      tables.mark(String.valueOf(i), "A-2-" + i, Item.SHEET, 1);
    }
    assertThat(22 * 0.9 / 19.2).isBetween(1.0, 1.25);
    assertThat(days(tables, crew)).contains(1.25);
    tables.agreed("scab", "piece", "22.00", "", "", "", "A scab").mark("50", "A-1-1", Item.SCAB, 1);
    assertThat(days(tables, crew)).as("no hours are known for a scab").isEmpty();
  }

  private static Optional<Double> days(Tables tables, JobText text) {
    return NextOrder.of(tables.accounts(), CrewDay.of(text.job()), ItemHours.of(text.job()))
        .days()
        .map(days -> days.value());
  }

  /** A third of $10,873.00 is $3,624.33, twice; the last takes $3,624.34. */
  @Test
  void parts_goToTheCentAndTheLastTakesTheRest() {
    JobText thirds =
        gable()
            .withTable(
                "stages",
                """
                stage,part_pct,usd,when
                one,33.333333,,first
                two,33.333333,,then
                three,33.333334,,last
                """);
    assertThat(agreed(thirds).agreement().stages())
        .extracting(stage -> stage.amount().value())
        .containsExactly(3624.33, 3624.33, 3624.34);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "4436.50|4400.00|stages.csv, line 4, column usd: the payments come to $10,836.50, but the owner pays $10,873.00; the last would be $4,436.50",
        "Dry-in,,|Dry-in,10,|stages.csv, line 3, column part_pct: part_pct is given beside usd; a payment is a part of the total or dollars",
        "4436.50|4436.49|stages.csv, line 4, column usd: the payments come to $10,872.99, but the owner pays $10,873.00; the last would be $4,436.50",
        "Dry-in|Deposit|'stages.csv, line 3, column stage: \"Deposit\" appears twice'",
      })
  void paymentsThatDoNotAddUp_areSaid(String text, String spoiled, String problem) {
    JobText wrong = gable().with("stages", text, spoiled);
    assertThatThrownBy(() -> agreed(wrong))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(problem);
  }

  @Test
  void withoutPayments_nobodyAgrees() {
    Map<String, String> without = new java.util.LinkedHashMap<>(gable().tables());
    without.remove("stages");
    assertThatThrownBy(() -> agreed(new JobText(without)))
        .hasMessage(
            "stages.csv: there is no payment; say when the price is paid, one line a payment");
  }
}
