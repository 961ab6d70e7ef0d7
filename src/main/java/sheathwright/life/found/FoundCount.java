package sheathwright.life.found;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.life.Item;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.life.found.MarkReach.Joint;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.SheetUnits;

/**
 * Counts what each mark leads to, mark by mark: each place is replaced, refastened and lifted once,
 * each joint opened once, and nothing is done to an old sheet that is replaced whole.
 */
final class FoundCount {

  private final Claims claims;
  private final BillRule rule;
  private final Set<String> done = new HashSet<>();

  FoundCount(Claims claims, BillRule rule) {
    this.claims = claims;
    this.rule = rule;
  }

  /**
   * So much of something.
   *
   * @param item what; none where nothing is charged for the action itself
   * @param quantity how much, in its unit
   * @param with what it is counted with, if that is another mark
   */
  private record Much(Optional<Item> item, double quantity, String with) {

    static final Much NOTHING = new Much(Optional.empty(), 0, "");

    static Much of(Item item, double quantity) {
      return new Much(Optional.of(item), quantity, "");
    }
  }

  /** What marks lead to, in their order; what two of them ask for is counted with the first. */
  List<Found> found(List<ReadMark> marks) {
    Map<ReadMark, Found> found = new HashMap<>();
    marks.stream().sorted(ReadMark.COUNTED).forEach(mark -> found.put(mark, found(mark)));
    return marks.stream().map(found::get).toList();
  }

  private Found found(ReadMark mark) {
    Much much = mark.isVoid() ? Much.NOTHING : much(mark);
    String with = much.with().isEmpty() ? "" : "; counted with mark " + much.with();
    return new Found(
        mark.key(),
        mark.reach().main().key().toString(),
        mark.action(),
        mark.reason() + with,
        mark.isCharged() ? much.item() : Optional.empty(),
        mark.isCharged() ? much.quantity() : 0,
        mark.on(),
        mark.isOpened(),
        mark.isVoid(),
        mark.isTyped());
  }

  private Much much(ReadMark mark) {
    Decided action = Decided.valueOf(mark.action().toUpperCase(Locale.ROOT));
    return switch (action) {
      case REPLACE -> replaced(mark);
      case COVER -> claims.isWhole(mark.reach().main()) ? Much.NOTHING : Much.of(Item.COVER, 1);
      case SUPPORT -> supported(mark);
      case RELIEVE -> relieved(mark);
      case REFASTEN -> once(Item.REFASTEN, mark.reach().touched());
      case LIFT -> once(Item.LIFT, mark.reach().touched());
      case DRY, WATCH, STOP -> Much.NOTHING;
    };
  }

  private Much replaced(ReadMark mark) {
    List<Double> areas = claims.of(mark.key());
    return areas.isEmpty()
        ? new Much(Optional.of(Item.SHEET), 0, claims.claimant(mark.reach().main()))
        : Much.of(
            Item.SHEET, areas.stream().mapToDouble(area -> SheetUnits.counted(rule, area)).sum());
  }

  private Much supported(ReadMark mark) {
    MarkReach reach = mark.reach();
    boolean isEnd =
        mark.isEnd()
            || !mark.isEdge()
                && mark.jointFeet() == 0
                && (!reach.isMeasured() || reach.isUpright());
    if (isEnd) {
      return Much.of(Item.SCAB, newly("support ", reach.ends()).size());
    }
    List<Joint> edges = newly("support ", reach.edges());
    double feet =
        mark.jointFeet() > 0
            ? mark.jointFeet()
            : reach.isMeasured() ? reach.box().width() / 12 : feet(edges);
    return Much.of(Item.BLOCK, edges.isEmpty() ? 0 : feet);
  }

  private Much relieved(ReadMark mark) {
    List<Joint> joints =
        newly(
            "relief ",
            mark.reach().joints().stream()
                .filter(joint -> !claims.isWhole(joint.place()))
                .toList());
    boolean isTyped = mark.jointFeet() > 0 && !joints.isEmpty();
    return Much.of(Item.RELIEF, isTyped ? mark.jointFeet() : feet(joints));
  }

  private static double feet(List<Joint> joints) {
    return joints.stream().mapToDouble(Joint::inches).sum() / 12;
  }

  private List<Joint> newly(String what, List<Joint> joints) {
    return joints.stream().filter(joint -> done.add(what + joint.name())).toList();
  }

  private Much once(Item item, List<Place> places) {
    return Much.of(
        item,
        places.stream()
            .filter(place -> !claims.isWhole(place))
            .filter(place -> done.add(item + " " + place.key()))
            .count());
  }

  /**
   * The sheets that the leveling plan has lifted, but for those that a mark lifts or replaces.
   *
   * @param isSold whether the leveling may be done; else it waits for whoever decides first
   */
  List<Found> lifted(List<Place> places, boolean isSold, boolean isOpened) {
    List<Found> lifted = new ArrayList<>();
    for (Place place : places) {
      if (once(Item.LIFT, List.of(place)).quantity() > 0) {
        lifted.add(
            new Found(
                "level " + place.key(),
                place.key().toString(),
                isSold ? "lift" : "stop",
                isSold
                    ? "lift: it lies over a rafter that is built up: lay it again"
                    : "stop: the rafters under it wait for whoever decides first",
                isSold ? Optional.of(Item.LIFT) : Optional.empty(),
                isSold ? 1 : 0,
                "",
                isOpened,
                false));
      }
    }
    return lifted;
  }
}
