package sheathwright.sheathing.triage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** What a sheet is tried by, as is usual or as a firm has it: another action for a test. */
public final class SheetTests {

  private static final Source RULE = Source.COMMON_PRACTICE;

  /** As they are usual. */
  public static final SheetTests USUAL = new SheetTests(Map.of(), RULE);

  private final Table table;

  private SheetTests(Map<SheetTest, String> changed, Source source) {
    table =
        new Table(
            "sheet_tests",
            "what a sheet is tried by",
            List.of("test"),
            List.of("action", "saying", "said", "limit", "why"),
            Arrays.stream(SheetTest.values())
                .map(test -> test.line(changed.getOrDefault(test, test.action())))
                .toList(),
            source,
            List.of(
                "The first test that speaks decides; the order and the sentences are common practice."));
  }

  /**
   * The same tests with other actions.
   *
   * @param changed what is done instead where a test speaks
   * @param source whose actions these are
   */
  public static SheetTests with(Map<SheetTest, String> changed, Source source) {
    return changed.isEmpty() ? USUAL : new SheetTests(changed, source);
  }

  /**
   * What is done with a sheet where something was found: see {@link SheetActions#sheetAction}.
   *
   * @param wood what was found, and what was measured of the wood
   * @param held what was measured of joints, bearing, edges and nails
   * @param place what is known of the framing under it
   * @param limits how far it may go
   */
  public SheetAction action(
      SheetEvidence wood, HoldEvidence held, SheetPlace place, TriageLimits limits) {
    SheetFlags flags = new SheetFlags(wood, held, place, limits);
    Choice<String> first = SheetTest.NOTHING.called();
    Choice<String> also = SheetTest.NOTHING.called();
    for (Map.Entry<SheetTest, Choice<YesNo>> test : lastFirst(flags.speaking())) {
      String name = test.getKey().cell();
      Condition speaks = test.getValue().is(YesNo.YES);
      var more =
          Choice.choose(
                  also.is(SheetTest.NOTHING.called().value()),
                  first,
                  Choice.sentence(first, Choice.literal(", "), also))
              .as(name + "_before_others");
      also = Choice.choose(speaks, more, also).as("also_from_" + name);
      first = Choice.choose(speaks, test.getKey().called(), first).as("first_from_" + name);
    }
    first = first.as("deciding_test", RULE);
    return new SheetAction(
        words("action", first).as("action", RULE),
        reason(first, flags).as("reason", RULE),
        also.as("also", RULE),
        flags.measured().as("measured", Units.RATIO, RULE));
  }

  /** The words of a test in a column. */
  private Choice<String> words(String column, Choice<String> test) {
    return table.words(column, test);
  }

  private static List<Map.Entry<SheetTest, Choice<YesNo>>> lastFirst(
      Map<SheetTest, Choice<YesNo>> speaking) {
    var entries = new ArrayList<>(speaking.entrySet());
    Collections.reverse(entries);
    return entries;
  }

  private Choice<String> reason(Choice<String> first, SheetFlags flags) {
    var said = words("said", first).as("said");
    var saying = words("saying", first).as("saying");
    var limit = words("limit", first).as("limit_words");
    var why = words("why", first).as("why_words");
    var numbers =
        Choice.sentence(
                said,
                amount("measured", first, flags, true),
                limit,
                amount("limit", first, flags, false),
                why)
            .as("reason_with_numbers");
    var byFinding =
        Choice.sentence(said, flags.finding, Choice.literal(", not measured"))
            .as("reason_by_finding");
    var plain =
        Choice.choose(saying.is(SheetTest.Saying.FINDING.word()), byFinding, said)
            .as("reason_without_numbers");
    return Choice.choose(saying.is(SheetTest.Saying.NUMBERS.word()), numbers, plain);
  }

  /** What the deciding test measured, or its limit, in words. */
  private static Choice<String> amount(
      String name, Choice<String> first, SheetFlags flags, boolean isMeasured) {
    var length = Figure.of(0, Units.INCH);
    for (var each :
        Map.of(
                SheetTest.PROBE, flags.probe,
                SheetTest.LARGE_HOLE, flags.hole,
                SheetTest.HOLE, flags.hole,
                SheetTest.THICKNESS, flags.thickness,
                SheetTest.BEARING, flags.bearing,
                SheetTest.HUMP, flags.hump)
            .entrySet()
            .stream()
            .sorted(Map.Entry.comparingByKey())
            .toList()) {
      Figure<Length> figure = isMeasured ? each.getValue().measured() : each.getValue().limit();
      length =
          Figure.choose(isFirst(first, each.getKey()), figure, length)
              .as(name + "_up_to_" + each.getKey().cell() + "_in", Units.INCH);
    }
    var words = InchesWritten.of(name, length);
    words = other(name, first, SheetTest.HOLD, flags.hold, isMeasured, " lb", words);
    words = other(name, first, SheetTest.NAILS, flags.nails, isMeasured, " sound nails", words);
    return other(
        name,
        first,
        SheetTest.MOISTURE,
        new Evidence<>(
            flags.moisture.isThere(),
            flags.moisture.measured().in(Units.PERCENT),
            flags.moisture.limit().in(Units.PERCENT)),
        isMeasured,
        " %",
        words);
  }

  private static Choice<String> other(
      String name,
      Choice<String> first,
      SheetTest test,
      Evidence<?> evidence,
      boolean isMeasured,
      String unit,
      Choice<String> before) {
    Figure<?> figure = isMeasured ? evidence.measured() : evidence.limit();
    return Choice.choose(
            isFirst(first, test), Choice.sentence(figure, Choice.literal(unit)), before)
        .as(name + "_words_of_" + test.cell());
  }

  private static Condition isFirst(Choice<String> first, SheetTest test) {
    return first.is(test.called().value());
  }
}
