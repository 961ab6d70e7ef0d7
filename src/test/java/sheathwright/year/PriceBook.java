package sheathwright.year;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * What the office pays and adds, with decimals that stand nowhere else, so that one of them in an
 * owner's file is one that leaked.
 */
final class PriceBook {

  private final Random random;
  private final List<BigDecimal> secrets = new ArrayList<>();

  PriceBook(Random random) {
    this.random = random;
  }

  /** The firm's tables above its jobs, by file; each time at other prices. */
  Map<String, String> tables() {
    Map<String, String> tables = new LinkedHashMap<>();
    Typed prices = Typed.with("item", "usd", "note");
    prices.fact("sheet", secret(30, 3)).fact("nail", secret(0, 4)).fact("board_ft", secret(1, 4));
    tables.put("prices.csv", prices.text());
    Typed rates = Typed.with("rate", "value", "note");
    rates.fact("labor_usd_per_h", secret(40, 3)).fact("overhead_pct", secret(18, 3));
    rates.fact("margin_pct", secret(11, 3)).fact("waste_pct", secret(5, 3));
    rates.fact("tax_pct", "6.5").fact("disposal_usd_per_ton", secret(70, 3));
    rates.fact("sheet_disposal_lb", "45").fact("planned_sheet_h", "0.55");
    rates.fact("extra_sheet_h", "0.90").fact("order_spare_pct", "5").fact("nails_per_box", "2500");
    rates.fact("refasten_nails", "19").fact("refasten_h", "0.12");
    rates.fact("board_ft_h", "0.06").fact("renail_ft_h", "0.01");
    if (random.nextInt(4) > 0) {
      rates.fact("relief_ft_h", "0.0166667");
    }
    tables.put("rates.csv", rates.text());
    return tables;
  }

  private String secret(int whole, int decimals) {
    int unit = (int) Math.pow(10, decimals);
    int part = random.nextInt(unit / 10) * 10 + 1 + 2 * random.nextInt(4);
    String number = "%d.%0${d}d".replace("${d}", "" + decimals).formatted(whole, part);
    secrets.add(new BigDecimal(number));
    return number;
  }

  /** All that it ever held and no owner may read. */
  List<BigDecimal> secrets() {
    return secrets;
  }
}
