package sheathwright.life.found;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.life.Item;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.life.found.MarkReach.Joint;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.SheetUnits;

/**
 * Counts what each mark leads to, mark by mark: each place is replaced, refastened and lifted once,
 * each joint opened once, and nothing is done to an old sheet that is replaced whole. A mark that
 * comes to less for that says with which other it is counted.
 */
final class FoundCount {

  private final Claims claims;
  private final BillRule rule;
  private final Map<String, String> markOf = new HashMap<>();
  private final BoardCounts boards;

  /**
   * Counts so.
   *
   * @param claims which mark each replaced place is counted with
   * @param boards which mark each foot of board is counted with
   */
  FoundCount(Claims claims, BillRule rule, BoardCounts boards) {
    this.claims = claims;
    this.boards = boards;
    this.rule = rule;
  }

  /**
   * So much of something.
   *
   * @param item what; none where nothing is charged for the action itself
   * @param quantity how much, in its unit
   * @param with what is counted with other marks, in words
   */
  private record Much(Optional<Item> item, double quantity, List<String> with) {

    static final Much NOTHING = new Much(Optional.empty(), 0, List.of());

    static Much of(Item item, double quantity, List<String> with) {
      return new Much(Optional.of(item), quantity, with);
    }
  }

  /**
   * What is left to be done of some places or joints.
   *
   * @param list those that no mark was counted with before
   * @param with which of the others are counted with which mark
   */
  private record Left<T>(List<T> list, List<String> with) {}

  /** What marks lead to, in their order; what two of them ask for is counted with the first. */
  List<Found> found(List<ReadMark> marks) {
    Map<ReadMark, Found> found = new HashMap<>();
    marks.stream().sorted(ReadMark.COUNTED).forEach(mark -> found.put(mark, found(mark)));
    return marks.stream().map(found::get).toList();
  }

  private Found found(ReadMark mark) {
    Much much = mark.isVoid() ? Much.NOTHING : much(mark);
    String with = much.with().stream().distinct().map(each -> "; " + each).collect(joining());
    return new Found(
        mark.key(),
        mark.place(),
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
    if (mark.boards().isPresent()) {
      return ofBoards(mark, mark.boards().get(), action);
    }
    return switch (action) {
      case REPLACE -> replaced(mark);
      case COVER -> covered(mark);
      case SUPPORT -> supported(mark);
      case RELIEVE -> relieved(mark);
      case REFASTEN -> once(Item.REFASTEN, mark.key(), mark.reach().touched());
      case LIFT -> once(Item.LIFT, mark.key(), mark.reach().touched());
      case DRY, WATCH, STOP -> Much.NOTHING;
    };
  }

  /** What is done to boards: the rest of what is done to sheets was refused before. */
  private Much ofBoards(ReadMark mark, BoardRun run, Decided action) {
    return switch (action) {
      case REPLACE -> feet(Item.BOARD, run, boards.replaced(mark.key(), run));
      case REFASTEN -> feet(Item.RENAIL, run, boards.nailed(mark.key(), run));
      case COVER -> {
        List<String> with =
            boards.replacing(run).stream()
                .map(other -> "its boards are replaced, " + countedWith(other))
                .toList();
        yield Much.of(Item.COVER, with.isEmpty() ? 1 : 0, with);
      }
      case SUPPORT, RELIEVE, DRY, LIFT, WATCH, STOP -> Much.NOTHING;
    };
  }

  private static Much feet(Item item, BoardRun run, BoardCounts.Feet counted) {
    List<String> with = new ArrayList<>(List.of(run.inWords()));
    counted.with().forEach(other -> with.add("boards in common are " + countedWith(other)));
    return Much.of(item, counted.feet(), with);
  }

  private Much replaced(ReadMark mark) {
    List<Double> areas = claims.of(mark.key());
    return areas.isEmpty()
        ? Much.of(Item.SHEET, 0, List.of(countedWith(claims.claimant(mark.reach().main()))))
        : Much.of(
            Item.SHEET,
            areas.stream().mapToDouble(area -> SheetUnits.counted(rule, area)).sum(),
            List.of());
  }

  private Much covered(ReadMark mark) {
    Place place = mark.reach().main();
    return claims.isWhole(place)
        ? Much.of(Item.COVER, 0, List.of(replacedWith(place)))
        : Much.of(Item.COVER, 1, List.of());
  }

  private Much supported(ReadMark mark) {
    MarkReach reach = mark.reach();
    boolean isEnd =
        mark.isEnd()
            || !mark.isEdge()
                && mark.jointFeet() == 0
                && (!reach.isMeasured() || reach.isUpright());
    if (isEnd) {
      Left<Joint> ends = newly("support ", mark.key(), reach.ends());
      return Much.of(Item.SCAB, ends.list().size(), ends.with());
    }
    Left<Joint> edges = newly("support ", mark.key(), reach.edges());
    double feet =
        mark.jointFeet() > 0
            ? mark.jointFeet()
            : reach.isMeasured() ? reach.box().width() / 12 : feet(edges.list());
    return Much.of(Item.BLOCK, edges.list().isEmpty() ? 0 : feet, edges.with());
  }

  private Much relieved(ReadMark mark) {
    List<Joint> all = mark.reach().joints();
    Left<Joint> joints =
        newly(
            "relief ",
            mark.key(),
            all.stream().filter(joint -> !claims.isWhole(joint.place())).toList());
    List<String> with = new ArrayList<>(joints.with());
    all.stream()
        .map(Joint::place)
        .filter(claims::isWhole)
        .map(this::replacedWith)
        .forEach(with::add);
    boolean isTyped = mark.jointFeet() > 0 && !joints.list().isEmpty();
    return Much.of(Item.RELIEF, isTyped ? mark.jointFeet() : feet(joints.list()), with);
  }

  private static double feet(List<Joint> joints) {
    return joints.stream().mapToDouble(Joint::inches).sum() / 12;
  }

  private Left<Joint> newly(String what, String mark, List<Joint> joints) {
    List<Joint> left = new ArrayList<>();
    List<String> with = new ArrayList<>();
    for (Joint joint : joints) {
      String before = markOf.putIfAbsent(what + joint.name(), mark);
      if (before == null) {
        left.add(joint);
      } else {
        with.add("the joint is already " + countedWith(before));
      }
    }
    return new Left<>(left, with);
  }

  private Much once(Item item, String mark, List<Place> places) {
    int count = 0;
    List<String> with = new ArrayList<>();
    for (Place place : places) {
      String before =
          claims.isWhole(place) ? "" : markOf.putIfAbsent(item + " " + place.key(), mark);
      if (before == null) {
        count++;
      } else {
        with.add(before.isEmpty() ? replacedWith(place) : countedWith(before));
      }
    }
    return Much.of(item, count, with);
  }

  private static String countedWith(String mark) {
    return "counted with mark " + mark;
  }

  private String replacedWith(Place place) {
    return "%s is replaced, %s".formatted(place.key(), countedWith(claims.claimant(place)));
  }

  /**
   * The sheets that the leveling plan has lifted, but for those that a mark lifts or replaces.
   *
   * @param isSold whether the leveling may be done; else it waits for whoever decides first
   */
  List<Found> lifted(List<Place> places, boolean isSold, boolean isOpened) {
    List<Found> lifted = new ArrayList<>();
    for (Place place : places) {
      String mark = "level " + place.key();
      if (once(Item.LIFT, mark, List.of(place)).quantity() > 0) {
        lifted.add(
            new Found(
                mark,
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
