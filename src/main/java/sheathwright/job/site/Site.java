package sheathwright.job.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.fastening.schedule.NailingCode;
import sheathwright.fastening.schedule.WindDesign;
import sheathwright.fastening.strength.Shank;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.roof.Slopes;
import sheathwright.sheathing.panel.LeastPanels;
import sheathwright.sheathing.panel.Panels;
import sheathwright.sheathing.panel.RatedPanel;

/**
 * Where a house stands and which code holds there, said once, and everything that follows from it:
 * nails, clips, what holds against the wind, and what an inspector will ask. What the job does not
 * say is not looked at, and is listed as that.
 */
public final class Site {

  /**
   * One thing that an inspector looks for.
   *
   * @param what it is
   * @param value that must be found
   * @param rule whose it is, and what goes with it
   */
  public record Inspected(String what, Traced value, String rule) {}

  private static final Figure<Length> NEAR_EDGES =
      Figure.constant(
              "near_edges_in", 48, Units.INCH, Source.read("IRC Table R602.3(1), footnote f"))
          .symbol("48 in");

  private static final Figure<Pressure> USUAL_DEAD =
      Figure.constant("dead_on_the_panel_psf", 10, Units.PSF, Source.COMMON_PRACTICE)
          .symbol("10 psf");

  private final Facts said;
  private final Frame frame;
  private final Choice<NailingCode> code;
  private final SiteWind wind;
  private final DeckNail nail;
  private final CodeNailing byCode;
  private final DeckNailing nailing;
  private final Covering covering;
  private final Choice<YesNo> edgesHeld;
  private final List<Check> strengths;
  private final List<Check> checks;
  private final Figure<Length> nearEdges;
  private final List<Inspected> inspected;

  /** The site of a job whose deck is nailed to this. */
  public Site(Facts said, Frame frame) {
    this.said = said;
    this.frame = frame;
    code = said.word(SiteFields.CODE);
    wind = new SiteWind(said);
    nail = new DeckNail(said, frame);
    byCode = new CodeNailing(said, frame, nail, wind);
    nailing = new DeckNailing(said, frame, nail, byCode.spacings());
    covering = new Covering(said, wind);
    edgesHeld = frame.spacing().isMoreThan(reach(YesNo.NO)).as("long_edges_held");
    strengths = List.copyOf(made());
    checks = Stream.of(nailing.typedChecks(), strengths).flatMap(List::stream).toList();
    nearEdges = reachOfEdges();
    inspected = asked().stream().filter(item -> item.value().refusal().isEmpty()).toList();
  }

  public DeckNailing nailing() {
    return nailing;
  }

  public Covering covering() {
    return covering;
  }

  public SiteWind wind() {
    return wind;
  }

  /** Whether the job says anything of its site. */
  public boolean isTold() {
    return SiteFields.SITE.stream().anyMatch(said::knows);
  }

  /** The keys of the site that the job leaves out. */
  public List<Field<?>> leftOut() {
    return SiteFields.facts(false).stream()
        .<Field<?>>map(field -> field)
        .filter(field -> !said.knows(field))
        .toList();
  }

  /** Every check that follows from the site: what is not known makes a check that nobody made. */
  public List<Check> checks() {
    return checks;
  }

  /** Those of what nails, panels and clips hold. */
  public List<Check> strengths() {
    return strengths;
  }

  private List<Check> made() {
    List<Check> checks = new ArrayList<>();
    checks.add(panelSpans());
    for (RoofArea area : RoofArea.values()) {
      checks.add(nailing.uplift(area, wind.uplift(area)));
    }
    if (covering.isKnown()) {
      Stream.of(RoofArea.values()).map(covering::uplift).forEach(checks::add);
    }
    return checks;
  }

  private Check panelSpans() {
    return Check.of(
        "panel over its supports, long edges supported",
        "panel_span_ratio",
        frame.spacing(),
        reach(YesNo.YES).as("reaches_in", Units.INCH));
  }

  private Figure<Length> reach(YesNo isSupported) {
    return Panels.panelSpan(
            RatedPanel.of(
                said.word(SiteFields.PANEL_RATING), said.figure(SiteFields.PANEL_THICKNESS)),
            frame.spacing(),
            isSupported,
            USUAL_DEAD)
        .maxSpan();
  }

  /** How wide the strip near the roof's edges is, along the wood: 48 in, or the wind's own. */
  public Figure<Length> nearEdges() {
    return nearEdges;
  }

  private Figure<Length> reachOfEdges() {
    Figure<Length> zone = wind.zoneWidth();
    return zone.refusal().isPresent()
        ? NEAR_EDGES
        : zone.times(Slopes.slopeFactor(said.figure(SiteFields.RISE)))
            .in(Units.INCH)
            .max(NEAR_EDGES)
            .as("near_edges_reach_in", Units.INCH);
  }

  /** What an inspector looks for, as far as the job says what must be found. */
  public List<Inspected> inspected() {
    return inspected;
  }

  private List<Inspected> asked() {
    List<Inspected> all = new ArrayList<>();
    Spacings used = nailing.used();
    Figure<Length> thickness = said.figure(SiteFields.PANEL_THICKNESS);
    all.add(new Inspected("Code", code, "adopted here, with its edition"));
    all.add(new Inspected("Nail", nail.name(), "as the code calls it"));
    all.add(new Inspected("Shank of the nail", nail.shank(), "rings pull out less easily"));
    all.add(new Inspected("Nails on panel edges", used.edge(), "center to center"));
    all.add(new Inspected("Nails in the field", used.field(), "on the supports between"));
    all.add(new Inspected("Panel edges near roof edges", used.nearEdge(), "see how far below"));
    all.add(new Inspected("Field near roof edges", used.nearField(), "see how far below"));
    all.add(
        new Inspected(
            "What counts as near", nearEdges, "along the wood from eave, rake, ridge and hip"));
    all.add(new Inspected("Gable-end framing", used.gable(), "center to center"));
    all.add(new Inspected("Panel thickness", thickness, "as stamped"));
    all.add(new Inspected("Span rating", said.word(SiteFields.PANEL_RATING), "as stamped"));
    all.add(new Inspected("Clips or blocking on long edges", edgeSupport(), "by the span table"));
    all.add(
        new Inspected("Thinnest panel without them", leastPanel(), "over supports so far apart"));
    if (covering.isKnown()) {
      for (RoofArea area : RoofArea.values()) {
        all.add(
            new Inspected(
                "Clips of the covering, " + area.word(), covering.used(area), "clip to clip"));
      }
    }
    Choice<WindDesign> design = WindDesign.at(said.figure(SiteFields.WIND));
    all.add(new Inspected("Wind", design, ""));
    all.add(new Inspected("Nails for that wind", advice(design), ""));
    return all;
  }

  private Choice<String> edgeSupport() {
    return Choice.choose(
            edgesHeld.is(YesNo.NO), Choice.literal("not needed"), Choice.literal("needed"))
        .as("clips_are");
  }

  /** Whether the span table wants long edges held; refused where nobody can say. */
  public Choice<YesNo> edgesHeld() {
    return edgesHeld;
  }

  /** The thinnest panel over these supports with nothing under its long edges. */
  public Figure<Length> leastPanel() {
    return LeastPanels.unsupported(frame.spacing());
  }

  /** What is advised where the wind is high, by the map that asks for design. */
  private Choice<String> advice(Choice<WindDesign> design) {
    Choice<String> ring =
        Choice.choose(
                nail.shank().is(Shank.RING),
                Choice.literal("ring-shank nails, as chosen"),
                Choice.literal("ring-shank nails are advised"))
            .as("advice_in_high_wind");
    return Choice.choose(
            design.is(WindDesign.MAY_BE_REQUIRED), ring, Choice.literal("nothing beyond the code"))
        .as("advice_by_wind", Source.COMMON_PRACTICE);
  }
}
