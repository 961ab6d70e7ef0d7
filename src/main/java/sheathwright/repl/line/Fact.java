package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;

/**
 * What can be stated once for a whole job, because it means the same wherever its columns stand. A
 * thickness, for instance, cannot: of what would be the question.
 */
enum Fact {
  SPACING(List.of("spacing_in", "support_spacing_in"), "practical_nail_spacing", "tributary_area"),
  SPECIES(List.of("species")),
  GRADE(List.of("grade")),
  SIZE(List.of("size")),
  VALUE_SET(List.of("value_set")),
  CODE(List.of("code")),
  EDITION(List.of("edition")),
  WIND(List.of("wind_mph")),
  EXPOSURE(List.of("exposure")),
  GROUND_SNOW(List.of("ground_snow_psf")),
  RISK_CATEGORY(List.of("risk_category")),
  RISE(List.of("rise_in_12")),
  DEAD(List.of("dead_psf"), "panel_span"),
  DEFLECTION_LIMIT(List.of("deflection_limit")),
  LABOR(List.of("labor_usd_per_h")),
  TAX(List.of("tax_pct")),
  OVERHEAD(List.of("overhead_pct")),
  MARGIN(List.of("margin_pct"));

  private static final String PREFIX = "given_";

  private final List<String> columns;
  private final List<String> elsewhere;

  /**
   * A fact.
   *
   * @param elsewhere functions in which one of the columns means something else
   */
  Fact(List<String> columns, String... elsewhere) {
    this.columns = columns;
    this.elsewhere = List.of(elsewhere);
  }

  /** The fact that a parameter of a function asks for, if it is one. */
  static Optional<Fact> of(Card card, Parameter parameter) {
    return Arrays.stream(values())
        .filter(fact -> fact.columns.contains(parameter.column()))
        .filter(fact -> !fact.elsewhere.contains(card.name()))
        .findFirst();
  }

  /** Every other name of the fact's columns: the two spacings are one fact. */
  List<String> columns() {
    return columns;
  }

  /** The name of the variable that holds it. */
  String variable() {
    return PREFIX + word();
  }

  /** As it is said. */
  String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** All of them, as they are said. */
  static String all() {
    return Arrays.stream(values()).map(Fact::word).collect(joining(", "));
  }
}
