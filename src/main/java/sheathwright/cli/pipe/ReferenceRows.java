package sheathwright.cli.pipe;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Result;
import sheathwright.figure.Choice;
import sheathwright.figure.Limits;
import sheathwright.figure.Unit;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.Field;

/** The library functions and the tables of a job as rows for another program. */
public final class ReferenceRows {

  private ReferenceRows() {}

  /** A row for each function. */
  public static List<Map<String, Object>> functions(List<Card> cards) {
    return cards.stream().map(ReferenceRows::function).toList();
  }

  /** A row for each table. */
  public static List<Map<String, Object>> tables() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (JobTable table : JobTable.values()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("table", table.word());
      row.put("file", table.file());
      row.put("meaning", table.meaning());
      row.put("needed", table.isNeeded());
      rows.add(row);
    }
    return rows;
  }

  /** A row for each column or key of a table. */
  public static List<Map<String, Object>> columns(JobTable table) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (TableGuide.Part part : TableGuide.parts(table)) {
      for (Field<?> field : part.fields()) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", field.name());
        row.put("meaning", field.label());
        row.put("when", part.when());
        row.put("needed", field.isRequired());
        row.put("unit", symbol(field.unit()));
        putLimits(row, field.limits());
        row.put("words", field.options() == null ? List.of() : Choice.wordsOf(field.options()));
        rows.add(row);
      }
    }
    return rows;
  }

  private static Map<String, Object> function(Card card) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", card.name());
    row.put("java", card.call());
    row.put("room", card.room());
    row.put("meaning", card.text().summary());
    row.put("source", card.text().source());
    row.put("parameters", card.parameters().stream().map(ReferenceRows::parameter).toList());
    row.put("results", card.results().stream().map(ReferenceRows::result).toList());
    return row;
  }

  private static Map<String, Object> parameter(Parameter parameter) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", parameter.column());
    row.put("meaning", parameter.text());
    row.put("needed", parameter.isRequired());
    row.put("preset", parameter.preset().isEmpty() ? null : parameter.preset());
    row.put("unit", symbol(parameter.unit()));
    putLimits(row, parameter.limits());
    row.put("words", parameter.words());
    return row;
  }

  private static Map<String, Object> result(Result result) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", result.column());
    row.put("unit", symbol(result.unit()));
    return row;
  }

  private static void putLimits(Map<String, Object> row, Limits limits) {
    row.put("least", number(limits.least()));
    row.put("most", number(limits.most()));
  }

  private static BigDecimal number(double limit) {
    return Double.isFinite(limit) ? BigDecimal.valueOf(limit) : null;
  }

  private static String symbol(Unit<?> unit) {
    return unit == null || unit.symbol().isEmpty() ? null : unit.symbol();
  }
}
