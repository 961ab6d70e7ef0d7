package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The typed value that gives an answer; every expected one is worked out by hand beside it. */
class SeekingTest {

  private final Session session = new Session();

  @BeforeEach
  void type() {
    answer("area = 3200 sq ft");
    answer("waste = 0 %");
    answer("order = sheetsByArea(area, waste)"); // 3,200 ÷ 32 = 100 sheets
    answer("rate = $2.50/sq ft");
    answer("price = area * rate");
  }

  @AfterEach
  void close() {
    session.close();
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  /** 10,000 ÷ 2.50 = 4,000. */
  @Test
  void aLinearPrice_givesTheOneValue_inWhateverWayItIsSaid() {
    String found = "area = 4000 sq ft\n  price would be $10,000.00";
    assertThat(answer("seek price = 10000 by area")).isEqualTo(found);
    assertThat(answer("seek price = $10000 by area")).isEqualTo(found);
    assertThat(answer("seek price=$10000 by area;")).isEqualTo(found);
    assertThat(answer("seek price = 4 * $2500 by area")).isEqualTo(found);
    assertThat(answer("seek price = $2000 by rate"))
        .isEqualTo("rate = $0.625 per sq ft\n  price would be $2,000.00"); // 2,000 ÷ 3,200
  }

  /** 100 sheets and 9 % are 109; the next square inch takes the 110th, up to 10 %. */
  @Test
  void sheets_standInSteps_andBothNeighborsAreTold() {
    assertThat(answer("seek order = 110 by waste"))
        .isEqualTo(
            """
            waste = 10 %
              order would be 110 sheets
              the same from 9.01 % to 10 %; 9 % gives 109 sheets, 10.01 % gives 111 sheets""");
    assertThat(answer("seek order = 110.5 by waste"))
        .isEqualTo(
            """
            no waste makes order 110.5 sheets; it steps over it
            waste = 10 %
              order would be 110 sheets
            waste = 10.01 %
              order would be 111 sheets""");
  }

  @Test
  void theSession_staysAsItIs() {
    String before = answer("list");
    answer("seek order = 110 by waste");
    answer("seek order = 9999 by waste");
    assertThat(answer("list")).isEqualTo(before);
    assertThat(answer("undo")).startsWith("undone: price = area * rate");
  }

  /**
   * Of direct costs of 87.123525 (43.968525 of material, 41.40 of labor, 1.755 of disposal) and 18
   * % of overhead, 102.8057595 ÷ (1 − margin): 110 at 6.54 %, and more than 109 from 5.69 % on.
   */
  @Test
  void aPart_ofAnAnswer_isSought_withinTheLimitsOfItsFunction() {
    answer("margin = 12 %");
    answer(
        "bid = sheetUnitPrice(SheetMaterial.sheet($38.50/sheet).waste(5 %).nails(nailsPerSheet(43), usdPerNail(0.02)), hoursPerSheet(0.90), Disposal.of(lbPerSheet(45), $78/ton), Rates.labor(usdPerHour(46)).tax(6.5 %).overhead(18 %).margin(margin))");
    assertThat(answer("seek bid_exact = 110 by margin"))
        .isEqualTo("margin = 6.54 %\n  bid_exact would be $110.00/sheet");
    assertThat(answer("seek bid.quoted() = 110 by margin"))
        .startsWith("margin = 6 %\n  bid.quoted() would be $110.00/sheet\n")
        .contains("the same from 5.69 % to 6.54 %");
    assertThat(answer("seek bid_exact = 5 by margin"))
        .startsWith(
            "no margin from 0 % to 90 % makes bid_exact $5.00/sheet; it reaches\nmargin = 0 %")
        .contains("would be $102.81/sheet\nmargin = 90 %")
        .endsWith("would be $1,028.06/sheet");
    assertThat(answer("seek bid = 110 by margin")).contains("is no one number; seek one of bid_");
  }

  @Test
  void whatCannotBeSought_isSaid() {
    answer("other = 3 in");
    assertThat(answer("seek")).startsWith("seek takes an answer, what it is to come to");
    assertThat(answer("seek order 110 waste")).startsWith("seek takes an answer");
    assertThat(answer("seek order = 110 sheets by other"))
        .isEqualTo("order does not depend on other; it depends on area, waste");
    assertThat(answer("seek price = $100 by order"))
        .isEqualTo(
            "order is no number that was typed, and nothing else is sought; typed were area, waste, rate, other");
    assertThat(answer("seek order = 110 by wast"))
        .startsWith("there is no variable \"wast\" to find a value for; typed were area, waste");
    assertThat(answer("seek orders = 110 by waste"))
        .startsWith("there is no \"orders\" to seek; there are area, waste, order");
    assertThat(answer("seek order = $100 by waste"))
        .isEqualTo(
            "order comes to 100 sheets, and can never be $100; say what it is to be in its own unit");
    assertThat(answer("seek order = much by waste"))
        .isEqualTo("much is no amount that order could come to; it comes to 100 sheets now");
    assertThat(answer("seek price = $10,000 by area"))
        .isEqualTo("$10,000 has a comma; write $10000");
  }

  @Test
  void aFact_thatWasGiven_isSoughtByItsName() {
    answer("given(spacing = 24 in)");
    answer("twice = given_spacing * 2");
    assertThat(answer("seek twice = 33 by spacing"))
        .isEqualTo("given(spacing = 16-1/2 in)\n  twice would be 33 in");
  }

  @Test
  void anAnswer_thatDoesNotMove_isSaid() {
    answer("few = order.min(sheets(3))");
    assertThat(answer("seek few = 5 by waste"))
        .isEqualTo("few stays 3 sheets for every waste from 0 % to 100 %");
  }

  /** A Java line between the two is run by the compiler: 64 sq ft are 2 sheets, and one spare. */
  @Test
  void aLineOfJava_betweenTheTwo_isRunToo() {
    answer("spare = List.of(order).get(0).plus(sheets(1))");
    assertThat(answer("seek spare = 111 by waste"))
        .startsWith("waste = 10 %\n  spare would be 111 sheets");
  }

  @Test
  void everyLine_fitsTheWindow() {
    List.of(
            "seek",
            "seek order = 110 by waste",
            "seek order = 200 by area",
            "seek order = 1 by area")
        .forEach(
            line ->
                assertThat(answer(line).lines())
                    .allSatisfy(said -> assertThat(said).hasSizeLessThan(81)));
  }
}
