package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.cutting.Patience;
import sheathwright.figure.RefusedException;
import sheathwright.job.solve.Solver;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Filling;
import sheathwright.job.table.JobText;
import sheathwright.job.table.ProblemsException;

/** A bad cell is said in the same words, whoever reads it. */
class CellFaultsTest {

  private static final Patience PATIENCE = () -> 1;
  private static final String LENGTH =
      "#: \"%s\" is not a length that can be read: inches are written 1-3/8, 9 1/4 or 13.5, feet and inches 16' 9-1/4\"";

  /**
   * The words, with the cell in them, and the column and what it takes for {@code #} and {@code @}.
   */
  private static final Map<String, String> SAID =
      Map.of(
          "empty", "# is missing; give @ inches",
          "length", LENGTH,
          "date",
              LENGTH
                  + "; a spreadsheet program may have made a date of it: format the column as text and type it again",
          "beyond", "# is %s; it must be @",
          "endless", "#: \"%s\" is not a number that can be used");

  @ParameterizedTest(name = "{1}: {0}")
  @CsvSource({
    "'', empty",
    "wide, length",
    "$6, length",
    "6 %, length",
    "6 psf, length",
    "6-Jul, date",
    "-1/8, beyond",
    "10000-1/16, beyond",
    "1e999, endless"
  })
  void aBadNumber_isSaidInTheSameWords(String cell, String fault) {
    String said = SAID.get(fault).formatted(cell);
    // The range of fastening/count/Nailing, whose rule is said with it.
    String rule = said.contains("@") ? ", 6 is usual, 4 in high wind" : "";
    String ofEdge = said(said, "edge_spacing_in", "from 1 to 24") + rule;
    assertThat(filled("edge_spacing_in", cell)).isEqualTo(ofEdge);
    assertThat(inJob("edge_spacing_in,6", "edge_spacing_in," + cell)).isEqualTo(ofEdge);
    assertThat(inPieces(cell))
        .isEqualTo(under(said(said, "length_in", "from 0.015625 to 10000"), "length_in"));
    assertThat(option("kerf_in", cell)).isEqualTo(said(said, "kerf_in", "from 0 to 2"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "maybe | blocked_edges is \"maybe\"; it must be one of yes, no",
        "yess | blocked_edges is \"yess\" (did you mean yes?); it must be one of yes, no",
        "6 | blocked_edges is \"6\"; it must be one of yes, no",
        "16-Jul | blocked_edges is \"16-Jul\"; it must be one of yes, no; a spreadsheet program may have made a date of it: format the column as text and type it again"
      })
  void anUnknownWord_isSaidInTheSameWords(String cell, String said) {
    assertThat(filled("blocked_edges", cell)).isEqualTo(said);
    assertThat(inJob("blocked_edges,no", "blocked_edges," + cell)).isEqualTo(said);
  }

  private static String said(String words, String column, String range) {
    return words.replace("#", column).replace("@", range);
  }

  private static String under(String said, String column) {
    return said.replaceFirst("^" + column + ": ", "");
  }

  /** What stands in the column of errors. */
  private static String filled(String column, String cell) {
    String header = "support_spacing_in,field_spacing_in,edge_spacing_in,blocked_edges";
    String line = column.equals("blocked_edges") ? "16,12,6," + cell : "16,12," + cell + ",no";
    return Filling.of("nails_per_sheet", header, line).column("error").get(0);
  }

  private static String inJob(String line, String spoiled) {
    String said = JobText.small().with("job", line, spoiled).problems().get(0);
    return said.replaceFirst("^job.csv, line \\d+, column value: ", "");
  }

  private static String inPieces(String cell) {
    CsvFile pieces = CsvFile.parse("pieces.csv", "length_in,count\n" + cell + ",1\n");
    Map<String, String> options = Map.of("stock_ft", "8", "stock_usd", "1");
    try {
      Solver.CUT_STOCK.solve(pieces, options, seconds -> PATIENCE);
      return "";
    } catch (ProblemsException wrong) {
      return wrong.problems().get(0).message();
    }
  }

  private static String option(String name, String cell) {
    CsvFile pieces = CsvFile.parse("pieces.csv", "length_in,count\n9,1\n");
    Map<String, String> options = Map.of("stock_ft", "8", "stock_usd", "1", name, cell);
    try {
      Solver.CUT_STOCK.solve(pieces, options, seconds -> PATIENCE);
      return "";
    } catch (RefusedException wrong) {
      return wrong.getMessage();
    }
  }
}
