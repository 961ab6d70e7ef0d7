package sheathwright.job.site;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.fastening.count.NailCounts;
import sheathwright.fastening.count.Nailing;
import sheathwright.fastening.uplift.FastenerLines;
import sheathwright.fastening.uplift.UpliftSpacings;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.table.Facts;
import sheathwright.roof.SheetSize;

/**
 * How a job's new sheets are nailed: as the code asks, unless somebody typed something else, which
 * is then held against the code, or decided it by name and with a reason, which then stands.
 */
public final class DeckNailing {

  /**
   * Who decided the spacing, where it is not the code's.
   *
   * @param by who
   * @param why the reason
   */
  public record Decision(Choice<String> by, Choice<String> why) {}

  private static final Source SHARE = Source.derived("strength over the area that one nail holds");

  private final Spacings byCode;
  private final Spacings used;
  private final boolean isTyped;
  private final Decision decision;
  private final Frame frame;
  private final Map<RoofArea, Figure<Pressure>> holds = new EnumMap<>(RoofArea.class);
  private final Figure<Per<Nails, Sheets>> inASheet;
  private final Figure<Per<Nails, Sheets>> inASheetNearEdges;
  private final Beside beside;

  DeckNailing(Facts said, Frame frame, DeckNail nail, Spacings byCode) {
    this.byCode = byCode;
    this.frame = frame;
    isTyped = said.knows(SiteFields.EDGE_SPACING);
    decision =
        said.knows(SiteFields.SPACING_DECIDED_BY)
            ? new Decision(
                said.fact(SiteFields.SPACING_DECIDED_BY), said.fact(SiteFields.SPACING_DECIDED_WHY))
            : null;
    used =
        isTyped
            ? typed(said.fact(SiteFields.EDGE_SPACING), said.fact(SiteFields.FIELD_SPACING))
            : byCode;
    inASheet = nails("nails_in_a_sheet", used.edge(), used.field());
    inASheetNearEdges = nails("near_edge_nails", used.nearEdge(), used.nearField());
    for (RoofArea area : RoofArea.values()) {
      Figure<Length> spacing = area == RoofArea.FIELD ? used.field() : used.nearField();
      holds.put(
          area,
          nail.holds()
              .dividedBy(
                  UpliftSpacings.tributaryArea(
                      FastenerLines.spacing(spacing).lines(frame.spacing())))
              .as("nails_hold_%s_psf".formatted(area.word()), Units.PSF, SHARE));
    }
    beside =
        isTyped && byCode.refusal().isEmpty()
            ? new Beside(
                Condition.all(
                    used.edge().isAtMost(byCode.edge()), used.field().isAtMost(byCode.field())),
                inASheet,
                nails("nails_by_code", byCode.edge(), byCode.field()))
            : null;
  }

  /** What was typed; near the roof's edges as close as the code asks, where nobody decided that. */
  private Spacings typed(Figure<Length> edge, Figure<Length> field) {
    if (decision != null || byCode.refusal().isPresent()) {
      return Spacings.everywhere(edge, field);
    }
    return new Spacings(
        edge,
        field,
        edge.min(byCode.nearEdge()).as("near_edge_spacing_in", Units.INCH),
        field.min(byCode.nearField()).as("near_field_spacing_in", Units.INCH),
        edge.min(byCode.gable()).as("gable_spacing_in", Units.INCH));
  }

  /** What is nailed. */
  public Spacings used() {
    return used;
  }

  /** What the code asks for; nothing where it cannot be said. */
  public Optional<Spacings> byCode() {
    return byCode.refusal().isEmpty() ? Optional.of(byCode) : Optional.empty();
  }

  /** Why nobody can say what the code asks for; nothing if it can be said. */
  public Optional<String> notByCode() {
    return byCode.refusal().map(refusal -> refusal.reason());
  }

  /** Who decided what was typed, if anybody did. */
  public Optional<Decision> decision() {
    return Optional.ofNullable(decision);
  }

  /** Nails in a whole sheet away from the roof's edges. */
  public Figure<Per<Nails, Sheets>> inASheet() {
    return inASheet;
  }

  /** Nails in a whole sheet near the roof's edges. */
  public Figure<Per<Nails, Sheets>> inASheetNearEdges() {
    return inASheetNearEdges;
  }

  private Figure<Per<Nails, Sheets>> nails(String name, Figure<Length> edge, Figure<Length> field) {
    return NailCounts.nailsPerSheet(
            frame.spacing(),
            Nailing.edge(edge).field(field).blockedEdges(frame.blockedEdges()),
            SheetSize.FOUR_BY_EIGHT)
        .as(name, Units.NAILS_PER_SHEET);
  }

  /**
   * What was typed beside what the code asks for.
   *
   * @param asClose whether its nails stand as close
   * @param typed nails in a sheet as they were typed
   * @param byCode nails in a sheet as the code asks
   */
  public record Beside(
      Condition asClose, Figure<Per<Nails, Sheets>> typed, Figure<Per<Nails, Sheets>> byCode) {}

  /** What was typed beside the code's; nothing where nothing was typed or the code is not known. */
  public Optional<Beside> beside() {
    return Optional.ofNullable(beside);
  }

  /** What was typed against what the code asks for, where nobody decided it. */
  List<Check> typedChecks() {
    return isTyped && decision == null
        ? List.of(
            Check.of(
                "nail spacing on panel edges, typed against the code's",
                "edge_spacing_ratio",
                used.edge(),
                byCode.edge()),
            Check.of(
                "nail spacing in the field, typed against the code's",
                "field_spacing_ratio",
                used.field(),
                byCode.field()))
        : List.of();
  }

  /** The wind against the nails in a part of the roof. */
  Check uplift(RoofArea area, Figure<Pressure> pull) {
    return Check.of(
        "deck nails against uplift, %s".formatted(area.word()),
        "deck_uplift_%s_ratio".formatted(area.word()),
        pull,
        holds(area));
  }

  /** What the nails in a part of the roof hold against the wind. */
  public Figure<Pressure> holds(RoofArea area) {
    return holds.get(area);
  }
}
