package sheathwright.figure;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a traced value came about. The whole language of the library is this one small tree: each
 * kind of step knows its operands, how it is written in print, and how it is written in a cell. Its
 * value is computed where it is made, in {@link Figure}, {@link Choice} or {@link Condition}, and
 * for numbers by the {@link Operator} that also writes it.
 */
public sealed interface Step {

  /** Whether it is written as a value, because no formula leads to it. */
  default boolean isValueOnly() {
    return isGiven() || solution().isPresent();
  }

  /** Whether somebody gave it, rather than that it was worked out. */
  default boolean isGiven() {
    return this instanceof Given;
  }

  /** Whether it was given by whoever may change it. */
  default boolean isInput() {
    return this instanceof Given given && given.role == Given.Role.INPUT;
  }

  /** Whether it was given by an equation or a table. */
  default boolean isConstant() {
    return this instanceof Given given && given.role == Given.Role.CONSTANT;
  }

  /** Whether it was given in passing. */
  default boolean isLiteral() {
    return this instanceof Given given && given.role == Given.Role.LITERAL;
  }

  /** What it was found by, if it was found and not computed. */
  default Optional<Solution> solution() {
    return this instanceof Solved solved ? Optional.of(solved.found) : Optional.empty();
  }

  /** How it was let through, if it is an argument that was. */
  default Optional<Guarded> guard() {
    return this instanceof Guarded guarded ? Optional.of(guarded) : Optional.empty();
  }

  /** What it may be: within these limits it was given or let through. */
  default Limits limits() {
    return Limits.NONE;
  }

  /** Whether it only puts the same quantity into another unit. */
  default boolean isConversion() {
    return this instanceof Converted;
  }

  /** The table that it was looked up in, if it was. */
  default Optional<Table> lookedUpIn() {
    return this instanceof LookedUp found ? Optional.of(found.table) : Optional.empty();
  }

  /** What it was made from, in the order in which the formula reads. */
  List<Traced> operands();

  /** The formula in print. */
  Written words(Notation notation);

  /** The formula in a cell. */
  Written cell(Notation notation);

  /**
   * A value that somebody gave: an input, a published constant, or a number written down in
   * passing.
   */
  record Given(Role role, Limits limits) implements Step {

    /** Why a value was given. */
    public enum Role {
      /** May be changed by whoever holds the workbook. */
      INPUT,
      /** Belongs to an equation or a table and has a source. */
      CONSTANT,
      /** A number in passing, such as a 2, or an argument typed at the prompt. */
      LITERAL
    }

    @Override
    public List<Traced> operands() {
      return List.of();
    }

    @Override
    public Written words(Notation notation) {
      throw new IllegalStateException("a given value has no formula");
    }

    @Override
    public Written cell(Notation notation) {
      throw new IllegalStateException("a given value has no formula");
    }
  }

  /** An operator on numbers. */
  record Applied(Operator operator, List<Figure<?>> arguments) implements Step {

    @Override
    public List<Traced> operands() {
      return List.copyOf(arguments);
    }

    @Override
    public Written words(Notation notation) {
      return operator.words(arguments, notation);
    }

    @Override
    public Written cell(Notation notation) {
      return operator.cell(arguments, notation);
    }
  }

  /** The same quantity in another unit: in print as the notation has it, a factor in a cell. */
  record Converted(Figure<?> from, Factor factor) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(from);
    }

    @Override
    public Written words(Notation notation) {
      return notation.converted(this);
    }

    @Override
    public Written cell(Notation notation) {
      if (factor.equals(Factor.ONE)) {
        return notation.of(from);
      }
      String times = factor.over() == 1 ? "" : "*" + factor.over();
      String by = factor.under() == 1 ? "" : "/" + factor.under();
      return new Written(notation.of(from).atLeast(Written.PRODUCT) + times + by, Written.PRODUCT);
    }
  }

  /** An argument let through because it lies within its limits. */
  record Guarded(Figure<?> argument, Limits limits) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(argument);
    }

    @Override
    public Written words(Notation notation) {
      return notation.of(argument);
    }

    @Override
    public Written cell(Notation notation) {
      String given = notation.of(argument).atLeast(Written.SUM);
      String test =
          switch (limits.kind()) {
            case ANY -> "AND(%1$s>=%2$s,%1$s<=%3$s)";
            case WHOLE_ONLY -> "AND(%1$s>=%2$s,%1$s<=%3$s,%1$s=ROUND(%1$s,0))";
            case ENDS_ONLY -> "OR(%1$s=%2$s,%1$s=%3$s)";
            case IF_MEASURED -> "OR(AND(%1$s>=%2$s,%1$s<=%3$s),1-ISNUMBER(%1$s))";
          };
      return Written.whole(
          ("IF(" + test + ",%1$s,NA())")
              .formatted(given, notation.least(this), notation.most(this)));
    }
  }

  /** A value that stands only while a condition holds. */
  record Provided(Traced value, Condition condition) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(condition, value);
    }

    @Override
    public Written words(Notation notation) {
      return notation.of(value);
    }

    @Override
    public Written cell(Notation notation) {
      return Written.whole(
          "IF(%s,%s,NA())".formatted(notation.of(condition).text(), notation.of(value).text()));
    }
  }

  /**
   * One of two values, by a condition; the other one is kept, so that the workbook can change its
   * mind.
   */
  record Chosen(Condition when, Traced then, Traced otherwise) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(when, then, otherwise);
    }

    @Override
    public Written words(Notation notation) {
      return new Written(
          "%s if %s, else %s"
              .formatted(
                  notation.of(then).text(),
                  notation.of(when).text(),
                  notation.of(otherwise).text()),
          Written.COMPARISON);
    }

    @Override
    public Written cell(Notation notation) {
      return Written.whole(
          "IF(%s,%s,%s)"
              .formatted(
                  notation.of(when).text(),
                  notation.of(then).text(),
                  notation.of(otherwise).text()));
    }
  }

  /**
   * A cell of a table, found by words: INDEX and MATCH on the table as it is written into the
   * workbook.
   */
  record LookedUp(Table table, List<Choice<?>> rowKeys, Choice<?> column) implements Step {

    @Override
    public List<Traced> operands() {
      List<Traced> keys = new ArrayList<>(rowKeys);
      if (isFixed()) {
        return keys;
      }
      keys.add(column);
      return keys;
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole(
          operands().stream()
              .map(key -> notation.of(key).text())
              .collect(joining(", ", "%s [".formatted(headed()), "]")));
    }

    /** Whether the column is always the same one, and not itself a choice. */
    private boolean isFixed() {
      return !column.isNamed() && column.step().isLiteral();
    }

    private String headed() {
      return isFixed() ? Shown.inWords(column.plain()) + " in " + table.title() : table.title();
    }

    @Override
    public Written cell(Notation notation) {
      String key =
          rowKeys.stream().map(part -> notation.of(part).text()).collect(joining("&\"|\"&"));
      String row = "MATCH(%s,%s,0)".formatted(key, table.keyRange());
      return isFixed()
          ? Written.whole("INDEX(%s,%s)".formatted(table.columnRange(column.plain()), row))
          : Written.whole(
              "INDEX(%s,%s,MATCH(%s,%s,0))"
                  .formatted(
                      table.bodyRange(), row, notation.of(column).text(), table.headRange()));
    }
  }

  /** A column of a list brought down to one number. */
  record Gathered(Gather how, Roll roll, String column) implements Step {

    @Override
    public List<Traced> operands() {
      return roll.cellsOf(column);
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole(how.words() + " " + Shown.inWords(column) + " in " + roll.title());
    }

    @Override
    public Written cell(Notation notation) {
      return Written.whole(how.function() + "(" + notation.range(roll, column) + ")");
    }
  }

  /** A number spelled out as feet and whole inches, {@code 16-9}. */
  record Spelled(Figure<?> wholeInches) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(wholeInches);
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole(notation.of(wholeInches).text() + " as feet-inches");
    }

    @Override
    public Written cell(Notation notation) {
      String inches = notation.of(wholeInches).atLeast(Written.PRODUCT);
      String feet = "ROUNDDOWN(" + inches + "/12,0)";
      return new Written(feet + "&\"-\"&(" + inches + "-12*" + feet + ")", Written.COMPARISON);
    }
  }

  /** Two numbers compared. */
  record Compared(Condition.Comparison how, Figure<?> left, Figure<?> right) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(left, right);
    }

    @Override
    public Written words(Notation notation) {
      return written(notation, " " + how.words() + " ");
    }

    @Override
    public Written cell(Notation notation) {
      return written(notation, how.cell());
    }

    private Written written(Notation notation, String between) {
      return new Written(
          notation.of(left).atLeast(Written.SUM)
              + between
              + notation.of(right).atLeast(Written.SUM),
          Written.COMPARISON);
    }
  }

  /** Whether there is a number where one may be left out. */
  record Measured(Figure<?> figure) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(figure);
    }

    @Override
    public Written words(Notation notation) {
      return new Written(notation.of(figure).text() + " is measured", Written.COMPARISON);
    }

    @Override
    public Written cell(Notation notation) {
      return Written.whole("ISNUMBER(" + notation.of(figure).text() + ")");
    }
  }

  /** Words and numbers one after the other. */
  record Sentence(List<Traced> parts) implements Step {

    @Override
    public List<Traced> operands() {
      return parts;
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole(
          parts.stream().map(part -> notation.of(part).text().strip()).collect(joining(" ")));
    }

    @Override
    public Written cell(Notation notation) {
      return new Written(
          parts.stream().map(part -> notation.of(part).atLeast(Written.SUM)).collect(joining("&")),
          Written.COMPARISON);
    }
  }

  /** A word held against one of its options. */
  record Matched(Choice<?> choice, Object option) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(choice);
    }

    @Override
    public Written words(Notation notation) {
      return new Written(
          notation.of(choice).text() + " is " + Choice.wordFor(option), Written.COMPARISON);
    }

    @Override
    public Written cell(Notation notation) {
      return new Written(
          notation.of(choice).text() + "=\"" + Choice.wordFor(option) + "\"", Written.COMPARISON);
    }
  }

  /** Two words held against each other. */
  record Alike(Choice<?> left, Choice<?> right) implements Step {

    @Override
    public List<Traced> operands() {
      return List.of(left, right);
    }

    @Override
    public Written words(Notation notation) {
      return new Written(
          notation.of(left).text() + " is " + notation.of(right).text(), Written.COMPARISON);
    }

    @Override
    public Written cell(Notation notation) {
      return new Written(
          notation.of(left).text() + "=" + notation.of(right).text(), Written.COMPARISON);
    }
  }

  /** Several conditions of which all, or any, must hold. */
  record Joined(boolean all, List<Condition> conditions) implements Step {

    @Override
    public List<Traced> operands() {
      return List.copyOf(conditions);
    }

    @Override
    public Written words(Notation notation) {
      int wanted = all ? Written.COMPARISON : Written.ALTERNATIVE;
      return new Written(
          conditions.stream()
              .map(condition -> notation.of(condition).atLeast(wanted))
              .collect(joining(all ? " and " : " or ")),
          wanted);
    }

    @Override
    public Written cell(Notation notation) {
      return Written.whole(
          conditions.stream()
              .map(condition -> notation.of(condition).text())
              .collect(joining(",", all ? "AND(" : "OR(", ")")));
    }
  }

  /** The label of the first line of a list that is marked with a one, in a sentence. */
  record FirstMarked(Roll roll, String marks, String labels, String before, String after)
      implements Step {

    @Override
    public List<Traced> operands() {
      return roll.cellsOf(marks);
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole("the first one marked in " + roll.title());
    }

    @Override
    public Written cell(Notation notation) {
      String found =
          "INDEX(%s,MATCH(1,%s,0))"
              .formatted(notation.range(roll, labels), notation.range(roll, marks));
      return new Written("\"" + before + "\"&" + found + "&\"" + after + "\"", Written.COMPARISON);
    }
  }

  /** Found by a solver; no formula leads to it. */
  record Solved(Solution found) implements Step {

    @Override
    public List<Traced> operands() {
      return found.inputs();
    }

    @Override
    public Written words(Notation notation) {
      return Written.whole("found by solving for " + Shown.inWords(found.name()));
    }

    @Override
    public Written cell(Notation notation) {
      throw new IllegalStateException("a solved value has no formula");
    }
  }
}
