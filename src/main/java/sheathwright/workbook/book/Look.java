package sheathwright.workbook.book;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.workbook.part.CellStyle;
import sheathwright.workbook.part.CellStyle.Height;
import sheathwright.workbook.part.CellStyle.Line;
import sheathwright.workbook.part.CellStyle.Side;
import sheathwright.workbook.part.Font;
import sheathwright.workbook.part.Styles;

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

  /** Words as they are, and numbers with as many places as fit. */
  private static final String PLAIN = CellStyle.GENERAL;

  private static final String YES_OR_NO = "\"yes\";\"yes\";\"no\"";

  private static final String INK = "1F2A24";
  private static final String BARK = "3B4A3F";
  private static final String CHALK = "FFFFFF";
  private static final String STRAW = "FBF3DC";
  private static final String SAWDUST = "EEEBE2";
  private static final String STONE = "5C635E";
  private static final String BRICK = "9A2F1C";
  private static final String LINE = "C9C4B5";

  /** Of a cell that nobody gave a look. */
  static final Font PLAIN_LETTERS = new Font("Arial", 10, INK);

  private final Styles all;
  private boolean showsCountsPlainly;
  private final Map<Part, Map<String, CellStyle>> styles = new EnumMap<>(Part.class);
  private final Map<CellStyle, CellStyle> broken = new HashMap<>();

  Look(Styles all) {
    this.all = all;
  }

  /** Writes pure numbers and counts with as many decimals as they have. */
  void showCountsPlainly() {
    showsCountsPlainly = true;
  }

  /** The look of a part; a number with a format of its own grows smaller before it is cut off. */
  CellStyle of(Part part) {
    return of(part, PLAIN);
  }

  CellStyle of(Part part, Traced value) {
    return of(part, format(value));
  }

  CellStyle of(Part part, String format) {
    return styles
        .computeIfAbsent(part, key -> new HashMap<>())
        .computeIfAbsent(format, key -> made(part, format));
  }

  /** The same look, its words broken into lines. */
  CellStyle broken(CellStyle style) {
    return broken.computeIfAbsent(
        style,
        same -> {
          CellStyle twin = all.like(same);
          twin.shrunk(false);
          twin.broken(true);
          return twin;
        });
  }

  private CellStyle made(Part part, String format) {
    CellStyle style = all.style();
    style.format(format);
    style.font(font(part));
    switch (part) {
      case TITLE, SUBTITLE -> style.fill(BARK);
      case HEADING -> style.edge(Side.BOTTOM, Line.MEDIUM, BARK);
      case COLUMN_HEAD, COLUMN_HEAD_RIGHT -> {
        style.fill(SAWDUST);
        style.edge(Side.BOTTOM, Line.THIN, BARK);
        style.broken(true);
      }
      case NOTE, TEXT, CAUTION -> style.broken(true);
      case INPUT, INPUT_TEXT, LISTED_INPUT_TEXT -> {
        style.fill(STRAW);
        framed(style);
        style.unlock();
        style.broken(part == Part.LISTED_INPUT_TEXT);
      }
      case RESULT, RESULT_TEXT, LISTED_TEXT, LABEL, UNIT, VERDICT, LINK -> {
        style.edge(Side.BOTTOM, Line.HAIR, LINE);
        style.broken(part == Part.LISTED_TEXT);
      }
      case TOTAL, TOTAL_LABEL -> {
        style.edge(Side.TOP, Line.THIN, BARK);
        style.edge(Side.BOTTOM, Line.DOUBLE, BARK);
      }
      case SENTENCE, SENTENCE_AMOUNT -> {
        style.edge(Side.BOTTOM, Line.HAIR, LINE);
        style.broken(true);
      }
      case BOX, BOX_OF_STOP -> {
        style.fill(part == Part.BOX ? SAWDUST : STRAW);
        framed(style);
        style.broken(true);
        style.indent(1);
      }
      case LARGE_HEADING -> style.edge(Side.BOTTOM, Line.MEDIUM, BARK);
      case CAPTION -> {
        style.broken(true);
        style.height(Height.TOP);
      }
      case LARGE_TEXT -> style.broken(true);
      case LARGE_LABEL, LARGE_RESULT, HEADLINE -> {
        style.edge(Side.BOTTOM, Line.HAIR, LINE);
        style.broken(true);
      }
      case SIGNATURE -> {
        style.height(Height.BOTTOM);
        style.unlock();
        style.edge(Side.BOTTOM, Line.THIN, INK);
      }
      case FIGURE, STATUS -> {}
    }
    style.shrunk(!format.equals(PLAIN) && !style.isBroken());
    style.atTheRight(isAtTheRight(part));
    if (part == Part.UNIT
        || part == Part.NOTE
        || part == Part.RESULT_TEXT
        || part == Part.COLUMN_HEAD
        || part == Part.LISTED_TEXT
        || part == Part.VERDICT) {
      style.indent(1);
    }
    if (part == Part.INPUT_TEXT || part == Part.LISTED_INPUT_TEXT) {
      style.quote();
    }
    return style;
  }

  private static boolean isAtTheRight(Part part) {
    return switch (part) {
      case INPUT,
          RESULT,
          TOTAL,
          STATUS,
          COLUMN_HEAD_RIGHT,
          SENTENCE_AMOUNT,
          LARGE_RESULT,
          HEADLINE ->
          true;
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
          false;
    };
  }

  private static Font font(Part part) {
    Font plain = PLAIN_LETTERS;
    return switch (part) {
      case TITLE -> plain.tall(16).bold().in(CHALK);
      case SUBTITLE -> plain.in(CHALK);
      case HEADING -> plain.tall(12).bold().in(BARK);
      case COLUMN_HEAD, COLUMN_HEAD_RIGHT, TOTAL, TOTAL_LABEL, STATUS, VERDICT -> plain.bold();
      case NOTE, CAPTION, SIGNATURE -> plain.in(STONE);
      case LINK -> plain.underlined().in(BARK);
      case LARGE_TEXT, LARGE_LABEL -> plain.tall(14);
      case LARGE_RESULT -> plain.tall(14).bold();
      case LARGE_HEADING -> plain.tall(15).bold().in(BARK);
      case HEADLINE -> plain.tall(20).bold();
      case CAUTION, BOX_OF_STOP -> plain.bold().in(BRICK);
      case FIGURE -> plain.tall(26).bold().in(BARK);
      case SENTENCE, BOX -> plain.tall(11);
      case SENTENCE_AMOUNT -> plain.tall(12).bold();
      case LABEL,
          UNIT,
          TEXT,
          INPUT,
          INPUT_TEXT,
          LISTED_INPUT_TEXT,
          RESULT,
          RESULT_TEXT,
          LISTED_TEXT ->
          plain;
    };
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

  private static void framed(CellStyle style) {
    for (Side side : Side.values()) {
      style.edge(side, Line.THIN, LINE);
    }
  }
}
