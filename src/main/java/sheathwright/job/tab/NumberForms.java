package sheathwright.job.tab;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the numbers of a workbook's cells are shown as: dates and percentages are numbers in the
 * file, and somebody typed them otherwise (ECMA-376, 18.8.30).
 */
final class NumberForms {

  private static final int FIRST_DATE = 14;
  private static final int LAST_DATE = 17;
  private static final int DATE_AND_TIME = 22;
  private static final int PERCENT = 9;
  private static final int PERCENT_WITH_DECIMALS = 10;
  private static final LocalDate DAY_NONE = LocalDate.of(1899, 12, 30);
  private static final LocalDate DAY_NONE_OF_1904 = LocalDate.of(1904, 1, 1);

  /** Days of the calendar that a date may be: up to the year 9999. */
  private static final int LAST_DAY = 2_958_465;

  private enum Form {
    PLAIN,
    DATE,
    PERCENT
  }

  private final List<Form> ofStyles = new ArrayList<>();
  private final boolean countsFrom1904;

  /**
   * The forms of a workbook.
   *
   * @param countsFrom1904 whether its days are counted from 1904
   */
  NumberForms(WorkbookParts parts, boolean countsFrom1904) {
    this.countsFrom1904 = countsFrom1904;
    if (parts.has("xl/styles.xml")) {
      read(parts.part("xl/styles.xml"));
    }
  }

  private void read(PartReader styles) {
    Map<String, Form> own = new HashMap<>();
    boolean isOfCells = false;
    while (styles.next()) {
      if (styles.begins("numFmt")) {
        String code = styles.attribute("formatCode").orElse("");
        own.put(styles.attribute("numFmtId").orElse(""), form(code));
      } else if (styles.begins("cellXfs")) {
        isOfCells = true;
      } else if (styles.ends("cellXfs")) {
        isOfCells = false;
      } else if (isOfCells && styles.begins("xf")) {
        String id = styles.attribute("numFmtId").orElse("0");
        ofStyles.add(own.containsKey(id) ? own.get(id) : builtIn(Integer.parseInt(id)));
      }
    }
  }

  private static Form builtIn(int id) {
    if (id >= FIRST_DATE && id <= LAST_DATE || id == DATE_AND_TIME) {
      return Form.DATE;
    }
    return id == PERCENT || id == PERCENT_WITH_DECIMALS ? Form.PERCENT : Form.PLAIN;
  }

  /** By a format's code, without what stands in it as words, colors or escapes. */
  private static Form form(String code) {
    String bare = code.replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.", "");
    if (bare.matches("(?i).*[dy].*")) {
      return Form.DATE;
    }
    return bare.contains("%") ? Form.PERCENT : Form.PLAIN;
  }

  /** A cell's number as somebody would type it. */
  String text(double number, int style) {
    return switch (style < ofStyles.size() ? ofStyles.get(style) : Form.PLAIN) {
      case PLAIN -> plain(BigDecimal.valueOf(number));
      case PERCENT -> plain(BigDecimal.valueOf(number).movePointRight(2)) + " %";
      case DATE ->
          number >= 1 && number <= LAST_DAY
              ? (countsFrom1904 ? DAY_NONE_OF_1904 : DAY_NONE).plusDays((long) number).toString()
              : plain(BigDecimal.valueOf(number));
    };
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
