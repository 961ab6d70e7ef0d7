package sheathwright.leveling.plan;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/**
 * A leveling plan as words for the crew. It begins with who decides, and it cannot be had without:
 * where that cannot be said, neither can the rest.
 */
public final class RepairList {

  private static final List<String> BEFORE_ANY_CUT =
      List.of(
          "Look for cables under the deck before you saw or nail.",
          "Open a few sheets at a time: without them nothing braces the roof; close them the same day.",
          "Brace both sides of a rafter before it is cut or planed; keep people and stacks off it.",
          "Where the roof edge is 6 ft up or more: guardrail, net or harness; cover and mark every hole.");

  private final List<String> lines = new ArrayList<>();

  private RepairList(LevelPlan plan) {
    lines.add(capital(plan.decision().value().word()) + ".");
    if (plan.trussDecision().value() == LevelDecision.TRUSS_DESIGNER_FIRST
        && plan.decision().value() != LevelDecision.TRUSS_DESIGNER_FIRST) {
      lines.add(capital(plan.trussDecision().value().word()) + ".");
    }
    lines.addAll(BEFORE_ANY_CUT);
    if (!plan.lap().outcome().isSound()) {
      lines.add(
          "A sister laps its rafter only %s; at least %s is required: use a deeper size."
              .formatted(plan.lap().capacity(), plan.lap().demand()));
    }
    plan.rafters().forEach(rafter -> add(plan, rafter));
  }

  /**
   * The list of a plan.
   *
   * @throws sheathwright.figure.RefusedException if the framing's screening was refused, or a
   *     number of the plan was
   */
  public static RepairList of(LevelPlan plan) {
    return new RepairList(plan);
  }

  private void add(LevelPlan plan, PlannedRafter rafter) {
    String high =
        switch (rafter.highPart().value()) {
          case PLANE -> "; plane down up to %s where it stands high".formatted(height(rafter));
          case STOP -> "; stands %s too high: stop".formatted(height(rafter));
          case LEAVE, SHIM, SISTER -> "";
        };
    String what =
        switch (rafter.action().value()) {
          case LEAVE -> "leave";
          case SHIM -> "shim";
          case SISTER -> sister(rafter);
          case PLANE -> "plane";
          case STOP -> "stop: up to %s is missing or too much".formatted(rafter.greatest());
        };
    lines.add("Rafter %s: %s%s.".formatted(rafter.rafter(), what, high));
    addMarks(plan, rafter);
    plan.strips().stream()
        .filter(strip -> strip.rafter().equals(rafter.rafter()))
        .forEach(this::add);
  }

  private static String height(PlannedRafter rafter) {
    return Figure.of(-rafter.least().value(), Units.INCH).toString();
  }

  private static String sister(PlannedRafter rafter) {
    PlannedSister sister = rafter.sister();
    String near =
        sister.nearMiss().value() > 0
            ? " (%s is only %s short)".formatted(sister.shorter(), sister.nearMiss())
            : "";
    return Shown.text(
        "sister %s long from a %s stick%s, %.0f nails",
        sister.length(), sister.stock(), near, sister.nails().value());
  }

  private void addMarks(LevelPlan plan, PlannedRafter rafter) {
    String marks =
        plan.marks().stream()
            .filter(mark -> mark.rafter().equals(rafter.rafter()))
            .map(SisterMark::toString)
            .collect(joining(", "));
    if (!marks.isEmpty()) {
      lines.add("  old top below the sister's top: " + marks);
    }
  }

  private void add(ShimStrip strip) {
    String steep = strip.gradual().value() == YesNo.YES ? "" : "; tapers too fast";
    String thin = strip.thin().value() == YesNo.YES ? "; thin: felt, shingle or plywood" : "";
    String nail = "; nails of at least %s".formatted(strip.nail());
    lines.add(
        "  strip from %s to %s: %s%s%s%s"
            .formatted(
                strip.from(),
                strip.to(),
                strip.stations().stream().map(ShimStrip.Station::toString).collect(joining(", ")),
                steep,
                thin,
                nail));
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Its lines, who decides first. */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  @Override
  public String toString() {
    return String.join("\n", lines);
  }
}
