package sheathwright.workbook.calculator;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/**
 * Inputs of one page changed by chance, within what the program lets somebody type, and what Java
 * says to the same.
 */
record Trial(Card card, List<String> typed) {

  private static final double RELATIVE = 1e-9;

  /** How long a thing is, in numbers that people type. */
  private static final MathContext THREE_DIGITS = new MathContext(3);

  /** One input in so many is put to an end of its range. */
  private static final int ENDS = 7;

  /** Changes about a share of the inputs from those that stand on a page. */
  static Trial of(OpenPage page, double share, Random chance) {
    List<String> typed = new ArrayList<>();
    for (Cell input : page.inputs()) {
      boolean isChanged = chance.nextDouble() < share;
      typed.add(isChanged ? typed(page.held(input), chance) : standing(input));
    }
    return new Trial(page.card(), typed);
  }

  private static String standing(Cell input) {
    return switch (input.getCellType()) {
      case NUMERIC -> BigDecimal.valueOf(input.getNumericCellValue()).toPlainString();
      case STRING -> input.getStringCellValue();
      default -> "";
    };
  }

  private static String typed(OpenPage.Held held, Random chance) {
    if (!held.words().isEmpty()) {
      return held.words().get(chance.nextInt(held.words().size()));
    }
    if (chance.nextInt(ENDS) == 0) {
      return plain(chance.nextBoolean() ? held.least() : held.most());
    }
    double between = held.least() + chance.nextDouble() * (held.most() - held.least());
    double rounded =
        held.isWhole()
            ? Math.rint(between)
            : BigDecimal.valueOf(between).round(THREE_DIGITS).doubleValue();
    return plain(Math.max(held.least(), Math.min(held.most(), rounded)));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Types them into a page. */
  void typeInto(OpenPage page) {
    List<Cell> inputs = page.inputs();
    for (int i = 0; i < inputs.size(); i++) {
      type(inputs.get(i), typed.get(i), card.parameters().get(i).options() == null);
    }
  }

  private static void type(Cell cell, String text, boolean isNumber) {
    if (text.isEmpty()) {
      cell.setBlank();
    } else if (isNumber) {
      cell.setCellValue(Double.parseDouble(text));
    } else {
      cell.setCellValue(text);
    }
  }

  /** What Java gives: a number, a word, or a refusal for each result. */
  List<Object> expected() {
    try {
      List<Traced> arguments = new ArrayList<>();
      for (int i = 0; i < typed.size(); i++) {
        Parameter parameter = card.parameters().get(i);
        arguments.add(parameter.read(typed.get(i), Source.GIVEN));
      }
      return card.answer(arguments).stream().map(Trial::said).toList();
    } catch (RefusedException outright) {
      return card.results().stream().<Object>map(result -> Refused.REFUSED).toList();
    }
  }

  /** Stands for every value that is not given. */
  enum Refused {
    REFUSED
  }

  private static Object said(Traced result) {
    if (result.refusal().isPresent()) {
      return result.refusal().get().isAnswer() ? result.shown() : Refused.REFUSED;
    }
    return result instanceof Figure<?> figure
        ? (Object) figure.value()
        : ((Choice<?>) result).plain();
  }

  /** What an engine's cell says, in the same terms. */
  static Object said(CellValue value) {
    return value == null
        ? ""
        : switch (value.getCellType()) {
          case NUMERIC -> value.getNumberValue();
          case STRING -> value.getStringValue();
          case ERROR -> Refused.REFUSED;
          default -> "";
        };
  }

  /** What a cell holds, in the same terms. */
  static Object held(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> cell.getNumericCellValue();
      case STRING -> cell.getStringCellValue();
      case ERROR -> Refused.REFUSED;
      default -> "";
    };
  }

  /** Where an engine says something else than Java; empty where both say the same. */
  List<String> differences(List<Object> engine) {
    List<Object> java = expected();
    List<String> differences = new ArrayList<>();
    for (int i = 0; i < java.size(); i++) {
      if (!same(java.get(i), engine.get(i))) {
        differences.add(
            "%s %s, %s: Java says %s, cells %s"
                .formatted(
                    card.name(),
                    typed,
                    card.results().get(i).column(),
                    java.get(i),
                    engine.get(i)));
      }
    }
    return differences;
  }

  private static boolean same(Object java, Object engine) {
    return java instanceof Double left && engine instanceof Double right
        ? Math.abs(left - right) <= RELATIVE * Math.max(Math.abs(left), Math.abs(right))
        : java.equals(engine);
  }

  /** Whether Java gives every result. */
  boolean isAnswered() {
    return !expected().contains(Refused.REFUSED);
  }
}
