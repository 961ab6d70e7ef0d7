package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.workbook.book.Cells;

/** What an office may do to the invented job of a whole life besides what its demo shows. */
class WholeLifeTest {

  private static final Path LIFE = Path.of("demo-data", "whole-life");

  @TempDir private Path firm;

  /** The job as it lies at a stage, with everything that was sent and photographed. */
  private LifeFolder at(String stage) {
    Path job = firm.resolve("job");
    try (Stream<Path> files = Files.walk(LIFE.resolve(stage))) {
      for (Path file : files.toList()) {
        Path copy = job.resolve(LIFE.resolve(stage).relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return new LifeFolder(job);
  }

  /** Quoted on a day. */
  private LifeFolder quoted(String on) {
    LifeFolder job = at("2-surveyed");
    LifeFolder quoted = new LifeFolder(LIFE.resolve("3-quoted"));
    List.of("prices.csv", "rates.csv", "stages.csv", "job.csv")
        .forEach(table -> job.write(table, quoted.text(table)));
    job.done("quote", "--issue", "--on", on);
    return job;
  }

  /** Agreed, the covering off, and the marks of the demo found. */
  private LifeFolder opened() {
    LifeFolder job = at("4-agreed");
    job.fact("opened_on", "2027-06-01");
    job.write("marks.csv", new LifeFolder(LIFE.resolve("5-opened")).text("marks.csv"));
    return job;
  }

  private static void approve(LifeFolder job) {
    job.replace("orders.csv", "offered,,,", "approved,the owner,signed,2027-06-02");
  }

  private static List<String> texts(byte[] book) {
    List<String> all = new ArrayList<>();
    DataFormatter formatter = new DataFormatter();
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book))) {
      workbook.forEach(
          sheet ->
              sheet.forEach(row -> row.forEach(cell -> all.add(formatter.formatCellValue(cell)))));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return all;
  }

  /** One option was agreed to; another is chosen while the deck lies open, 4 ft at $31.25. */
  @Test
  void anOptionChosenWhileTheDeckIsOpen_isOrderedAndBilled() {
    LifeFolder job = quoted("2027-05-04");
    job.write(
        "options.csv",
        """
        option,item,quantity,unit,usd,chosen,chosen_on
        dip,Plane A is left as it is,,,0,yes,2027-05-10
        vent,A ridge vent,4,ft,31.25,,
        """);
    job.done("quote", "--issue", "--on", "2027-05-05");
    job.done("agree", "--on", "2027-05-11");
    job.fact("opened_on", "2027-06-01");
    job.write("marks.csv", "mark,plane,finding,sheet,on\n1,A,loose,A-2-2,2027-06-01\n");
    job.replace("options.csv", "31.25,,", "31.25,yes,");
    assertThat(job.refused("change-order", "--on", "2027-06-01"))
        .startsWith("options.csv, line 3, column chosen_on: it is empty, but the option is chosen");
    job.replace("options.csv", "31.25,yes,", "31.25,yes,2027-06-01");

    assertThat(job.done("change-order", "--on", "2027-06-01").out())
        .contains("Chosen: A ridge vent: 4 ft at $31.25, $125.00\n", "change order 01: $133.00\n");
    assertThat(job.lines("order_lines.csv"))
        .containsExactly(
            "order,item,unit,quantity,usd,marks",
            "01,refasten,place,1,8.00,1: 1",
            "01,option,ft,4,125.00,vent: 4");
    assertThat(texts(job.bytes("change-order-01.xlsx")))
        .contains(
            "Chosen: A ridge vent, in ft",
            "You chose it on June 1, 2027: A ridge vent.",
            "You chose it on June 1, 2027");
    approve(job);
    CommandRun closed = job.done("close", "--on", "2027-06-04");
    // 10,873 agreed, 133 ordered, three sheets at $80 not needed
    assertThat(closed.out()).contains("the homeowner pays $10,766.00, ");
    assertThat(texts(job.bytes("invoice.xlsx")))
        .contains("Chosen: dip: Plane A is left as it is", "Chosen: vent");
  }

  /**
   * By half 4.5 sheets are bad and 4 are billed at most: half a sheet at $117 is given away. The
   * log's 5.7 h cost $46 each; five sheets are 87.1235 - 0.90 × 46 each without their hours, six
   * refastened 5.9247 - 0.12 × 46; the owner pays 3 × 96 + 117 + 48 + 25.20.
   */
  @Test
  void whatTheWorkCost_isToldTheOfficeAlone() {
    LifeFolder job = opened();
    job.replace("agreed.csv", "sheet,half,117.00,3,80.00,50,", "sheet,half,117.00,3,80.00,4,");
    job.write("log.csv", new LifeFolder(LIFE.resolve("6-closed")).text("log.csv"));
    job.done("change-order", "--on", "2027-06-01");
    approve(job);
    assertThat(job.done("close", "--on", "2027-06-04").out())
        .contains("for the office: the work on the deck cost $493.25 and sold for $478.20, ")
        .contains(
            "given away above the agreed ceiling: 0.5 sheets, $58.50 at the agreed price (Deck"
                + " sheet taken out and replaced)\n")
        .contains(
            "the page Cost against sold of the office's workbook, which ./sheathwright quote ");
    job.done("quote", "--force");
    assertThat(texts(job.bytes("estimate.xlsx")))
        .contains("Given away above the ceiling", "Cost beyond what it sold for");
    // every name in it stands for something: 493.25 × 1.18 / 0.88 - 478.20
    assertThat(Cells.byPoi(job.bytes("estimate.xlsx"))).containsValue(183.20);
    for (String file : List.of("invoice.xlsx", "deck-record.xlsx", "quote.xlsx")) {
      assertThat(texts(job.bytes(file)))
          .noneMatch(text -> text.toLowerCase(Locale.ROOT).contains("given away"));
    }
  }

  /** Of $10,873 three sheets at $80 are not needed: $10,633, and all of the first was paid. */
  @Test
  void whatWasPaidBeyondTheInvoice_goesBack() throws IOException {
    LifeFolder job = opened();
    job.write("marks.csv", "mark,plane,finding,sheet\n");
    Files.deleteIfExists(job.path().resolve("photos.csv"));
    job.write(
        "stages.csv",
        """
        stage,part_pct,usd,when,paid_on,paid_usd
        deposit,,1000.00,on signing,2027-05-12,1000.00
        dry-in,50,,when the deck is closed and dry,2027-06-02,5436.50
        final,,4436.50,after the last inspection,2027-06-03,4436.50
        """);
    assertThat(job.done("close", "--on", "2027-06-04").out())
        .contains("the homeowner pays $10,633.00, and $240.00 goes back: more was paid\n");
    assertThat(texts(job.bytes("invoice.xlsx"))).contains("We owe you");
  }

  /** Eleven sheets where ten are counted before both talk, and a scab that has no price. */
  @Test
  void whatHasToBeTalkedAbout_isSaidWithWhatToDo() throws IOException {
    LifeFolder job = opened();
    Files.delete(job.path().resolve("photos.csv"));
    StringBuilder marks = new StringBuilder("mark,plane,finding,sheet,on,bill\n");
    for (int i = 1; i <= 5; i++) {
      marks.append(
          "1%d,A,rot,A-1-%d,2027-06-01,\n2%d,B,rot,B-1-%d,2027-06-01,\n".formatted(i, i, i, i));
    }
    marks.append("31,A,rot,A-3-1,2027-06-01,\n32,A,rot,A-3-2,2027-06-01,\n");
    marks.append("99,A,unsupported,A-5-2,2027-06-01,\n");
    job.write("marks.csv", marks.toString());
    assertThat(job.done("change-order", "--on", "2027-06-01").err())
        .contains(
            "question: Deck sheet taken out and replaced: 2 sheets more than was agreed to count",
            "question: mark 99, A-5-2: no price was agreed for scab, and no order asks for it; once"
                + " there is one, say so in talks.csv, such as \"scab,,25.00,WHO,signed,DATE\" below the"
                + " heading item,most,usd,approved_by,approved_how,approved_on, or give none");
    approve(job);
    CommandRun refused = job.run("close", "--on", "2027-06-04");
    assertThat(refused.status()).isEqualTo(3);
    assertThat(refused.err())
        .contains(
            "say so in talks.csv, such as \"reopen,12,,WHO,signed,DATE\"",
            "mark 99, A-5-2: no price was agreed");

    job.write(
        "talks.csv",
        """
        item,most,usd,approved_by,approved_how,approved_on
        reopen,12,,the owner,e-mail,2027-06-02
        scab,,25.00,the owner,signed,2027-06-02T09:30
        """);
    assertThat(job.done("change-order", "--on", "2027-06-02").err())
        .doesNotContain("agreed to count", "no price was agreed");
    // two sheets at 117, and the scab at what was said since
    assertThat(job.lines("order_lines.csv"))
        .anyMatch(line -> line.startsWith("02,sheet,half,2,234.00,"))
        .contains("02,scab,piece,1,25.00,99: 1");
    assertThat(texts(job.bytes("change-order-02.xlsx")))
        .contains(
            "Up to 12 sheets are billed before we talk again: agreed with the owner, e-mail, June 2, 2027.",
            "A scab of 48 in under an end: $25.00 for each piece: agreed with the owner, signed, June 2, 2027, 9:30 AM.");
    job.replace("orders.csv", "offered,,,", "approved,the owner,signed,2027-06-02");
    job.done("close", "--on", "2027-06-04");
    assertThat(texts(job.bytes("invoice.xlsx")))
        .anyMatch(text -> text.startsWith("Up to 12 sheets are billed before we talk again"));
  }

  /** Two people number their marks from 1: each is told apart wherever it is named. */
  @Test
  void marksOfTwoPhones_areToldApartInEveryDocument() {
    LifeFolder job = opened();
    job.write(
        "marks.csv",
        """
        mark,plane,finding,sheet,on,by
        1,A,loose,A-2-2,2027-06-01,JT
        2,A,loose,A-2-3,2027-06-01,JT
        1,B,loose,B-1-2,2027-06-01,MK
        """);
    job.write(
        "photos.csv",
        """
        photo,mark,report,sheet,view,taken,caption
        photos/vent.png,1 (by MK),,,before,,
        """);
    job.done("change-order", "--on", "2027-06-01");
    assertThat(job.lines("order_lines.csv").get(1))
        .startsWith("01,refasten,place,3,24.00,")
        .contains("1 (by JT): 1", "1 (by MK): 1", "2: 1");
    List<String> places =
        List.of(
            "plane A, half way up, left",
            "plane A, half way up, middle",
            "plane B, at the gutter, left");
    assertThat(texts(job.bytes("change-order-01.xlsx"))).containsAll(places);
    approve(job);
    job.done("close", "--on", "2027-06-04");
    assertThat(texts(job.bytes("invoice.xlsx"))).containsAll(places);
  }

  /** A number that was ordered and is somebody else's too by now is asked about. */
  @Test
  void anOrderedMark_isStillMeantWhenAnotherHasItsNumber() throws IOException {
    LifeFolder job = opened();
    String marks = "mark,plane,finding,sheet,on,by\n1,A,loose,A-2-2,2027-06-01,JT\n";
    job.write("marks.csv", marks);
    Files.delete(job.path().resolve("photos.csv"));
    job.done("change-order", "--on", "2027-06-01");
    approve(job);
    job.write("marks.csv", marks + "1,B,loose,B-1-2,2027-06-02,MK\n");
    assertThat(job.refused("change-order", "--on", "2027-06-02"))
        .contains(
            "order_lines.csv, line 2, column marks: \"1\" is given, and 2 marks of marks.csv have"
                + " that number; write \"1 (by JT)\" for line 2, \"1 (by MK)\" for line 3");
    job.replace("order_lines.csv", ",1: 1", ",1 (by JT): 1");
    job.done("change-order", "--on", "2027-06-02");
    assertThat(job.lines("order_lines.csv")).contains("02,refasten,place,1,8.00,1 (by MK): 1");
  }

  /** What the office learns and plans meanwhile; each is told the owner without a new quote. */
  @Test
  void whatIsBesideThePrice_mayChangeBeforeItIsAgreed() {
    LifeFolder job = quoted("2027-05-04");
    job.fact("start_on", "2027-06-02");
    job.fact("price_until", "2027-07-01");
    job.fact("crew", "5");
    job.fact("approver", "the owner's son");
    job.fact("answer_within_h", "6");
    job.fact("layers_on", "2");
    job.done("agree", "--on", "2027-05-11");
  }

  /** What the owner pays, or gets for it, is agreed as it was sent. */
  @ParameterizedTest
  @CsvSource({
    "ceiling_sheets, 40",
    "reopen_sheets, 12",
    "pre_agreed_usd, 500",
    "panel_thickness_in, 19/32",
    "bill_rule, place",
    "deposit_rule, The deposit comes back",
    "permit_usd, 100",
  })
  void whatTheOwnerPaysOrGets_isAgreedAsItWasSent(String key, String value) {
    LifeFolder job = quoted("2027-05-04");
    job.fact(key, value);
    assertThat(job.refused("agree", "--on", "2027-05-11"))
        .contains("the tables do not say any more what QH-01 issue 1 has the owner pay and get");
  }

  /** Of 24 places 18 were seen, of 36 none: 1 of 18 is 3.3 of 60, and 5 were bad. */
  @Test
  void theHistory_saysWhatWasSeenBefore() {
    LifeFolder job = opened();
    job.done("change-order", "--on", "2027-06-01");
    approve(job);
    assertThat(job.done("close", "--on", "2027-06-04").out())
        .contains(
            "seen before: 18 of 60 places, of which 1 bad; found: 5 bad, where 3.3 were to be"
                + " expected if the rest were like what was seen\n");
    assertThat(job.text("../history.csv")).contains("job,2027-06-04,60,5,half,18,1,3,1.5,0,");
  }

  /**
   * Zones that lie on each other are refused; with none at all, nobody knows how many were seen.
   */
  @Test
  void theHistory_isBlankWhereNobodyCounted() throws IOException {
    LifeFolder job = opened();
    job.done("change-order", "--on", "2027-06-01");
    approve(job);
    job.replace("zones.csv", "lower,,1,3,36,0,0,", "all,,,,60,50,2,");
    assertThat(job.refused("close", "--on", "2027-06-04"))
        .endsWith(
            "zones.csv, line 3, column places: with this zone there are 84 places, but the map has"
                + " 60; a place is in one zone: give each zone the places that no other has");
    job.fact("known_leak", "");
    Files.delete(job.path().resolve("zones.csv"));
    assertThat(job.done("close", "--on", "2027-06-04").out()).doesNotContain("seen before");
    assertThat(job.text("../history.csv")).contains("job,2027-06-04,60,5,half,,,3,");
  }

  /** The demo's owner answers within four hours. */
  @Test
  void aChangeOrderWithATime_saysUntilWhenTheOwnerAnswers() {
    LifeFolder job = opened();
    job.done("change-order", "--on", "2027-06-01 14:30");
    assertThat(job.lines("orders.csv").get(1)).startsWith("01,2027-06-01T14:30,");
    assertThat(job.text("sent.csv")).contains(",2027-06-01T14:30,");
    assertThat(String.join("\n", texts(job.bytes("change-order-01.xlsx"))))
        .contains("by 6:30 PM on June 1, 2027")
        .doesNotContain("of receipt");

    assertThat(job.run("change-order", "--on", "2027-06-01T24:30").err())
        .startsWith(
            "Invalid value for option '--on': \"2027-06-01T24:30\" has a time that no day has")
        .contains("2027-05-04T14:30");
  }

  @Test
  void aChangeOrderWithoutATime_isAnsweredWithinHoursOfReceipt() {
    LifeFolder job = opened();
    job.done("change-order", "--on", "2027-06-01");
    assertThat(String.join("\n", texts(job.bytes("change-order-01.xlsx"))))
        .contains("within 4 hours of receipt");
  }

  /** Each later step of one day is later than the one before it, where both say their time. */
  @Test
  void everyStepMayCarryItsTime() {
    LifeFolder job = quoted("2027-05-04T10:00");
    assertThat(job.lines("job.csv")).anyMatch(line -> line.startsWith("quote_date,2027-05-04,"));
    assertThat(job.refused("agree", "--on", "2027-05-04T09:00"))
        .contains(
            "--on 2027-05-04T09:00 is before QH-01 issue 1, 2027-05-04T10:00; give that or a later one");
    job.done("agree", "--on", "2027-05-04T10:15");
    assertThat(job.text("job.csv")).contains("agreed_on,2027-05-04T10:15");
    job.fact("opened_on", "2027-06-01 07:00");
    job.write("marks.csv", new LifeFolder(LIFE.resolve("5-opened")).text("marks.csv"));
    job.done("change-order", "--on", "2027-06-01T14:30");
    job.replace("orders.csv", "offered,,,", "approved,the owner,signed,2027-06-01 16:05");
    assertThat(job.refused("close", "--on", "2027-06-01T14:00"))
        .contains("is before change order 01, 2027-06-01T14:30");
    job.done("close", "--on", "2027-06-04T17:00");
    assertThat(job.text("job.csv")).contains("closed_on,2027-06-04T17:00");
    assertThat(job.text("../history.csv")).contains("job,2027-06-04,60,");
    assertThat(texts(job.bytes("invoice.xlsx")))
        .contains("Change order 01, approved June 1, 2027, 4:05 PM");
  }
}
