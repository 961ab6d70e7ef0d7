package sheathwright.job.triage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.life.MarkFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.sheathing.triage.HoldEvidence;
import sheathwright.sheathing.triage.SheetAction;
import sheathwright.sheathing.triage.SheetEvidence;
import sheathwright.sheathing.triage.SheetPlace;
import sheathwright.sheathing.triage.Told;
import sheathwright.sheathing.triage.TriageLimits;

/**
 * Decides about marks: by what was found and measured, or as somebody typed. What is cut, counted
 * and billed follows from the words that it found, and those from everything that was read for
 * them.
 */
public final class MarkTriage {

  private static final Source DECIDED = Source.derived("by the rules for marks");
  private static final Figure<Length> WIDEST =
      Figure.constant("length_of_a_sheet_in", 96, Units.INCH, Source.ARITHMETIC);
  private static final List<Field<? extends Figure<?>>> MEASURED =
      List.of(
          MarkFields.PROBE,
          MarkFields.MOISTURE,
          MarkFields.THICKNESS,
          MarkFields.HUMP,
          MarkFields.JOINT_GAP,
          MarkFields.BEARING,
          MarkFields.SOUND_NAILS,
          MarkFields.HOLD);

  private static final String DECIDED_BY = "decided by the crew: ";
  private static final String INSTEAD = "; by the rules ";

  private final FirmRules rules;
  private final Wanted wanted;
  private final Choice<Told> edgesNeeded;
  private final List<Traced> shared;

  /** Decides by these rules, for a job that wants this of its deck. */
  public MarkTriage(FirmRules rules, Wanted wanted) {
    this.rules = rules;
    this.wanted = wanted;
    this.edgesNeeded =
        wanted.edgesHeld().refusal().isEmpty()
            ? told(wanted.edgesHeld())
            : Choice.literal(Told.NOT_TOLD);
    TriageLimits limits = rules.limits();
    this.shared =
        List.of(
            wanted.nails(),
            wanted.thickness(),
            wanted.hold(),
            edgesNeeded,
            limits.probe(),
            limits.hole(),
            limits.bearing(),
            limits.jointGap(),
            limits.hump(),
            limits.moisture());
  }

  /** What is done about each of some marks, in their order. */
  public List<MarkDecision> decisions(List<ToldMark> marks) {
    Reading reading = new Reading();
    rules.set().forEach((label, limit) -> reading.number(label, limit, limit.unit()));
    marks.forEach(mark -> read(reading, mark));
    List<SheetAction> byRules = marks.stream().map(this::byRules).toList();
    Solution solution = reading.solution("marks_decided");
    List<MarkDecision> decisions = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      decisions.add(decision(solution, marks.get(i).row(), byRules.get(i), live(marks.get(i))));
    }
    return decisions;
  }

  private static MarkDecision decision(
      Solution solution, Row row, SheetAction byRules, MarkDecision.Live live) {
    String action = solution.following(byRules.action());
    String reason = solution.following(byRules.reason());
    if (row.has(MarkFields.ACTION)) {
      String typed = solution.following(row.of(MarkFields.ACTION)).word();
      reason = DECIDED_BY + typed + INSTEAD + reason;
      action = typed;
    }
    return new MarkDecision(
        solution.word("", action, DECIDED),
        solution.word("", reason, DECIDED),
        solution.word("", solution.following(byRules.also()), DECIDED),
        live);
  }

  /** The same decision where each cell follows, those too that nobody has filled in yet. */
  private MarkDecision.Live live(ToldMark mark) {
    Row row = mark.row();
    Map<String, Traced> cells = new LinkedHashMap<>();
    cells.put("finding", mark.finding());
    MEASURED.forEach(field -> cells.put(field.name(), orBlank(row, field)));
    Choice<Told> held =
        row.has(MarkFields.EDGE_SUPPORT)
            ? told(row.of(MarkFields.EDGE_SUPPORT))
            : Choice.literal(Told.NOT_TOLD);
    cells.put(MarkFields.EDGE_SUPPORT.name(), held);
    Figure<Length> hole = hole(mark);
    cells.put("hole_in", hole == null ? Figure.none(Figure.NOT_MEASURED, Units.INCH) : hole);
    cells.put("framing_stops", mark.framingStops());
    cells.put("over_build_up", mark.overBuildUp());
    SheetAction now =
        rules
            .tests()
            .action(
                SheetEvidence.of(mark.finding())
                    .probe(cell(cells, MarkFields.PROBE))
                    .hole(hole)
                    .thickness(cell(cells, MarkFields.THICKNESS), ifKnown(wanted.thickness()))
                    .moisture(cell(cells, MarkFields.MOISTURE))
                    .hold(cell(cells, MarkFields.HOLD), ifKnown(wanted.hold())),
                HoldEvidence.joint(cell(cells, MarkFields.HUMP), cell(cells, MarkFields.JOINT_GAP))
                    .bearing(cell(cells, MarkFields.BEARING))
                    .edge(held, edgesNeeded)
                    .nails(cell(cells, MarkFields.SOUND_NAILS), ifKnown(wanted.nails())),
                new SheetPlace(mark.framingStops(), mark.overBuildUp()),
                rules.limits());
    if (!row.has(MarkFields.ACTION)) {
      return new MarkDecision.Live(
          cells, shared, List.of(now.action(), now.reason()), now.action(), now.reason());
    }
    Choice<?> typed = row.of(MarkFields.ACTION);
    return new MarkDecision.Live(
        cells,
        shared,
        List.of(now.action(), now.reason()),
        Choice.sentence(typed).as("action"),
        Choice.sentence(Choice.literal(DECIDED_BY), typed, Choice.literal(INSTEAD), now.reason())
            .as("reason"));
  }

  private static Figure<?> orBlank(Row row, Field<? extends Figure<?>> field) {
    return row.has(field)
        ? row.of(field)
        : Figure.notMeasured(field.name(), field.unit(), Source.GIVEN);
  }

  /** A cell of the evidence as the field that it was read by. */
  private static <Q extends Quantity> Figure<Q> cell(
      Map<String, Traced> cells, Field<Figure<Q>> field) {
    return field.as(cells.get(field.name()));
  }

  private static <Q extends Quantity> Figure<Q> ifKnown(Figure<Q> wanted) {
    return wanted.refusal().isEmpty() ? wanted : null;
  }

  /** Everything that decides about a mark. */
  private void read(Reading reading, ToldMark mark) {
    String label = "mark " + mark.key() + ", ";
    reading.word(label + "what was found", mark.finding());
    mark.width().ifPresent(width -> reading.number(label + "width", width, Units.INCH));
    mark.height().ifPresent(height -> reading.number(label + "height", height, Units.INCH));
    reading.word(label + "framing under it", mark.framingStops());
    reading.word(label + "built up under it", mark.overBuildUp());
    for (Field<? extends Figure<?>> field : MEASURED) {
      if (mark.row().has(field)) {
        reading.number(label + words(field), mark.row().of(field), mark.row().of(field).unit());
      }
    }
    if (mark.row().has(MarkFields.EDGE_SUPPORT)) {
      reading.word(label + words(MarkFields.EDGE_SUPPORT), mark.row().of(MarkFields.EDGE_SUPPORT));
      reading.word("long edges held", known(wanted.edgesHeld()));
    }
    if (mark.row().has(MarkFields.ACTION)) {
      reading.word(label + words(MarkFields.ACTION), mark.row().of(MarkFields.ACTION));
    }
    held(reading, mark.row(), MarkFields.SOUND_NAILS, "nails by the schedule", wanted.nails());
    held(reading, mark.row(), MarkFields.THICKNESS, "least thickness", wanted.thickness());
    held(reading, mark.row(), MarkFields.HOLD, "what a screw has to hold", wanted.hold());
  }

  private static String words(Field<?> field) {
    return field.label().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
        + field.label().substring(1);
  }

  /** A number of the job's is read where something was measured that is held against it. */
  private static void held(
      Reading reading, Row row, Field<?> measured, String label, Figure<?> wanted) {
    if (row.has(measured) && wanted.refusal().isEmpty()) {
      reading.number(label, wanted, wanted.unit());
    }
  }

  private SheetAction byRules(ToldMark mark) {
    Row row = mark.row();
    SheetEvidence wood =
        SheetEvidence.of(mark.finding())
            .probe(measured(row, MarkFields.PROBE))
            .hole(hole(mark))
            .thickness(
                measured(row, MarkFields.THICKNESS),
                against(row, MarkFields.THICKNESS, wanted.thickness()))
            .moisture(measured(row, MarkFields.MOISTURE))
            .hold(measured(row, MarkFields.HOLD), against(row, MarkFields.HOLD, wanted.hold()));
    HoldEvidence held =
        HoldEvidence.joint(measured(row, MarkFields.HUMP), measured(row, MarkFields.JOINT_GAP))
            .bearing(measured(row, MarkFields.BEARING))
            .nails(
                measured(row, MarkFields.SOUND_NAILS),
                against(row, MarkFields.SOUND_NAILS, wanted.nails()));
    if (row.has(MarkFields.EDGE_SUPPORT)) {
      held = held.edge(told(row.of(MarkFields.EDGE_SUPPORT)), told(known(wanted.edgesHeld())));
    }
    return rules
        .tests()
        .action(
            wood, held, new SheetPlace(mark.framingStops(), mark.overBuildUp()), rules.limits());
  }

  private static <Q extends Quantity> Figure<Q> measured(Row row, Field<Figure<Q>> field) {
    return row.has(field) ? row.of(field) : null;
  }

  private static <Q extends Quantity> Figure<Q> against(Row row, Field<?> field, Figure<Q> wanted) {
    return row.has(field) && wanted.refusal().isEmpty() ? wanted : null;
  }

  /** The smaller of a mark's width and height, where it was measured. */
  private static Figure<Length> hole(ToldMark mark) {
    return mark.width()
        .flatMap(
            width ->
                mark.height()
                    .map(height -> width.min(height).min(WIDEST).as("hole_in", Units.INCH)))
        .orElse(null);
  }

  /** A word of the job's, or that nothing asks for it where that cannot be said. */
  private static Choice<YesNo> known(Choice<YesNo> word) {
    return word.refusal().isEmpty() ? word : Choice.literal(YesNo.NO);
  }

  private static Choice<Told> told(Choice<YesNo> word) {
    return Choice.choose(word.is(YesNo.YES), Told.TOLD_YES, Told.TOLD_NO).as("told_" + word.name());
  }
}
