package sheathwright.life.firm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;

/**
 * A job's rates with other values behind some of their keys.
 *
 * @param rates as the job has them
 * @param header their headings
 * @param lines with the other values
 */
record OtherRates(RowSource rates, List<String> header, List<Line> lines) implements RowSource {

  static OtherRates of(RowSource rates, Keys keys, Map<String, String> others) {
    int key = rates.header().indexOf(keys.key());
    int value = rates.header().indexOf(keys.value());
    return new OtherRates(
        rates,
        rates.header(),
        rates.lines().stream()
            .map(
                line -> {
                  List<String> cells = new ArrayList<>(line.cells());
                  String other = others.get(cells.get(key).strip());
                  if (other != null) {
                    cells.set(value, other);
                  }
                  return new Line(line.number(), cells);
                })
            .toList());
  }

  @Override
  public String name() {
    return rates.name();
  }

  @Override
  public String readable(String cell) {
    return rates.readable(cell);
  }
}
