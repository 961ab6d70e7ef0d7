package sheathwright.job.cell;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.job.fill.FilledRow;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.CellRules;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * A library function as a cell calls it: numbers, texts and blanks go in, numbers and texts come
 * out. What is refused comes out as a text that begins with {@value #REFUSED}: nothing is thrown.
 */
public final class CellCall {

  /** Before the reason why there is no number. */
  public static final String REFUSED = "refused: ";

  private static final double LARGEST_PLAIN = 1e15;

  private static final Source CELL = Source.given("cell");

  private CellCall() {}

  /**
   * A function's results, one a cell.
   *
   * @param function its name
   * @param given a number, a text or null for each parameter, in order; what is left out at the end
   *     takes its preset. A text such as {@code waste_pct=10} says whose value it is.
   */
  public static Object[] results(String function, Object... given) {
    return answered(
        function,
        card ->
            card.answer(arguments(card, given)).stream().map(CellCall::said).toArray(Object[]::new),
        reason -> new Object[] {reason});
  }

  /** How the results are worked out, a step after the steps it needs. */
  public static String working(String function, Object... given) {
    return answered(
        function, card -> Working.of(card.answer(arguments(card, given))), reason -> reason);
  }

  /**
   * A function filled down a table: as many rows, of its results and what is wrong, headings first.
   *
   * @param table the headings are names of parameters
   */
  public static Object[][] table(String function, Object[][] table) {
    return answered(
        function,
        card -> filled(FilledTable.of(card, CsvFile.parse("cells", text(table)))),
        reason -> new Object[][] {{reason}});
  }

  private static <T> T answered(
      String function, Function<Card, T> answer, Function<String, T> refused) {
    try {
      return answer.apply(Catalog.shipped().named(function));
    } catch (RefusedException refusal) {
      return refused.apply(REFUSED + refusal.getMessage());
    } catch (ProblemsException wrong) {
      return refused.apply(
          REFUSED + wrong.problems().stream().map(Problem::toString).collect(joining("; ")));
    }
  }

  private static List<Traced> arguments(Card card, Object... given) {
    List<Parameter> parameters = card.parameters();
    String[] texts = new String[parameters.size()];
    Arrays.fill(texts, "");
    int next = 0;
    for (Object value : given) {
      String text = text(value, next < texts.length ? parameters.get(next).column() : card.name());
      Parameter named = card.parameter(text.substring(0, Math.max(0, text.indexOf('='))));
      if (named != null) {
        texts[parameters.indexOf(named)] = text.substring(text.indexOf('=') + 1);
      } else if (next < texts.length) {
        texts[next++] = text;
      } else if (!text.isEmpty()) {
        throw new RefusedException(
            "%s takes %s: \"%.60s\" is one more"
                .formatted(
                    card.name(),
                    parameters.stream().map(Parameter::column).collect(joining(", ")),
                    text));
      }
    }
    List<Traced> arguments = new ArrayList<>();
    for (int i = 0; i < texts.length; i++) {
      Parameter parameter = parameters.get(i);
      arguments.add(parameter.read(readable(texts[i], parameter), CELL));
    }
    return arguments;
  }

  private static String readable(String text, Parameter parameter) {
    try {
      return CellRules.readable(text);
    } catch (RefusedException tooLong) {
      throw new RefusedException(parameter.column() + ": " + tooLong.getMessage());
    }
  }

  /**
   * What stands in a cell; a range of one cell is the cell.
   *
   * @param where it is meant for, for messages
   */
  private static String text(Object cell, String where) {
    if (cell instanceof Object[] range && range.length == 1) {
      return text(range[0], where);
    }
    if (cell != null && cell.getClass().isArray()) {
      throw new RefusedException(where + ": a range of cells is given; it takes one cell");
    }
    if (cell instanceof Double number && Math.abs(number) < LARGEST_PLAIN) {
      return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
    return cell == null ? "" : cell.toString();
  }

  private static Object said(Traced result) {
    return result
        .refusal()
        .filter(refusal -> !refusal.isAnswer())
        .<Object>map(refusal -> REFUSED + refusal.reason())
        .orElseGet(() -> value(result));
  }

  private static Object value(Traced result) {
    if (result instanceof Figure<?> figure && figure.refusal().isEmpty() && !figure.isAbsent()) {
      return figure.value();
    }
    return result instanceof Choice<?> word && word.refusal().isEmpty()
        ? word.plain()
        : result.shown();
  }

  /** A table as text, each cell between quotation marks. */
  private static String text(Object[][] table) {
    return Arrays.stream(table)
        .map(
            line ->
                Arrays.stream(line)
                    .map(
                        cell -> '"' + text(cell, "a cell of the table").replace("\"", "\"\"") + '"')
                    .collect(joining(",")))
        .collect(joining("\n"));
  }

  private static Object[][] filled(FilledTable filled) {
    List<Object[]> lines = new ArrayList<>();
    List<Object> head = new ArrayList<>();
    filled.card().results().stream().map(Result::column).forEach(head::add);
    head.add("error");
    lines.add(head.toArray());
    for (FilledRow row : filled.rows()) {
      List<Object> line = new ArrayList<>();
      row.results().forEach(result -> line.add(said(result)));
      while (line.size() < filled.card().results().size()) {
        line.add("");
      }
      line.add(row.error());
      lines.add(line.toArray());
    }
    return lines.toArray(Object[][]::new);
  }
}
