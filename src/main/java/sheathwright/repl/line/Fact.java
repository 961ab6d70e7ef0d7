package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.repl.line.Parser.Beyond;

/**
 * What can be stated once for a whole job, because it means the same wherever its columns stand. A
 * thickness, for instance, cannot: of what would be the question.
 */
enum Fact {
  SPACING(
      List.of("spacing_in", "support_spacing_in"),
      "practical_nail_spacing",
      "tributary_area",
      "heel_nails"),
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

  /** A variable as it is told: one that holds a fact, as given. */
  static String saidName(String variable) {
    return Arrays.stream(values())
        .filter(fact -> fact.variable().equals(variable))
        .findFirst()
        .map(Fact::saidName)
        .orElse(variable);
  }

  /** The variable that a name says as it is told; any other name is its own. */
  static String variable(String saidName) {
    return Arrays.stream(values())
        .filter(fact -> fact.saidName().equals(saidName))
        .findFirst()
        .map(Fact::variable)
        .orElse(saidName);
  }

  private String saidName() {
    return "given " + word();
  }

  /** The fact of this name, if it is one. */
  static Optional<Fact> called(String name) {
    return Arrays.stream(values()).filter(fact -> fact.word().equals(name)).findFirst();
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
    return name().toLowerCase(Locale.ROOT);
  }

  /** All of them, as they are said. */
  static String all() {
    return Arrays.stream(values()).map(Fact::word).collect(joining(", "));
  }

  /**
   * A fact given by its name: a variable of its own, under a name of its own.
   *
   * @throws Unreadable if it is none, or not one of its kind
   */
  static Reading.Made made(Tree.Argument argument, Arguments arguments) {
    if (!argument.isNamed()) {
      throw new Unreadable(
          argument.at(), argument.raw() + " has no name here: given(spacing = 24 in)");
    }
    for (Card card : Catalog.shipped().cards()) {
      Optional<Parameter> parameter = ParameterNames.of(card).parameter(argument.name());
      Optional<Fact> fact = parameter.flatMap(found -> Fact.of(card, found));
      if (fact.isPresent() && fact.get().isCalled(argument.name(), parameter.get())) {
        Piece piece = arguments.forParameter(parameter.get(), fact.get().word(), argument);
        if (!piece.isKnown()) {
          throw new Beyond();
        }
        String name = fact.get().variable();
        return new Reading.Made(
            name,
            piece.value(),
            piece.javaType(),
            "var %s = %s;".formatted(name, piece.java()),
            List.of());
      }
    }
    throw new Unreadable(
        argument.at(),
        "%s cannot be given for all calls, because it does not mean the same in each; name it in the call. What can be given: %s"
            .formatted(argument.name(), Fact.all()));
  }

  /** A first word alone may begin another column elsewhere; a fact is called in full. */
  private boolean isCalled(String name, Parameter parameter) {
    String folded = ParameterNames.folded(name);
    return folded.equals(ParameterNames.folded(word()))
        || folded.equals(ParameterNames.folded(parameter.column()))
        || columns.stream().anyMatch(column -> folded.equals(ParameterNames.folded(column)))
        || this == RISE && folded.equals("pitch")
        || this == SPACING && folded.equals("support");
  }
}
