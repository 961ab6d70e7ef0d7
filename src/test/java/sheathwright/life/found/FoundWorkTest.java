package sheathwright.life.found;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.table.JobText;
import sheathwright.sheathing.patch.Finding;

/** What marks lead to, and how much of it; by hand, or from the check numbers of the plan. */
class FoundWorkTest {

  /** Five places replaced, six refastened, one joint of 24 ft sawn open. */
  private static final String S1 =
      """
      mark,plane,finding,sheet,joint_ft,stage_found
      1,A,rot,A-1-2,,opened
      2,A,rot,A-1-3,,opened
      3,A,delaminated,A-1-4,,opened
      4,B,swollen,B-5-3,,opened
      5,A,broken,A-4-6,,opened
      6,A,loose,A-2-1,,opened
      7,A,loose,A-2-2,,opened
      8,A,loose,A-2-3,,opened
      9,A,loose,A-2-4,,opened
      10,A,loose,A-2-5,,opened
      11,A,loose,A-2-6,,opened
      12,A,tight,A-3-1,24,opened
      """;

  private static JobText quince(String marks) {
    return JobText.demo("quince-hollow").withTable("marks", marks);
  }

  private static FoundWork work(JobText job) {
    return FoundWork.of(new Estimate(job.job()));
  }

  private static double sum(FoundWork work, Item item) {
    return work.list().stream()
        .filter(found -> found.item().equals(Optional.of(item)))
        .mapToDouble(Found::quantity)
        .sum();
  }

  private static Found only(FoundWork work) {
    assertThat(work.list()).hasSize(1);
    return work.list().get(0);
  }

  /** B-5-3 lies in the strip of 9-1/4 in: 6.17 sq ft, a half. */
  @ParameterizedTest
  @CsvSource({"place, 5", "half, 4.5"})
  void theMarksOfOneJob_comeToTheirCheckNumbers(String rule, double sheets) {
    FoundWork work = work(quince(S1).withLines("job", "bill_rule," + rule + ","));
    assertThat(sum(work, Item.SHEET)).isEqualTo(sheets);
    assertThat(work.quantities().get(Item.SHEET).value()).isEqualTo(sheets);
    assertThat(sum(work, Item.REFASTEN)).isEqualTo(6);
    assertThat(sum(work, Item.RELIEF)).isEqualTo(24);
    assertThat(work.quantities().keySet().stream().filter(item -> sum(work, item) > 0))
        .containsExactlyInAnyOrder(Item.SHEET, Item.REFASTEN, Item.RELIEF);
  }

  /** What two marks ask for is counted with the first by day, then by mark as people count. */
  @ParameterizedTest
  @CsvSource({
    "loose, 2027-06-01, 2027-06-01, R-2",
    "loose, 2027-06-01, 2027-06-02, R-10",
    "loose, , 2027-06-02, R-2",
    "rot,   2027-06-01, 2027-06-01, R-2",
    "rot,   , 2027-06-02, R-2",
    "tight, 2027-06-01, 2027-06-01, R-2",
  })
  void whatTwoMarksAskFor_isCountedWithTheFirst(
      String finding, String ofTen, String ofTwo, String counted) {
    FoundWork work =
        work(
            quince(
                "mark,plane,finding,sheet,on\nR-10,A,%s,A-1-2,%s\nR-2,A,%1$s,A-1-2,%3$s\n"
                    .formatted(finding, ofTen == null ? "" : ofTen, ofTwo)));
    assertThat(work.list()).extracting(Found::mark).containsExactly("R-10", "R-2");
    assertThat(work.list().stream().filter(found -> found.quantity() > 0))
        .extracting(Found::mark)
        .containsExactly(counted);
  }

  /** Whoever is billed is counted first: a mark that nobody pays for takes nothing from it. */
  @Test
  void whatNobodyPaysFor_takesNothingFromWhatIsBilled() {
    FoundWork work =
        work(quince("mark,plane,finding,sheet,bill\n1,A,loose,A-1-2,none\n2,A,loose,A-1-2,\n"));
    assertThat(sum(work, Item.REFASTEN)).isEqualTo(1);
  }

  /** By hand: 3 × 32, 96 × 9-1/4 in and 72 × 48 in are 126.17 sq ft, 3.943 of 32, up to 4. */
  @Test
  void byArea_onlyTheSumGoesUpToAQuarter() {
    FoundWork work = work(quince(S1).withLines("job", "bill_rule,area,"));
    assertThat(sum(work, Item.SHEET)).isEqualTo((3 * 32 + 96 * 9.25 / 144 + 24) / 32);
    assertThat(work.quantities().get(Item.SHEET).value()).isEqualTo(4);
  }

  @ParameterizedTest
  @EnumSource(Finding.class)
  void everyFinding_reachesAnAction(Finding finding) {
    Found found =
        only(work(quince("mark,plane,finding,sheet\nx,A," + finding.word() + ",A-2-3\n")));
    assertThat(found.action())
        .isEqualTo(
            switch (finding) {
              case ROT, DELAMINATED, BROKEN, SWOLLEN, SOFT, HOLE, PULLED -> "replace";
              case LOOSE -> "refasten";
              case TIGHT -> "relieve";
              case UNSUPPORTED, GAP_WIDE -> "support";
              case THIN -> "stop";
              case STAIN -> "watch";
            });
    assertThat(found.reason()).startsWith(found.action() + ": ");
    assertThat(found.key()).isEqualTo("A-2-3");
    assertThat(found.item().isPresent())
        .isEqualTo(finding != Finding.THIN && finding != Finding.STAIN);
  }

  @ParameterizedTest
  @EnumSource(Decided.class)
  void whatTheCrewDecides_overridesAndSaysSo(Decided decided) {
    Found found =
        only(
            work(
                quince(
                    "mark,plane,finding,sheet,action\nx,A,stain,A-2-3," + decided.word() + "\n")));
    assertThat(found.action()).isEqualTo(decided.word());
    assertThat(found.reason())
        .isEqualTo(
            "decided by the crew: %s; by the rules watch: find the water and let it dry"
                .formatted(decided.word()));
    assertThat(found.item())
        .isEqualTo(
            switch (decided) {
              case REPLACE -> Optional.of(Item.SHEET);
              case COVER -> Optional.of(Item.COVER);
              case SUPPORT -> Optional.of(Item.SCAB);
              case RELIEVE -> Optional.of(Item.RELIEF);
              case REFASTEN -> Optional.of(Item.REFASTEN);
              case LIFT -> Optional.of(Item.LIFT);
              case DRY, WATCH, STOP -> Optional.empty();
            });
  }

  /** What was measured decides before what was seen. */
  @ParameterizedTest
  @CsvSource({
    "soft, probe_in, 3/8, replace",
    "soft, probe_in, 1/8, refasten",
    "stain, moisture_pct, 24, dry",
    "loose, sound_nails, 10, refasten",
    "unsupported, bearing_in, 3/8, support",
    "thin, thickness_in, 1/4, stop",
    "thin, thickness_in, 5/8, watch",
  })
  void whatWasMeasured_decides(String finding, String column, String value, String action) {
    String marks = "mark,plane,finding,sheet,%s\nx,A,%s,A-2-3,%s\n";
    assertThat(only(work(quince(marks.formatted(column, finding, value)))).action())
        .isEqualTo(action);
  }

  /** By hand, on courses of 48 in with joints at 96, 192, ... and at 48, 144, ... in turn. */
  @ParameterizedTest
  @CsvSource({
    // an end joint at 192 in of course 1: 4 ft, whichever side the mark lies on more
    "tight, 190, 2, 4, 40, RELIEF, 4",
    // the long joint between courses 1 and 2, above A-1-2 alone: 8 ft
    "tight, 110, 46, 60, 4, RELIEF, 8",
    // the same above A-1-2 and A-1-3: 16 ft
    "tight, 150, 46, 80, 4, RELIEF, 16",
    // an end off its rafter in courses 1 and 2: a scab each
    "unsupported, 190, 2, 4, 90, SCAB, 2",
    // a bare edge is blocked as far as it was marked: 30 in
    "unsupported, 110, 46, 30, 4, BLOCK, 2.5",
    // a loose rectangle over two places of course 1
    "loose, 150, 10, 80, 20, REFASTEN, 2",
    // a hole of 1 in is covered
    "hole, 110, 10, 1, 1, COVER, 1",
    // a hole of 9 in is cut out; half of a sheet of 48 by 24 in is 8 sq ft
    "hole, 110, 10, 9, 9, SHEET, 0.5",
  })
  void aMeasuredMark_countsWhatItReaches(
      String finding, int along, int up, int width, int height, Item item, double quantity) {
    String marks = "mark,plane,finding,along_in,up_in,width_in,height_in\nx,A,%s,%d,%d,%d,%d\n";
    Found found = only(work(quince(marks.formatted(finding, along, up, width, height))));
    assertThat(found.item()).contains(item);
    assertThat(found.quantity()).isEqualTo(quantity);
  }

  @Test
  void nothing_isCountedTwice() {
    FoundWork work =
        work(
            quince(
                """
                mark,plane,finding,sheet,action
                a,A,rot,A-1-2,
                b,A,soft,A-1-2,
                c,A,loose,A-1-2,
                d,A,loose,A-2-3,
                e,A,loose,A-2-3,
                f,A,tight,A-2-4,
                g,A,tight,A-2-4,
                h,A,stain,A-2-3,lift
                i,A,stain,A-1-2,lift
                """));
    assertThat(work.list())
        .extracting(Found::mark)
        .containsExactly("a", "b", "c", "d", "e", "f", "g", "h", "i");
    assertThat(work.list())
        .extracting(Found::quantity)
        .containsExactly(1.0, 0.0, 0.0, 1.0, 0.0, 4.0, 0.0, 1.0, 0.0);
    assertThat(work.list())
        .extracting(found -> found.reason().replaceFirst("^[^;]*(; by the rules [^;]*)?", ""))
        .containsExactly(
            "",
            "; counted with mark a",
            "; A-1-2 is replaced, counted with mark a",
            "",
            "; counted with mark d",
            "",
            "; the joint is already counted with mark f",
            "",
            "; A-1-2 is replaced, counted with mark a");
    assertThat(work.roll().cellsOf("reason").get(6).plain()).isEqualTo(work.list().get(6).reason());
  }

  /** A place is counted with whoever is billed for it, and was found with the covering off. */
  @Test
  void whatIsTakenBackOrFree_countsNothing() {
    FoundWork work =
        work(
            quince(
                """
                mark,plane,finding,sheet,bill,void,stage_found
                a,A,rot,A-1-2,none,,
                b,A,rot,A-1-2,,,
                c,A,rot,A-1-2,,,opened
                d,A,rot,A-1-3,,yes,
                e,A,rot,A-1-4,none,,
                """));
    assertThat(work.list()).extracting(Found::quantity).containsExactly(0.0, 0.0, 1.0, 0.0, 0.0);
    assertThat(work.list())
        .extracting(Found::isVoid)
        .containsExactly(false, false, false, true, false);
    assertThat(work.list().get(4).item()).isEmpty();
    Estimate estimate =
        new Estimate(quince("mark,plane,finding,sheet,void\nd,A,rot,A-1-3,yes\n").job());
    assertThat(estimate.deck().parts().get(0).patches().orElseThrow().list()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"'', false", "agreed, false", "opened, true", "closed, true"})
  void aBlankStage_isWhereTheJobStands(String stage, boolean isOpened) {
    JobText job =
        quince(
            "mark,plane,finding,sheet,stage_found\na,A,stain,A-1-2,\nb,A,stain,A-1-3,surveyed\n");
    FoundWork work = work(stage.isEmpty() ? job : at(job, stage));
    assertThat(work.list()).extracting(Found::isOpened).containsExactly(isOpened, false);
  }

  /** The job with the tables and days that a stage asks for. */
  private static JobText at(JobText job, String stage) {
    JobText agreed =
        job.withLines("job", "stage," + stage + ",")
            .withTable("sent", "document,file,file_sha256,record_sha256\n1 issue 1,1.xlsx,00,11\n")
            .withTable(
                "agreed", "item,unit,usd,included,credit_usd,most,words\ntotal,,1200,,,,all\n")
            .withTable("stages", "stage,part_pct,usd,when\nall,100,,when it is done\n");
    return stage.equals("agreed")
        ? agreed
        : agreed.withLines("job", "opened_on,2027-05-10,", "closed_on,2027-05-12,");
  }

  /** Its loose mark, its unsupported end and its six marks of bad wood all lead to something. */
  @Test
  void noMarkOfTheDemoJob_vanishes() {
    FoundWork work = work(JobText.demo("cinder-brook"));
    assertThat(work.list())
        .extracting(found -> found.mark() + " " + found.action())
        .containsExactly(
            "S-1 replace",
            "S-2 replace",
            "S-3 replace",
            "S-4 refasten",
            "N-1 replace",
            "N-2 replace",
            "porch-1 replace",
            "porch-2 support");
    assertThat(work.list())
        .allMatch(
            found -> found.quantity() > 0 || found.reason().endsWith("; counted with mark S-2"));
  }

  @Test
  void aReportOverAPlace_stopsTheMarksInIt() {
    JobText job =
        quince("mark,plane,finding,sheet\na,A,rot,A-1-2\nb,A,rot,A-1-3\n")
            .withTable(
                "reports",
                "report,seen,where,evidence,sheet\nF-1,split,a rafter,photo 1,\"A-1-3, A-1-4\"\n");
    FoundWork work = work(job);
    assertThat(work.list())
        .extracting(Found::reason)
        .containsExactly("replace: rot, not measured", "stop: a report stops the framing under it");
    assertThat(sum(work, Item.SHEET)).isEqualTo(1);
  }

  /**
   * By hand from the drops: sisters from 6 to 150 in on S-5 and S-6, to 143 in on S-4, strips from
   * 18 to 132 in on S-3, to 138 in on S-7, from 42 to 132 in on S-8; the others stay. Course 4
   * begins at 144 in.
   */
  @Test
  void sheetsOverBuiltUpRafters_areLiftedOnce() {
    FoundWork work = work(tallow());
    assertThat(work.list())
        .extracting(Found::mark)
        .containsExactly(
            "level S-1-1",
            "level S-1-2",
            "level S-2-2",
            "level S-2-3",
            "level S-3-1",
            "level S-3-2",
            "level S-4-2");
    assertThat(work.list()).allMatch(found -> found.item().equals(Optional.of(Item.LIFT)));
    assertThat(sum(work, Item.LIFT)).isEqualTo(7);
    FoundWork replaced =
        work(
            tallow()
                .withTable(
                    "marks",
                    "mark,plane,finding,sheet\na,S,rot,S-2-2\nb,S,stain,S-2-3\nc,S,loose,S-1-3\n"));
    assertThat(sum(replaced, Item.LIFT)).isEqualTo(6);
    assertThat(replaced.list())
        .filteredOn(found -> found.mark().equals("b"))
        .extracting(Found::action)
        .containsExactly("watch");
  }

  /** A job whose price has two of its plane's eight sheets. */
  private static JobText tallow() {
    return JobText.demo("tallow-end").with("job", "planned_sheets,8", "planned_sheets,2");
  }

  /** All eight sheets of the plane are in the price: none is left to be lifted. */
  @Test
  void whereTheWholeDeckIsNew_nothingIsLifted() {
    Estimate estimate = new Estimate(JobText.demo("tallow-end").job());
    assertThat(FoundWork.of(estimate).list()).isEmpty();
    assertThat(estimate.quote().included(Item.LIFT).value()).isZero();
  }

  /** What the leveling lifts is sold with it, 7 at $30, and is not found besides. */
  @Test
  void whatTheLevelingLifts_isInTheQuote() {
    Estimate estimate = new Estimate(tallow().job());
    assertThat(estimate.quote().included(Item.LIFT).value()).isEqualTo(7);
    assertThat(lifts(estimate.quote().roll())).containsExactly("7", "sheet", "30", "210");
    SheetsSettled settled = SheetsSettled.of(estimate);
    assertThat(settled.comesTo().value()).isZero();
    assertThat(settled.ties()).allMatch(tie -> tie.holds().holds());
  }

  private static List<String> lifts(Roll lines) {
    return lines.rows().stream()
        .filter(row -> row.get(0).plain().contains("lifted"))
        .flatMap(row -> row.stream().skip(1))
        .map(Traced::plain)
        .toList();
  }

  /** A mark cuts out one of the seven: the price lifts six. */
  @Test
  void whatIsReplaced_isNotLiftedInTheQuote() {
    JobText marked = tallow().withTable("marks", "mark,plane,finding,sheet\na,S,rot,S-2-2\n");
    assertThat(new Estimate(marked.job()).quote().included(Item.LIFT).value()).isEqualTo(6);
  }

  /**
   * By hand: 144.25 in from bearing to bearing, the upper at 158.625 in, so the middle lies at 86.5
   * in. More than 1/8 in is low over 72.125 √(1 − 1/8 ÷ 1/4) = 51 in either way: 35.5 to 137.5 in,
   * courses 1 to 3. A drop of 1/2 in takes a sister of 144.25 √(1 − 3/8 ÷ 1/2) + 48 = 120.1 in:
   * 26.4 to 146.6 in, course 4 too. Rafter 2 from the left stands at 24 in; course 2 and 4 have
   * joints at 48 in.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A,A-2,1/4,|A-1-1, A-2-1, A-3-1",
        "A,A-2,1/4,60|A-1-1, A-2-2, A-3-1",
        "A,A-2,1/2,60|A-1-1, A-2-2, A-3-1, A-4-2",
        "A,A-2,1/8,60|",
        "A,left,0,¶A,right,1/4,|A-1-1, A-2-1, A-3-1",
      })
  void readingsAtMidLength_liftWhatTheirBuildUpCrosses(String readings, String places) {
    JobText job =
        JobText.demo("mistwater-cottage")
            .with("job", "planned_sheets,28", "planned_sheets,5")
            .withLines("rates", "lift_h,0.45,")
            .withTable(
                "readings", "plane,rafter,drop_in,along_in\n" + readings.replace("¶", "\n") + "\n");
    Estimate estimate = new Estimate(job.job());
    String keys = places == null ? "" : places;
    assertThat(FoundWork.of(estimate).list().stream().map(Found::key))
        .containsExactlyElementsOf(keys.isEmpty() ? List.of() : List.of(keys.split(", ")));
    assertThat(lifts(estimate.quote().held().orElseThrow()).get(0))
        .isEqualTo(String.valueOf(keys.isEmpty() ? 0 : keys.split(", ").length));
  }

  @Test
  void aRafterBesideItsPlane_isSaid() {
    JobText job =
        JobText.demo("mistwater-cottage")
            .withTable("readings", "plane,rafter,drop_in,along_in\nA,A-1,1/2,5000\n");
    assertThatThrownBy(() -> new Estimate(job.job()))
        .hasMessage(
            "readings.csv, line 2, column along_in: 5000 is given, but plane A goes from 0 to 348 in along the eave; measure from its lower left corner");
  }

  /** Work that waits for the engineer is not quoted without a price either. */
  @Test
  void aLiftWithoutAPrice_isSaid() {
    JobText job =
        JobText.demo("mistwater-cottage").with("job", "planned_sheets,28", "planned_sheets,5");
    assertThat(SheetsSettled.of(new Estimate(job.job())).unpriced())
        .singleElement()
        .asString()
        .startsWith("rates.csv: lift_h is missing: Lift a sheet and lay it again, ")
        .endsWith("it is what level A-1-1, level A-1-2, level A-1-3 and 28 more lead to");
  }
}
