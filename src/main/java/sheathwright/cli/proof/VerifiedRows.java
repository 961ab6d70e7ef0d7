package sheathwright.cli.proof;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.proof.Difference;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.Tested;

/** What was verified as rows for another program, one for each function. */
final class VerifiedRows {

  private VerifiedRows() {}

  /** Rows of our own cases, then of an office's. */
  static List<Map<String, Object>> of(List<Tested> ours, List<OfficeCases> own) {
    List<Map<String, Object>> rows = new ArrayList<>();
    ours.forEach(each -> rows.add(row("", each)));
    own.forEach(table -> table.tested().forEach(each -> rows.add(row(table.file(), each))));
    return rows;
  }

  private static Map<String, Object> row(String file, Tested tested) {
    Optional<Difference> worst = tested.worst().filter(Difference::isOfNumbers);
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("function", tested.card().name());
    row.put("table", file.isEmpty() ? null : file);
    row.put("cases", BigDecimal.valueOf(tested.outcomes().size()));
    row.put("hold", BigDecimal.valueOf(tested.holding()));
    row.put("column", worst.map(each -> each.result().column()).orElse(null));
    row.put("unit", worst.map(each -> each.result().unit().symbol()).orElse(null));
    row.put(
        "largest_difference",
        worst.map(each -> BigDecimal.valueOf(Math.abs(each.difference()))).orElse(null));
    row.put(
        "share_of_tolerance",
        worst
            .map(Difference::share)
            .filter(Double::isFinite)
            .map(BigDecimal::valueOf)
            .orElse(null));
    row.put(
        "mean_difference",
        worst.map(each -> BigDecimal.valueOf(tested.meanDifference(each))).orElse(null));
    row.put("sources", tested.sources());
    row.put("wrong", tested.problems().stream().map(String::valueOf).toList());
    return row;
  }
}
