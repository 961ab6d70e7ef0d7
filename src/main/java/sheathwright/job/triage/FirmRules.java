package sheathwright.job.triage;

import static java.util.stream.Collectors.joining;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableReader;
import sheathwright.sheathing.triage.SheetTest;
import sheathwright.sheathing.triage.SheetTests;
import sheathwright.sheathing.triage.TriageLimits;

/** How far a sheet may go at this firm, and what it does about one that goes further. */
public final class FirmRules {

  /** A line of the table, read. */
  private record Rule(Row row, SheetTest test, Optional<RuledLimit> ruled, Figure<?> limit) {}

  /** As they are usual: the firm says nothing else. */
  public static final FirmRules USUAL = new FirmRules(List.of());

  private final List<Rule> rules;
  private final TriageLimits limits;
  private final SheetTests tests;

  private FirmRules(List<Rule> rules) {
    this.rules = List.copyOf(rules);
    this.limits =
        new TriageLimits(
            limit(RuledLimit.PROBE),
            limit(RuledLimit.LARGE_HOLE),
            limit(RuledLimit.BEARING),
            limit(RuledLimit.JOINT),
            limit(RuledLimit.HUMP),
            limit(RuledLimit.MOISTURE));
    Map<SheetTest, String> changed = new EnumMap<>(SheetTest.class);
    rules.stream()
        .filter(rule -> rule.row().has(RuleFields.ACTION))
        .forEach(rule -> changed.put(rule.test(), rule.row().of(RuleFields.ACTION).plain()));
    this.tests = SheetTests.with(changed, Source.given("the firm's rules.csv"));
  }

  @SuppressWarnings("unchecked") // a ruled limit is read in the unit of its own part
  private <Q extends Quantity> Figure<Q> limit(RuledLimit which) {
    return (Figure<Q>)
        rules.stream()
            .filter(rule -> rule.ruled().filter(ruled -> ruled == which).isPresent())
            .map(Rule::limit)
            .findFirst()
            .orElse(null);
  }

  /** The rules of a table; what cannot be read, or is not ours to change, is said with its line. */
  public static FirmRules read(TableReader reader, RowSource file, List<Row> rows) {
    Said said = new Said(reader, file);
    List<Rule> rules =
        rows.stream()
            .filter(row -> row.has(RuleFields.TEST) && row.of(RuleFields.TEST) != null)
            .flatMap(row -> said.rule(row).stream())
            .toList();
    for (int i = 0; i < rules.size(); i++) {
      said.once(rules.subList(0, i), rules.get(i));
    }
    return new FirmRules(rules);
  }

  /** Reads lines, and says what is wrong with them. */
  private record Said(TableReader reader, RowSource file) {

    Optional<Rule> rule(Row row) {
      SheetTest test = row.of(RuleFields.TEST).value();
      List<RuledLimit> ruled = measuredBy(row, RuledLimit.of(test));
      if (!row.has(RuleFields.LIMIT)) {
        if (!row.has(RuleFields.ACTION)) {
          reader.problem(
              file, row, RuleFields.LIMIT, "it is empty; give a limit, an action, or both");
        }
        return Optional.of(new Rule(row, test, Optional.empty(), null));
      }
      if (ruled.size() != 1) {
        String message =
            RuledLimit.of(test).isEmpty()
                ? "%s has no limit of the firm's: what it is held against follows from the job; limits are for %s"
                    .formatted(test.word(), RuledLimit.inWords(Stream.of(RuledLimit.values())))
                : "say in the column measure which limit it is: one of "
                    + RuledLimit.of(test).stream()
                        .map(limit -> limit.measure)
                        .collect(joining(", "));
        reader.problem(file, row, RuleFields.LIMIT, message);
        return Optional.empty();
      }
      return limited(row, test, ruled.get(0));
    }

    private static List<RuledLimit> measuredBy(Row row, List<RuledLimit> limits) {
      return row.has(RuleFields.MEASURE)
          ? limits.stream()
              .filter(limit -> limit.measure.equals(row.of(RuleFields.MEASURE).plain()))
              .toList()
          : limits;
    }

    private Optional<Rule> limited(Row row, SheetTest test, RuledLimit ruled) {
      Field<? extends Figure<?>> field = ruled.field();
      same(row, RuleFields.SENSE, ruled.sense.word());
      if (row.has(RuleFields.UNIT) && !row.of(RuleFields.UNIT).plain().equals("%")) {
        same(row, RuleFields.UNIT, field.unit().symbol());
      }
      try {
        TypedCell cell = file.typed(RuleFields.LIMIT.name(), row.of(RuleFields.LIMIT).plain());
        return Optional.of(
            new Rule(row, test, Optional.of(ruled), figure(field, cell, row.of(RuleFields.LIMIT))));
      } catch (RefusedException unreadable) {
        reader.problem(file, row, RuleFields.LIMIT, unreadable.getMessage());
        return Optional.empty();
      }
    }

    private static Figure<?> figure(
        Field<? extends Figure<?>> field, TypedCell cell, Choice<String> given) {
      Unit<?> unit = field.unit();
      Limits limits = field.limits();
      return Figure.input(field.name(), cell.number(unit, limits), unit, limits, given.source());
    }

    /** What the table may repeat but not change. */
    private void same(Row row, Field<? extends Choice<?>> field, String own) {
      if (row.has(field) && row.of(field) != null && !row.of(field).plain().equals(own)) {
        reader.problem(
            file,
            row,
            field,
            "\"%s\" is given; for this test it is %s, and only the limit and the action are the firm's"
                .formatted(row.of(field).plain(), own));
      }
    }

    void once(List<Rule> before, Rule rule) {
      boolean isTwice =
          before.stream()
              .anyMatch(
                  other ->
                      other.test() == rule.test()
                          && (other.ruled().equals(rule.ruled())
                              || other.row().has(RuleFields.ACTION)
                                  && rule.row().has(RuleFields.ACTION)));
      if (isTwice) {
        String message = "\"%s\" appears twice; give each limit and each action one line";
        reader.problem(file, rule.row(), RuleFields.TEST, message.formatted(rule.test().word()));
      }
      Optional<Rule> misplaced =
          before.stream()
              .filter(
                  other -> other.row().has(RuleFields.ORDER) && rule.row().has(RuleFields.ORDER))
              .filter(
                  other -> comesBefore(rule, other) != (rule.test().compareTo(other.test()) < 0))
              .filter(other -> other.test() != rule.test())
              .findFirst();
      misplaced.ifPresent(
          other ->
              reader.problem(
                  file,
                  rule.row(),
                  RuleFields.ORDER,
                  "%s and %s stand the other way round: the order of the tests is not the firm's to change; leave it blank"
                      .formatted(rule.test().word(), other.test().word())));
    }

    private static boolean comesBefore(Rule one, Rule other) {
      return one.row().of(RuleFields.ORDER).value() < other.row().of(RuleFields.ORDER).value();
    }
  }

  /** How far a sheet may go. */
  public TriageLimits limits() {
    return limits;
  }

  /** What is done where it goes further. */
  public SheetTests tests() {
    return tests;
  }

  /** The limits that the firm set, and no others, each by what it is called. */
  Map<String, Figure<?>> set() {
    Map<String, Figure<?>> set = new LinkedHashMap<>();
    for (Rule rule : rules) {
      rule.ruled()
          .ifPresent(
              ruled ->
                  set.put("limit of " + rule.test().word() + ", " + ruled.measure, rule.limit()));
    }
    return set;
  }

  /** The firm's own rules as a list, if it has any. */
  public Optional<Roll> roll() {
    return rules.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Roll.of(
                "rules",
                "the firm's own rules",
                rules,
                Roll.<Rule>column("test", rule -> Choice.literal(rule.test().word())),
                Roll.column(
                    "limit",
                    rule -> rule.limit() == null ? Choice.literal("as usual") : rule.limit()),
                Roll.column("action", rule -> text(rule, RuleFields.ACTION, "as usual")),
                Roll.column("why", rule -> text(rule, RuleFields.WHY, "")),
                Roll.column("source", rule -> text(rule, RuleFields.SOURCE, ""))));
  }

  private static Choice<String> text(
      Rule rule, Field<? extends Choice<?>> field, String otherwise) {
    return Choice.literal(rule.row().has(field) ? rule.row().of(field).plain() : otherwise);
  }
}
