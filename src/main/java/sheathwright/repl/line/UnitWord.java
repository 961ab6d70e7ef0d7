package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** A unit as it is said after a number, with every way of saying it. */
enum UnitWord {
  INCH(Units.INCH, "in", "inch", "inches"),
  SQUARE_FOOT(Units.SQUARE_FOOT, "sq ft", "sqft", "sf"),
  FOOT(Units.FOOT, "ft", "foot", "feet"),
  SQUARE(Units.SQUARE, "square", "squares", "sq"),
  PSF(Units.PSF, "psf"),
  LINE_LOAD(Units.POUND_PER_FOOT, "plf"),
  PSI(Units.PSI, "psi"),
  PCF(Units.PCF, "pcf"),
  POUND(Units.POUND, "lb", "lbs"),
  TON(Units.TON, "ton", "tons"),
  MPH(Units.MPH, "mph"),
  HOUR(Units.HOUR, "h", "hour", "hours"),
  MINUTE(Units.HOUR, "min", "minutes"),
  NAIL(Units.NAIL, "nail", "nails"),
  SHEET(Units.SHEET, "sheet", "sheets"),
  PIECE(Units.PIECE, "piece", "pieces");

  /** Any of them, as a pattern; what follows is no part of the word, and it is not called. */
  static final String ANY =
      "(?:"
          + words().sorted((left, right) -> right.length() - left.length()).collect(joining("|"))
          + ")(?![\\p{L}\\p{N}_$])(?!\\s*\\()";

  private final Unit<?> unit;
  private final List<String> words;

  UnitWord(Unit<?> unit, String... words) {
    this.unit = unit;
    this.words = List.of(words);
  }

  static UnitWord of(String word) {
    return Arrays.stream(values())
        .filter(unit -> unit.words.contains(word))
        .findFirst()
        .orElseThrow();
  }

  /** All ways of saying any of them. */
  static Stream<String> words() {
    return Arrays.stream(values()).flatMap(unit -> unit.words.stream());
  }

  Unit<?> unit() {
    return unit;
  }

  /** The unit of so many of these for each one of the others, if the trade writes it down. */
  Optional<Unit<?>> per(UnitWord other) {
    return other.under(unit.symbol()).or(() -> other.under(unit.symbol() + "s"));
  }

  /** The unit that has this one below the line and another above. */
  Optional<Unit<?>> under(String above) {
    return Units.written(above + "/" + unit.symbol());
  }

  /** How many of its unit it is one of: a minute is a part of an hour. */
  int parts() {
    return this == MINUTE ? 60 : 1;
  }
}
