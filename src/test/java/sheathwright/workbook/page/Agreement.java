package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whether two engines say the same of every cell. */
public final class Agreement {

  /** Two engines may differ in the last digits of a product of ten factors, no more. */
  private static final double RELATIVE = 1e-9;

  private Agreement() {}

  /** One line for each cell in which the two differ or which one of them lacks. */
  public static List<String> differences(Map<String, Object> one, Map<String, Object> other) {
    List<String> differences = new ArrayList<>();
    one.forEach(
        (address, value) -> {
          if (!same(value, other.get(address))) {
            differences.add(address + ": " + value + " against " + other.get(address));
          }
        });
    other.keySet().stream()
        .filter(address -> !one.containsKey(address))
        .forEach(address -> differences.add(address + " stands in one of them only"));
    return differences;
  }

  private static boolean same(Object one, Object other) {
    if (one instanceof Double left && other instanceof Double right) {
      return Math.abs(left - right) <= RELATIVE * Math.max(Math.abs(left), Math.abs(right));
    }
    return one.equals(other);
  }
}
