package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A small roof whose deck is boards, from quote to close. By hand, of a plane 20 ft × 12 ft with
 * boards that cover 7-1/4 in, over rafters 16 in apart:
 *
 * <pre>
 * a foot of board replaced: (1.50 × 1.10 + 1.5 nails × 0.02) × 1.05 + 0.06 h × 50 = 4.764 direct
 *                           4.764 × 1.2 ÷ 0.9 = 6.352, up to 0.05: $6.40
 * a foot nailed again:      1.5 × 0.02 × 1.05 + 0.01 × 50 = 0.5315; × 1.2 ÷ 0.9 = 0.709: $0.75
 * at worst:                 240 sf × 12 ÷ 7.25 = 397.24, 398 ft; 1,100 + 398 × 6.40 = $3,647.20
 * mark 1:                   21-3/4 in are 3 boards, 96 in long: 24 ft
 * mark 2:                   2 boards × 96 in = 16 ft, of which 1 board × 48 in lies in mark 1: 12 ft
 * mark 3:                   3 boards × 48 in, nailed again: 12 ft
 * change order:             36 × 6.40 + 12 × 0.75 = 230.40 + 9.00 = $239.40; new total $1,339.40
 * </pre>
 */
class BoardDeckTest {

  private static final String MARKS =
      """
      mark,plane,finding,along_in,up_in,width_in,height_in,boards,on,probe_in,bill
      1,W,rot,16,0,96,21.75,,2027-05-17,1,
      2,W,rot,64,14.5,96,,2,2027-05-17,,
      3,W,loose,0,58,48,,3,2027-05-17,,
      4,W,stain,0,100,48,10,,2027-05-17,,
      5,W,hole,100,100,1,1,,2027-05-17,,none
      """;

  @TempDir private Path folder;
  private LifeFolder job;

  @BeforeEach
  void start() throws IOException {
    job = new LifeFolder(Files.createDirectories(folder.resolve("job")));
    job.write(
        "job.csv",
        """
        key,value,note
        job_name,A shed of boards,
        customer,Nobody at all,
        site,Nowhere,
        prepared_by,A test,
        quote_number,B-1,
        quote_date,2027-05-04,
        valid_days,30,
        looked_at,the eave from below,
        not_looked_at,the rest,
        base_roofing_usd,1000,
        permit_usd,100,
        planned_sheets,0,
        credit_usd,0,
        support_spacing_in,16,
        edge_spacing_in,6,
        field_spacing_in,12,
        blocked_edges,no,
        stage,surveyed,
        """);
    job.write("planes.csv", "plane,eave_ft,slope_length_ft,deck,board_in\nW,20,12,boards,7-1/4\n");
    job.write("prices.csv", "item,usd\nsheet,40\nnail,0.02\nboard_ft,1.50\n");
    job.write(
        "rates.csv",
        """
        rate,value
        labor_usd_per_h,50
        overhead_pct,20
        margin_pct,10
        tax_pct,5
        waste_pct,10
        disposal_usd_per_ton,80
        sheet_disposal_lb,50
        planned_sheet_h,0.5
        extra_sheet_h,1
        order_spare_pct,10
        nails_per_box,1000
        board_ft_h,0.06
        renail_ft_h,0.01
        """);
    job.write(
        "stages.csv",
        "stage,part_pct,usd,when\ndeposit,10,,on signing\nlast,90,,when it is done\n");
  }

  private void openUp() {
    job.done("quote", "--issue", "--on", "2027-05-04");
    job.done("agree", "--on", "2027-05-12");
    job.fact("opened_on", "2027-05-17");
    job.write("marks.csv", MARKS);
  }

  private static List<String> texts(byte[] workbook) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> texts.add(cell.toString()))));
    }
    return texts;
  }

  @Test
  void theQuote_sellsAFootOfBoard_andNoSheets() throws IOException {
    CommandRun ran = job.done("quote", "--issue", "--on", "2027-05-04");

    assertThat(ran.out()).contains("the homeowner pays $1,100.00, at worst $3,647.20");
    assertThat(texts(job.bytes("sent/B-1-issue-1.xlsx")))
        .contains(
            "Deck board taken out and replaced, each foot of board",
            "Feet of board that could turn out bad at most, and what all of them cost",
            "A bad board")
        .noneMatch(text -> text.contains("deck sheet"));
    job.done("agree", "--on", "2027-05-12");
    assertThat(job.lines("agreed.csv"))
        .contains(
            "board,ft,6.40,,,398,Deck board taken out and replaced",
            "renail,ft,0.75,,,,Deck board nailed again",
            "total,,1100.00,,,,B-1 issue 1")
        .noneMatch(line -> line.startsWith("sheet,"));
  }

  @Test
  void theBill_hasTheFeetOfEachMark_onceEach() throws IOException {
    openUp();
    assertThat(job.done("change-order", "--on", "2027-05-18").out())
        .contains(
            "Deck board taken out and replaced: 36 ft at $6.40, $230.40",
            "Deck board nailed again: 12 ft at $0.75, $9.00",
            "the homeowner pays $1,339.40 with it");
    assertThat(job.lines("order_lines.csv"))
        .contains("01,board,ft,36,230.40,\"1: 24, 2: 12\"", "01,renail,ft,12,9.00,3: 12");
    assertThat(texts(job.bytes("change-order-01.xlsx")))
        .contains(
            "plane W, at the gutter, middle",
            "replace: rot, not measured; 2 boards, 8' 0\"; boards in common are counted with No. 1",
            "Feet of board left below the agreed ceiling");

    job.replace("orders.csv", "offered,,,", "approved,Nobody at all,signed,2027-05-18");
    assertThat(job.done("close", "--on", "2027-05-20").out())
        .contains(
            "the homeowner pays $1,339.40",
            "Deck board taken out and replaced: 36 ft found, 0 in the price, 36 billed besides");
    assertThat(texts(job.bytes("invoice.xlsx")))
        .contains("plane W, at the gutter, middle", "plane W, half way up, left");
    // a history counts places, and boards have none
    assertThat(folder.resolve("history.csv")).doesNotExist();
  }

  /** A picture is what it was when a document showed it, or it is refused. */
  @Test
  void aPictureThatADocumentShowed_isNotChangedInSilence() throws IOException {
    openUp();
    Path picture = job.path().resolve("1.png");
    Files.copy(Path.of("demo-data/whole-life/5-opened/photos/L-1-open.png"), picture);
    job.write("photos.csv", "photo,mark,view\n1.png,1,before\nlost.png,2,before\n");
    job.done("change-order", "--on", "2027-05-18");
    String hash = HexFormat.of().formatHex(sha256().digest(Files.readAllBytes(picture)));
    assertThat(job.lines("photos.csv"))
        .containsExactly("photo,mark,view,sha256", "1.png,1,before," + hash, "lost.png,2,before,");

    Files.copy(
        Path.of("demo-data/whole-life/5-opened/photos/L-2-open.png"),
        picture,
        StandardCopyOption.REPLACE_EXISTING);
    assertThat(job.run("change-order", "--on", "2027-05-19").err())
        .contains(
            "photos.csv, line 2, column photo: \"1.png\" is not the picture that a document showed:");
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** No more than 398 ft are ever billed: 20 boards of 20 ft are 400 ft. */
  @Test
  void noMoreIsBilled_thanThePlaneHas() {
    openUp();
    job.write(
        "marks.csv",
        "mark,plane,finding,along_in,up_in,width_in,boards,on\n1,W,rot,0,0,240,20,2027-05-17\n");
    // 20 × 7.25 = 145 in, an inch beyond the ridge at 144
    assertThat(job.done("change-order", "--on", "2027-05-18").out())
        .contains("Deck board taken out and replaced: 398 ft at $6.40, $2,547.20");
  }

  @Test
  void boardsAndNails_areOrdered() throws IOException {
    openUp();
    job.done("papers", "-o", folder.resolve("papers"));
    List<String> order =
        texts(Files.readAllBytes(folder.resolve("papers").resolve("order-list.xlsx")));
    // 36 ft × 1.10 = 39.6, up to 40 ft
    int at = order.indexOf("Deck boards, as wide as the old");
    assertThat(order.subList(at, at + 3)).containsExactly(order.get(at), "ft", "40.0");
    CommandRun crew = job.done("crew", "-o", folder.resolve("crew.xlsx"));
    assertThat(crew.err()).isEmpty();
    assertThat(texts(Files.readAllBytes(folder.resolve("crew.xlsx"))))
        .contains("The old boards of plane W");
  }

  @Test
  void whatIsToldOfSheets_isRefusedOnBoards() {
    job.write("marks.csv", "mark,plane,finding,sheet\n1,W,rot,W-1-1\n");
    assertThat(job.refused("quote"))
        .isEqualTo(
            "marks.csv, line 2, column sheet: W-1-1 is given, but the deck of plane W is boards and"
                + " has no places; give along_in, up_in, width_in, and height_in or boards");
    job.write(
        "marks.csv",
        "mark,plane,finding,along_in,up_in,width_in,boards,action\n1,W,rot,0,0,96,2,relieve\n");
    assertThat(job.refused("quote"))
        .isEqualTo(
            "marks.csv, line 2, column action: relieve is done to sheets, and the deck of plane W is"
                + " boards; what may be done to them is replace, refasten, cover, dry, watch or stop");
    job.write(
        "marks.csv", "mark,plane,finding,along_in,up_in,width_in,boards\n1,W,tight,0,0,96,2\n");
    assertThat(job.refused("quote"))
        .contains("marks.csv, line 2, column finding: ", "by the rules relieve is done to sheets");
    job.write(
        "marks.csv",
        "mark,plane,finding,along_in,up_in,width_in,boards,sound_nails\n1,W,rot,0,0,96,2,9\n");
    assertThat(job.refused("quote"))
        .contains("column sound_nails: sound_nails is told of sheets, but");
    job.write(
        "marks.csv",
        "mark,plane,finding,along_in,up_in,width_in,height_in,boards\n1,W,rot,0,0,96,15,2\n");
    assertThat(job.refused("quote"))
        .contains("column boards: so many boards and height_in are both given");
    job.write("marks.csv", "mark,plane,finding,along_in,up_in,width_in\n1,W,rot,0,0,96\n");
    assertThat(job.refused("quote"))
        .contains(
            "column height_in: it is empty; a mark on boards takes along_in, up_in, width_in, and"
                + " height_in or boards");
  }

  @Test
  void aPlaneOfBoards_saysWhatOneCovers_andNothingOfSheets() {
    job.replace("planes.csv", "boards,7-1/4", "boards,");
    assertThat(job.refused("quote"))
        .contains("planes.csv, line 2, column board_in: it is empty, but the deck is boards; give");
    job.write(
        "planes.csv",
        "plane,eave_ft,slope_length_ft,deck,board_in,joint_in\nW,20,12,boards,7.25,48\n");
    assertThat(job.refused("quote"))
        .contains("column joint_in: it tells how sheets lie, but the deck is boards");
    job.write("planes.csv", "plane,eave_ft,slope_length_ft,board_in\nW,20,12,7.25\n");
    assertThat(job.refused("quote"))
        .contains("column board_in: it is given, but the deck is not boards");
    job.write("planes.csv", "plane,eave_ft,slope_length_ft,deck,board_in\nW,20,12,boards,7.25\n");
    job.write("joints.csv", "plane,course,joint_in\nW,1,40\n");
    assertThat(job.refused("quote"))
        .contains(
            "joints.csv, line 2, column plane: the deck of plane W is boards, and has no end");
    job.write("joints.csv", "plane,course,joint_in\n");
    job.write("zones.csv", "zone,plane,places\neave,W,4\n");
    assertThat(job.run("quote").err())
        .contains(
            "zones.csv, line 2, column plane: the deck of plane W is boards, and has no places");
  }

  @Test
  void aFootOfBoardWithoutAPrice_isMissed() {
    job.replace("prices.csv", "board_ft,1.50\n", "");
    assertThat(job.refused("quote"))
        .startsWith("prices.csv: board_ft is missing: Deck board, a foot, ")
        .endsWith("without it \"board\" has no price");
  }

  /** One side of sheets, the other of boards: each by its own unit, both in the worst case. */
  @Test
  void aRoofOfBoth_countsEachByItsOwnUnit() throws IOException {
    job.write(
        "planes.csv",
        "plane,eave_ft,slope_length_ft,deck,board_in\nW,20,12,boards,7-1/4\nE,20,12,sheets,\n");
    job.replace("job.csv", "planned_sheets,0,", "planned_sheets,2,");
    // a sheet: (40 × 1.10 + 43 × 0.02) × 1.05 + 50 lb × 80 ÷ 2000 + 50 h × 1 = 99.103 direct, less
    // half an hour for one in the price: 74.103; × 1.2 ÷ 0.9 = 132.14, $133, and 98.80, $99.
    // Plane E has 3 courses, each of two places of 8 ft and one of 4 ft, 16 sq ft, that counts one
    // half: 7.5 in all. 1,100 + 2 × 99 = 1,298, and 5.5 × 133 + 2,547.20 more at worst.
    assertThat(job.done("quote", "--issue", "--on", "2027-05-04").out())
        .contains("the homeowner pays $1,298.00, at worst $4,576.70");
    assertThat(texts(job.bytes("sent/B-1-issue-1.xlsx")))
        .anyMatch(text -> text.startsWith("Two deck sheets are in this price."))
        .anyMatch(text -> text.startsWith("Part of the deck is of boards."));
    assertThat(job.lines("places.csv")).noneMatch(line -> line.contains("W-"));
    job.done("agree", "--on", "2027-05-12");
    assertThat(job.lines("agreed.csv"))
        .anyMatch(line -> line.startsWith("sheet,half,133.00,2,0.00,"))
        .anyMatch(line -> line.startsWith("board,ft,6.40,,,398,"));
  }
}
