package sheathwright.figure;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import javax.measure.Dimension;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.UnitDimension;
import tech.units.indriya.unit.Units;

/**
 * Our units built a second time, from the meter, the newton and the second, with the reference
 * implementation of JSR 385.
 *
 * <p>Exact definitions, NIST SP 811, Appendix B: 1 in = 0.0254 m; 1 lb = 0.453 592 37 kg under the
 * standard fall of 9.806 65 m/s². Money and counts have no SI unit: each is a base unit here.
 */
final class SecondRoad {

  static final Dimension MONEY = UnitDimension.parse('$');
  static final Dimension SHEETS = UnitDimension.parse('S');
  static final Dimension NAILS = UnitDimension.parse('N');
  static final Dimension PIECES = UnitDimension.parse('P');
  static final Dimension STRENGTH = UnitDimension.parse('U');

  static final Unit<?> INCH = Units.METRE.multiply(new BigDecimal("0.0254"));
  static final Unit<?> POUND =
      Units.NEWTON.multiply(new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665")));
  static final Unit<?> HOUR = Units.SECOND.multiply(3600);

  private static final Unit<?> DOLLAR = new BaseUnit<>("$", MONEY);
  private static final Unit<?> SHEET = new BaseUnit<>("sheet", SHEETS);
  private static final Unit<?> NAIL = new BaseUnit<>("nail", NAILS);
  private static final Unit<?> PIECE = new BaseUnit<>("piece", PIECES);
  private static final Unit<?> AT_STRENGTH = new BaseUnit<>("at strength", STRENGTH);
  private static final Unit<?> FOOT = INCH.multiply(12);
  private static final Unit<?> TON = POUND.multiply(2000);
  private static final Map<String, Unit<?>> BY_SYMBOL = bySymbol();

  private SecondRoad() {}

  /** The same unit by the other road; null if this class forgot it. */
  static Unit<?> of(sheathwright.figure.Unit<?> ours) {
    return BY_SYMBOL.get(ours.symbol());
  }

  static int size() {
    return BY_SYMBOL.size();
  }

  private static Map<String, Unit<?>> bySymbol() {
    Map<String, Unit<?>> units = new HashMap<>();
    units.put("in", INCH);
    units.put("ft", FOOT);
    units.put("sq in", INCH.pow(2));
    units.put("sq ft", FOOT.pow(2));
    units.put("square", FOOT.pow(2).multiply(100));
    units.put("in³", INCH.pow(3));
    units.put("in⁴", INCH.pow(4));
    units.put("lb", POUND);
    units.put("ton", TON);
    units.put("psf", POUND.divide(FOOT.pow(2)));
    units.put("psf strength", POUND.divide(FOOT.pow(2)).multiply(AT_STRENGTH));
    units.put("psf/psf strength", AbstractUnit.ONE.divide(AT_STRENGTH));
    units.put("mph", FOOT.multiply(5280).divide(HOUR)); // NIST SP 811: a mile is 5280 ft
    units.put("psi", POUND.divide(INCH.pow(2)));
    units.put("lb/in", POUND.divide(INCH));
    units.put("lb/ft", POUND.divide(FOOT));
    units.put("pcf", POUND.divide(FOOT.pow(3)));
    units.put("psf/in", POUND.divide(FOOT.pow(2)).divide(INCH));
    units.put("in-lb", INCH.multiply(POUND));
    units.put("lb-in²", INCH.pow(2).multiply(POUND));
    units.put("h", HOUR);
    units.put("$", DOLLAR);
    units.put("", AbstractUnit.ONE);
    units.put("%", AbstractUnit.ONE.divide(100));
    units.put("in 12", AbstractUnit.ONE.divide(12));
    units.put("sheet", SHEET);
    units.put("nail", NAIL);
    units.put("piece", PIECE);
    units.put("$/sheet", DOLLAR.divide(SHEET));
    units.put("$/nail", DOLLAR.divide(NAIL));
    units.put("$/piece", DOLLAR.divide(PIECE));
    units.put("$/h", DOLLAR.divide(HOUR));
    units.put("$/ton", DOLLAR.divide(TON));
    units.put("nails/lb", NAIL.divide(POUND));
    units.put("nails/sheet", NAIL.divide(SHEET));
    units.put("nails/piece", NAIL.divide(PIECE));
    units.put("h/sheet", HOUR.divide(SHEET));
    units.put("h/piece", HOUR.divide(PIECE));
    units.put("$/ft", DOLLAR.divide(FOOT));
    units.put("nails/ft", NAIL.divide(FOOT));
    units.put("h/ft", HOUR.divide(FOOT));
    units.put("h/square", HOUR.divide(FOOT.pow(2).multiply(100)));
    units.put("lb/sheet", POUND.divide(SHEET));
    units.put("sq ft/sheet", FOOT.pow(2).divide(SHEET));
    return units;
  }
}
