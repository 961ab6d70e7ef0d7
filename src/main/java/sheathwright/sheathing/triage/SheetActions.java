package sheathwright.sheathing.triage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** What is done where something was found on a deck. */
public final class SheetActions {

  private static final Source RULE = Source.COMMON_PRACTICE;

  private SheetActions() {}

  /**
   * What is to be done with a sheet where something was found, by what was measured there: replace
   * it, cover a hole, support, relieve, refasten, dry, watch, lift and lay it again, or stop; with
   * the reason in a sentence.
   *
   * <pre>
   * the first of these that speaks: framing stopped → stop; probe &gt; limit → replace;
   * delaminated or broken → replace; hole &gt; limit → replace; screw hold &lt; wanted → replace;
   * rot, soft, swollen, hole or pulled, not measured → replace; thickness &lt; least → stop;
   * thin, not measured → stop; hole up to the limit → cover; bearing &lt; limit → support;
   * edge bare that is to be held → support; unsupported or gap-wide, not measured → support;
   * joint &lt; limit and hump &gt; limit → relieve; tight, not measured → relieve;
   * sound nails &lt; wanted → refasten; loose, or soft with a probe up to its limit → refasten;
   * moisture &gt; limit → dry; stain → watch; over a built-up rafter → lift; else → watch
   * </pre>
   *
   * <p>Does not cover why the wood went bad, the framing, fire-treated panels, or a whole roof:
   * what nobody opened is not known. Moisture alone never replaces a sheet. A blank was not
   * measured, and what was not measured is never good.
   *
   * <pre>{@code
   * sheetAction(SheetEvidence.of(ROT).probe(in("3/8")), HoldEvidence.NOT_LOOKED_AT, SheetPlace.FREE, TriageLimits.USUAL).reason() // replace: an awl goes in 3/8 in; more than 1/4 in is cut out
   * sheetAction(SheetEvidence.of(ROT), HoldEvidence.NOT_LOOKED_AT, SheetPlace.FREE, TriageLimits.USUAL).reason() // replace: rot, not measured
   * }</pre>
   *
   * @param wood what was found, and what was measured of the wood
   * @param held what was measured of joints, bearing, edges and nails
   * @param place what is known of the framing under it
   * @param limits how far it may go
   * @return the action, a sentence with what was measured and its limit, the other tests that
   *     speak, and how many of nine tests had something to go by
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: probe, hole, hump, and the order; ANSI/SPRI FX-1, from
   *     memory: a screw pulled on the roof; APA E30, from memory: 1/8 in between panels; 19 % is
   *     the line of dry lumber, NDS, from memory"
   */
  @LibraryFunction(
      words = {
        "patch",
        "triage",
        "rot",
        "soft",
        "awl",
        "moisture",
        "what to do",
        "replace",
        "damage"
      })
  public static SheetAction sheetAction(
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
        SheetTest.words("action", first).as("action", RULE),
        reason(first, flags).as("reason", RULE),
        also.as("also", RULE),
        flags.measured().as("measured", Units.RATIO, RULE));
  }

  private static List<Map.Entry<SheetTest, Choice<YesNo>>> lastFirst(
      Map<SheetTest, Choice<YesNo>> speaking) {
    var entries = new ArrayList<>(speaking.entrySet());
    Collections.reverse(entries);
    return entries;
  }

  private static Choice<String> reason(Choice<String> first, SheetFlags flags) {
    var said = SheetTest.words("said", first).as("said");
    var saying = SheetTest.words("saying", first).as("saying");
    var limit = SheetTest.words("limit", first).as("limit_words");
    var why = SheetTest.words("why", first).as("why_words");
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
