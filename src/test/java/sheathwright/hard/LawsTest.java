package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.job.cell.CellCall;
import sheathwright.workbook.page.Samples;

/**
 * More span, load or sag never helps, and more waste never asks for less: one input of a random
 * case grows, and each result that it governs may only go one way. {@code -Dtries=1000} tries that
 * many of each, {@code -Dseed=3} others; {@code src/build/laws.sh} does both.
 */
class LawsTest {

  private static final int TRIES = Integer.getInteger("tries", 25);
  private static final long SEED = Long.getLong("seed", 17);

  /** Two roads to one number differ in the last bits of a double. */
  private static final double LAST_BITS = 1e-9;

  @ParameterizedTest
  @CsvSource({
    "rafter_max_span, spacing_in live_psf dead_psf, span_in, falls",
    "rafter_check, span_ft live_psf dead_psf spacing_in, bending_ratio shear_ratio deflection_ratio bearing_ratio, rises",
    "rafter_check, live_psf dead_psf spacing_in, longest_span_ft, falls",
    "sistered_rafter, span_ft live_psf dead_psf spacing_in, alone_ratio rafter_ratio sister_ratio sag_ratio, rises",
    "sister_splice, live_psf dead_psf spacing_in span_ft, moment_in_lb sister_ratio, rises",
    "nails_along_sister, live_psf dead_psf spacing_in span_ft, transfer_lb, rises",
    "part_sister_sag, live_psf span_ft spacing_in, most_sag_in, rises",
    "sag_fraction, sag_in, sag_ratio, rises",
    "sister_stock, sag_in, length_ft stock_ft nails, rises",
    "sister_stock, rafter_count, pieces nails, rises",
    "shim_thickness, build_up_in, thickness_in, rises",
    "panel_span, support_spacing_in dead_psf, live_psf, falls",
    "sheathing_uplift, wind_mph height_ft, uplift_psf inward_psf, rises",
    "sheathing_uplift, area_sf, uplift_psf, falls",
    "uplift_tie, wind_mph roof_span_ft spacing_in, uplift_lb missing_lb, rises",
    "sheets_by_area, deck_area_sf waste_pct, sheets, rises",
    "sheet_unit_price, sheet_usd waste_pct nails tax_pct labor_usd_per_h overhead_pct margin_pct hours, direct_usd exact_usd quoted_usd, rises"
  })
  void aResult_goesOneWay(String function, String inputs, String results, String way) {
    Card card = Catalog.shipped().named(function);
    List<String> named = card.results().stream().map(result -> result.column()).toList();
    List<Map<String, String>> cases = cases(Samples.tablesToFill().get(function));
    Random random = new Random(SEED);
    int held = 0;
    for (String input : inputs.split(" ")) {
      int before = held;
      for (int i = 0; i < 4 * TRIES && held < before + TRIES; i++) {
        Map<String, String> one = varied(cases.get(random.nextInt(cases.size())), random);
        if (!isNumber(one.getOrDefault(input, ""))) {
          continue;
        }
        Map<String, String> more = new LinkedHashMap<>(one);
        double grown = Double.parseDouble(one.get(input)) * (1 + random.nextDouble() / 2) + 0.001;
        more.put(
            input,
            input.equals("nails") || input.equals("rafter_count")
                ? String.valueOf(Math.ceil(grown))
                : String.valueOf(grown));
        Object[] first = CellCall.results(function, given(one));
        Object[] second = CellCall.results(function, given(more));
        for (String result : results.split(" ")) {
          int at = named.indexOf(result);
          assertThat(at).as("%s is a result", result).isNotNegative();
          if (first.length > at
              && second.length > at
              && first[at] instanceof Double was
              && second[at] instanceof Double is) {
            double step = way.equals("rises") ? is - was : was - is;
            assertThat(step)
                .as("%s %s as %s grows from %s to %s", result, way, input, one, more.get(input))
                .isGreaterThanOrEqualTo(-LAST_BITS * Math.max(1, Math.abs(was)));
            held++;
          }
        }
      }
      assertThat(held).as("cases in which %s grows", input).isGreaterThan(before);
    }
  }

  private static List<Map<String, String>> cases(String table) {
    List<String> lines = table.lines().filter(line -> !line.isBlank()).toList();
    String[] headings = lines.get(0).split(",", -1);
    List<Map<String, String>> cases = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      Map<String, String> one = new LinkedHashMap<>();
      for (int i = 0; i < Math.min(cells.length, headings.length); i++) {
        one.put(headings[i], cells[i]);
      }
      cases.add(one);
    }
    return cases;
  }

  /** About half of a case's numbers, a third less to a third more. */
  private static Map<String, String> varied(Map<String, String> one, Random random) {
    Map<String, String> varied = new LinkedHashMap<>(one);
    varied.replaceAll(
        (column, cell) ->
            isNumber(cell) && random.nextBoolean()
                ? String.valueOf(
                    Math.round(Double.parseDouble(cell) * (0.67 + random.nextDouble() * 0.66) * 8)
                        / 8.0)
                : cell);
    return varied;
  }

  private static boolean isNumber(String cell) {
    return cell.matches("\\d+(\\.\\d+)?");
  }

  private static Object[] given(Map<String, String> one) {
    return one.entrySet().stream()
        .filter(cell -> !cell.getValue().isEmpty())
        .map(cell -> cell.getKey() + "=" + cell.getValue())
        .toArray();
  }
}
