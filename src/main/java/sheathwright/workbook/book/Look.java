package sheathwright.workbook.book;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.figure.Figure;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** How cells look: one style for each part that a cell plays and each way of writing its number. */
public final class Look {

  /** The part that a cell plays on its page. */
  public enum Part {
    TITLE,
    SUBTITLE,
    HEADING,
    COLUMN_HEAD,
    COLUMN_HEAD_RIGHT,
    LABEL,
    UNIT,
    TEXT,
    NOTE,
    CAUTION,
    VERDICT,
    INPUT,
    INPUT_TEXT,
    LISTED_INPUT_TEXT,
    RESULT,
    RESULT_TEXT,
    LISTED_TEXT,
    TOTAL,
    TOTAL_LABEL,
    STATUS,
    /** The one number of a page. */
    FIGURE,
    /** A line of a letter. */
    SENTENCE,
    /** The amount that a line of a letter ends with. */
    SENTENCE_AMOUNT,
    /** Words in a frame. */
    BOX,
    /** Words in a frame that must not be overlooked. */
    BOX_OF_STOP,
    LARGE_TEXT,
    LARGE_LABEL,
    LARGE_RESULT,
    LARGE_HEADING,
    HEADLINE,
    SIGNATURE,
    CAPTION,
    /** Where a link leads. */
    LINK
  }

  static final String FONT = "Arial";

  /** Before red, green and blue, as a color in a workbook is written. */
  private static final byte OPAQUE = (byte) 0xFF;

  /** Words as they are, and numbers with as many places as fit. */
  private static final String PLAIN = "General";

  private static final String YES_OR_NO = "\"yes\";\"yes\";\"no\"";

  static final XSSFColor INK = color(0x1F, 0x2A, 0x24);
  private static final XSSFColor BARK = color(0x3B, 0x4A, 0x3F);
  private static final XSSFColor CHALK = color(0xFF, 0xFF, 0xFF);
  private static final XSSFColor STRAW = color(0xFB, 0xF3, 0xDC);
  private static final XSSFColor SAWDUST = color(0xEE, 0xEB, 0xE2);
  private static final XSSFColor STONE = color(0x5C, 0x63, 0x5E);
  private static final XSSFColor BRICK = color(0x9A, 0x2F, 0x1C);
  private static final XSSFColor LINE = color(0xC9, 0xC4, 0xB5);

  private final XSSFWorkbook workbook;
  private boolean showsCountsPlainly;
  private final Map<Part, Map<String, XSSFCellStyle>> styles = new EnumMap<>(Part.class);
  private final Map<Short, XSSFCellStyle> broken = new HashMap<>();

  Look(XSSFWorkbook workbook) {
    this.workbook = workbook;
  }

  /** Writes pure numbers and counts with as many decimals as they have. */
  void showCountsPlainly() {
    showsCountsPlainly = true;
  }

  /** The look of a part; a number with a format of its own grows smaller before it is cut off. */
  XSSFCellStyle of(Part part) {
    return of(part, PLAIN);
  }

  XSSFCellStyle of(Part part, Traced value) {
    return of(part, format(value));
  }

  XSSFCellStyle of(Part part, String format) {
    return styles
        .computeIfAbsent(part, key -> new HashMap<>())
        .computeIfAbsent(format, key -> made(part, format));
  }

  /** The same look, its words broken into lines. */
  XSSFCellStyle broken(XSSFCellStyle style) {
    return broken.computeIfAbsent(
        style.getIndex(),
        index -> {
          XSSFCellStyle twin = workbook.createCellStyle();
          twin.cloneStyleFrom(style);
          twin.setShrinkToFit(false);
          twin.setWrapText(true);
          return twin;
        });
  }

  private XSSFCellStyle made(Part part, String format) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setFont(font(part));
    switch (part) {
      case TITLE, SUBTITLE -> filled(style, BARK);
      case HEADING -> under(style, BorderStyle.MEDIUM, BARK);
      case COLUMN_HEAD, COLUMN_HEAD_RIGHT -> {
        filled(style, SAWDUST);
        under(style, BorderStyle.THIN, BARK);
        style.setWrapText(true);
      }
      case NOTE, TEXT, CAUTION -> style.setWrapText(true);
      case INPUT, INPUT_TEXT, LISTED_INPUT_TEXT -> {
        filled(style, STRAW);
        framed(style);
        style.setLocked(false);
        style.setWrapText(part == Part.LISTED_INPUT_TEXT);
      }
      case RESULT, RESULT_TEXT, LISTED_TEXT, LABEL, UNIT, VERDICT, LINK -> {
        under(style, BorderStyle.HAIR, LINE);
        style.setWrapText(part == Part.LISTED_TEXT);
      }
      case TOTAL, TOTAL_LABEL -> {
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(BARK);
        under(style, BorderStyle.DOUBLE, BARK);
      }
      case SENTENCE, SENTENCE_AMOUNT -> {
        under(style, BorderStyle.HAIR, LINE);
        style.setWrapText(true);
      }
      case BOX, BOX_OF_STOP -> {
        filled(style, part == Part.BOX ? SAWDUST : STRAW);
        framed(style);
        style.setWrapText(true);
        style.setIndention((short) 1);
      }
      case LARGE_HEADING -> under(style, BorderStyle.MEDIUM, BARK);
      case CAPTION -> {
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
      }
      case LARGE_TEXT -> style.setWrapText(true);
      case LARGE_LABEL, LARGE_RESULT, HEADLINE -> {
        under(style, BorderStyle.HAIR, LINE);
        style.setWrapText(true);
      }
      case SIGNATURE -> {
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setLocked(false);
        under(style, BorderStyle.THIN, INK);
      }
      case FIGURE, STATUS -> {}
    }
    style.setShrinkToFit(!format.equals(PLAIN) && !style.getWrapText());
    style.setAlignment(alignment(part));
    if (part == Part.UNIT
        || part == Part.NOTE
        || part == Part.RESULT_TEXT
        || part == Part.COLUMN_HEAD
        || part == Part.LISTED_TEXT
        || part == Part.VERDICT) {
      style.setIndention((short) 1);
    }
    if (part == Part.INPUT_TEXT || part == Part.LISTED_INPUT_TEXT) {
      style.setQuotePrefixed(true);
    }
    return style;
  }

  private static HorizontalAlignment alignment(Part part) {
    return switch (part) {
      case INPUT,
          RESULT,
          TOTAL,
          STATUS,
          COLUMN_HEAD_RIGHT,
          SENTENCE_AMOUNT,
          LARGE_RESULT,
          HEADLINE ->
          HorizontalAlignment.RIGHT;
      case TITLE,
          SUBTITLE,
          HEADING,
          COLUMN_HEAD,
          LABEL,
          UNIT,
          TEXT,
          NOTE,
          CAUTION,
          VERDICT,
          INPUT_TEXT,
          LISTED_INPUT_TEXT,
          RESULT_TEXT,
          LISTED_TEXT,
          TOTAL_LABEL,
          FIGURE,
          SENTENCE,
          BOX,
          BOX_OF_STOP,
          LARGE_TEXT,
          LARGE_LABEL,
          LARGE_HEADING,
          SIGNATURE,
          CAPTION,
          LINK ->
          HorizontalAlignment.LEFT;
    };
  }

  private XSSFFont font(Part part) {
    XSSFFont font = workbook.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints((short) 10);
    font.setColor(INK);
    switch (part) {
      case TITLE -> {
        font.setFontHeightInPoints((short) 16);
        font.setBold(true);
        font.setColor(CHALK);
      }
      case SUBTITLE -> font.setColor(CHALK);
      case HEADING -> {
        font.setFontHeightInPoints((short) 12);
        font.setBold(true);
        font.setColor(BARK);
      }
      case COLUMN_HEAD, COLUMN_HEAD_RIGHT, TOTAL, TOTAL_LABEL, STATUS, VERDICT ->
          font.setBold(true);
      case NOTE, CAPTION, SIGNATURE -> font.setColor(STONE);
      case LINK -> {
        font.setUnderline(FontUnderline.SINGLE);
        font.setColor(BARK);
      }
      case LARGE_TEXT, LARGE_LABEL -> font.setFontHeightInPoints((short) 14);
      case LARGE_RESULT -> {
        font.setFontHeightInPoints((short) 14);
        font.setBold(true);
      }
      case LARGE_HEADING -> {
        font.setFontHeightInPoints((short) 15);
        font.setBold(true);
        font.setColor(BARK);
      }
      case HEADLINE -> {
        font.setFontHeightInPoints((short) 20);
        font.setBold(true);
      }
      case CAUTION, BOX_OF_STOP -> {
        font.setColor(BRICK);
        font.setBold(true);
      }
      case FIGURE -> {
        font.setFontHeightInPoints((short) 26);
        font.setBold(true);
        font.setColor(BARK);
      }
      case SENTENCE, BOX -> font.setFontHeightInPoints((short) 11);
      case SENTENCE_AMOUNT -> {
        font.setFontHeightInPoints((short) 12);
        font.setBold(true);
      }
      case LABEL,
          UNIT,
          TEXT,
          INPUT,
          INPUT_TEXT,
          LISTED_INPUT_TEXT,
          RESULT,
          RESULT_TEXT,
          LISTED_TEXT -> {}
    }
    return font;
  }

  /** How a value is written in a cell; its unit stands beside it. */
  private String format(Traced value) {
    if (!(value instanceof Figure<?> figure)) {
      return PLAIN;
    }
    if (isFlag(figure)) {
      return YES_OR_NO;
    }
    Unit<?> unit = figure.unit();
    if (unit.symbol().startsWith("$")) {
      return unit.decimals() > 2 ? "$#,##0.000" : "$#,##0.00";
    }
    if (unit.equals(Units.SQUARE_FOOT) || unit.equals(Units.FOOT)) {
      return "#,##0.00";
    }
    if (unit.equals(Units.INCH)) {
      return "#,##0.000";
    }
    if (unit.equals(Units.PSI) || unit.equals(Units.POUND) || unit.equals(Units.INCH_POUND)) {
      return "#,##0.0";
    }
    if (showsCountsPlainly && (unit.equals(Units.RATIO) || unit.isCount())) {
      return PLAIN;
    }
    boolean isWhole = figure.refusal().isPresent() || figure.value() == Math.rint(figure.value());
    if (isWhole) {
      return PLAIN;
    }
    if (unit.equals(Units.PERCENT)) {
      return figure.step().isLiteral() ? "#,##0.0##" : "#,##0.0";
    }
    return unit.equals(Units.SHEET) ? "#,##0.0#" : "#,##0.000";
  }

  /** A number that is 1 where something is so and 0 where not, so that they can be added up. */
  private static boolean isFlag(Figure<?> figure) {
    return figure.step() instanceof Step.Chosen chosen
        && chosen.then() instanceof Figure<?> then
        && chosen.otherwise() instanceof Figure<?> otherwise
        && (isLiteral(then, 1) && isLiteral(otherwise, 0)
            || isLiteral(then, 0) && isLiteral(otherwise, 1));
  }

  private static boolean isLiteral(Figure<?> figure, double number) {
    return figure.step().isLiteral() && !figure.isAbsent() && figure.value() == number;
  }

  private static void filled(XSSFCellStyle style, XSSFColor color) {
    style.setFillForegroundColor(color);
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static void under(XSSFCellStyle style, BorderStyle border, XSSFColor color) {
    style.setBorderBottom(border);
    style.setBottomBorderColor(color);
  }

  private static void framed(XSSFCellStyle style) {
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
    style.setTopBorderColor(LINE);
    style.setBottomBorderColor(LINE);
    style.setLeftBorderColor(LINE);
    style.setRightBorderColor(LINE);
  }

  private static XSSFColor color(int red, int green, int blue) {
    return new XSSFColor(new byte[] {OPAQUE, (byte) red, (byte) green, (byte) blue}, null);
  }
}
