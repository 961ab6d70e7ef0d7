package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small lists whose best plan can be checked by hand; kerf 1/8 in unless said. */
class SolveCommandTest {

  @TempDir private Path folder;

  private Path table(String text) throws IOException {
    return Files.writeString(folder.resolve("pieces.csv"), text.replace('|', '\n') + "\n");
  }

  private CommandRun cutStock(String pieces, String options) throws IOException {
    Object[] words = ("solve cut_stock TABLE " + options).split(" ");
    words[2] = String.valueOf(table("length_in,count|" + pieces));
    return CommandRun.of(words);
  }

  @ParameterizedTest(name = "{0} of {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "32,3; stock_ft=8 stock_usd=1; total 2.00 usd, at least 2.00, proven", // 3 x 32 + 2 kerfs
        // are 96-1/4
        "31-7/8,3; stock_ft=8 stock_usd=1; total 1.00 usd, at least 1.00, proven",
        "96,1; stock_ft=8 stock_usd=1; total 1.00 usd, at least 1.00, proven",
        "95-15/16,1; stock_ft=8 stock_usd=1; total 1.00 usd, at least 1.00, proven",
        "119,2; stock_ft=10,20 stock_usd=10.42,22.96; total 20.84 usd, at least 20.84, proven",
        "119,1|121,1; stock_ft=10,20 stock_usd=10.42,22.96; total 33.38 usd, at least 33.38, proven|with each piece 1/16 in shorter: 22.96 usd",
        "70,2; stock_ft=8,12,16 stock_usd=7.98,11.97,16.88; total 11.97 usd, at least 11.97, proven",
        "95-1/2,3; stock_ft=16 stock_usd=9 trim_in=1; total 27.00 usd, at least 27.00, proven",
        "59,2; stock_ft=8 stock_usd=7.98 on_hand_in=60; total 7.98 usd, at least 7.98, proven",
        "5,0; stock_ft=8 stock_usd=7.98; total 0.00 usd, at least 0.00, proven"
      })
  void cutStock_isAsCheap_asByHand(String pieces, String options, String summary)
      throws IOException {
    CommandRun ran = cutStock(pieces, options);
    assertThat(ran.err()).isEqualTo(summary.replace('|', '\n') + "\n");
    assertThat(ran.status()).isZero();
  }

  @Test
  void cutStock_printsALineForEachStick() throws IOException {
    assertThat(cutStock("31-7/8,3|60,1", "stock_ft=8,10 stock_usd=4.10,5.35").out())
        .isEqualTo(
            """
            stock_ft,usd,pieces,waste_in
            8,4.10,60+31.875,4
            8,4.10,31.875+31.875,32.125
            """);
  }

  @Test
  void cutStock_saysWhatEachPieceIsFor() throws IOException {
    Path pieces = table("length_in,count,label|31-7/8,2,block|31-7/8,1,|60,1,scab");
    assertThat(CommandRun.of("solve", "cut_stock", pieces, "stock_ft=8", "stock_usd=4.10").out())
        .isIn(
            """
            stock_ft,usd,pieces,waste_in,labels
            8,4.10,60+31.875,4,scab+block
            8,4.10,31.875+31.875,32.125,block+-
            """,
            """
            stock_ft,usd,pieces,waste_in,labels
            8,4.10,60+31.875,4,scab+-
            8,4.10,31.875+31.875,32.125,block+block
            """);
  }

  /**
   * 2 × 95-1/2 + 1/8 is 191-1/8, a sixteenth less on each is 191: 16 ft less half an inch at each
   * end.
   */
  @Test
  void cutStock_saysWhatHalfASawCutLessWouldSave() throws IOException {
    String options = "stock_ft=16 stock_usd=9 trim_in=1/2";
    assertThat(cutStock("95-1/2,2", options).err())
        .isEqualTo(
            "total 18.00 usd, at least 18.00, proven\nwith each piece 1/16 in shorter: 9.00 usd\n");
    assertThat(cutStock("95-9/16,2", options).err())
        .as("a sixteenth less is still an eighth too long")
        .isEqualTo("total 18.00 usd, at least 18.00, proven\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "97,1; stock_ft=8 stock_usd=1; pieces.csv, line 2: this piece cannot be cut: 97 in is longer than every stick",
        "9,1; stock_ft=8,10 stock_usd=1; stock_ft names 2 lengths and stock_usd 1 prices",
        "9,1; kerf=1; \"kerf=1\" is not an option of this solver; it has stock_ft=",
        "9,1; stock_ft=8 stock_usd=1 kerf_in=9; kerf_in is 9; it must be from 0 to 2",
        "nine,1; stock_ft=8 stock_usd=1; pieces.csv, line 2, column length_in: ",
        "9,1.5; stock_ft=8 stock_usd=1; pieces.csv, line 2, column count: count is 1.5; it must be a whole number from 0 to 5000"
      })
  void cutStock_saysInOneLineWhatIsWrong(String pieces, String options, String said)
      throws IOException {
    CommandRun ran = cutStock(pieces, options);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith(said).hasLineCount(1);
  }

  private CommandRun cutSheets(String pieces, String options) throws IOException {
    Object[] words = ("solve cut_sheets TABLE " + options).strip().split(" ");
    words[2] = String.valueOf(table("width_in,height_in,count,label|" + pieces));
    return CommandRun.of(words);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "31-7/8,47-7/8,3,a; ''; 1",
        "32,47-7/8,3,a; ''; 2", // 96-1/4
        "47-7/8,23-7/8,4,a; ''; 1",
        "60,20,2,a|36,28,2,b; kerf_in=0; 2", // a pinwheel would take one, no saw can cut it
        "95-7/8,11-7/8,7,a; ''; 2",
        "95-7/8,12,7,a; ''; 3",
        "48,24,1,a|96,48,1,b; on_hand_in=48x24; 1"
      })
  void cutSheets_takeAsFew_asByHand(String pieces, String options, int sheets) throws IOException {
    CommandRun ran = cutSheets(pieces, options);
    assertThat(ran.err()).isEqualTo("sheets %1$d, at least %1$d, proven%n".formatted(sheets));
    assertThat(ran.status()).isZero();
  }

  /** 2 × 48 + 1/8 is more than 96; 2 × 47-15/16 + 1/8 is 96, and half of that 48: four a sheet. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "48,24,5,a; ''; sheets 5, at least 5, proven|with each piece 1/16 in less each way: 2 sheets|",
        "48,24,5,a; kerf_in=1/16; sheets 5, at least 5, proven|with each piece 0.03125 in less each way: 2 sheets|",
        "48,24,5,a; kerf_in=0; sheets 2, at least 2, proven|",
        "48-1/16,24-1/16,5,a; ''; sheets 5, at least 5, proven|",
        "48,24,4,a; ''; sheets 4, at least 4, proven|with each piece 1/16 in less each way: 1 sheet|",
        "47-7/8,23-7/8,5,a; ''; sheets 2, at least 2, proven|"
      })
  void cutSheets_sayWhatHalfASawCutLessWouldSave(String pieces, String options, String said)
      throws IOException {
    assertThat(cutSheets(pieces, options).err()).isEqualTo(said.replace('|', '\n'));
  }

  @Test
  void cutSheets_printALineForEachPiece() throws IOException {
    assertThat(cutSheets("47-7/8,23-7/8,2,eave|48,24,1,vent", "on_hand_in=48x24").out())
        .isEqualTo(
            """
            sheet,x_in,y_in,width_in,height_in,label
            on-hand-1,0,0,48,24,vent
            1,0,0,47.875,23.875,eave
            1,48,0,47.875,23.875,eave
            """);
  }

  @Test
  void cutSheets_neverTurnAPiece() throws IOException {
    CommandRun ran = cutSheets("47-7/8,95-7/8,2,post", "");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .startsWith("pieces.csv, line 2: post cannot be cut: no sheet of 96 by 48 in takes")
        .contains("without turning its strength axis");
  }

  @Test
  void theSameTable_givesTheSamePlan() throws IOException {
    String pieces = "47-7/8,23-7/8,5,a|31-7/8,47-7/8,3,b|95-7/8,11-7/8,7,c|63-7/8,30,4,d";
    CommandRun first = cutSheets(pieces, "");
    for (int i = 0; i < 4; i++) {
      assertThat(cutSheets(pieces, "")).isEqualTo(first);
    }
  }

  @Test
  void anUnknownSolver_isWrongUse() throws IOException {
    CommandRun ran = CommandRun.of("solve", "cut_boards", table("length_in"));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .startsWith(
            "there is no solver \"cut_boards\"; there are cut_sheets, cut_stock, level_plane");
  }
}
