package sheathwright.sheathing.triage;

import static sheathwright.sheathing.patch.Finding.BROKEN;
import static sheathwright.sheathing.patch.Finding.DELAMINATED;
import static sheathwright.sheathing.patch.Finding.GAP_WIDE;
import static sheathwright.sheathing.patch.Finding.HOLE;
import static sheathwright.sheathing.patch.Finding.LOOSE;
import static sheathwright.sheathing.patch.Finding.PULLED;
import static sheathwright.sheathing.patch.Finding.ROT;
import static sheathwright.sheathing.patch.Finding.SOFT;
import static sheathwright.sheathing.patch.Finding.STAIN;
import static sheathwright.sheathing.patch.Finding.SWOLLEN;
import static sheathwright.sheathing.patch.Finding.THIN;
import static sheathwright.sheathing.patch.Finding.TIGHT;
import static sheathwright.sheathing.patch.Finding.UNSUPPORTED;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.YesNo;
import sheathwright.sheathing.patch.Finding;

/** What was measured of one sheet, and which tests speak of it. */
final class SheetFlags {

  final Evidence<Length> probe;
  final Evidence<Length> hole;
  final Evidence<Force> hold;
  final Evidence<Length> thickness;
  final Evidence<Length> bearing;
  final Evidence<Length> jointGap;
  final Evidence<Length> hump;
  final Evidence<Per<Nails, Sheets>> nails;
  final Evidence<Ratio> moisture;
  final Choice<Finding> finding;
  private final HoldEvidence held;
  private final SheetPlace place;

  SheetFlags(SheetEvidence wood, HoldEvidence held, SheetPlace place, TriageLimits limits) {
    this.finding = wood.finding().choice();
    this.held = held;
    this.place = place;
    this.probe = Evidence.within("probe", wood.probe(), limits.probe());
    this.hole = Evidence.within("hole", wood.hole(), limits.hole());
    this.hold = Evidence.of("hold", wood.hold(), wood.wantedHold());
    this.thickness = Evidence.of("thickness", wood.thickness(), wood.leastThickness());
    this.bearing = Evidence.within("bearing", held.bearing(), limits.bearing());
    this.jointGap = Evidence.within("joint_gap", held.jointGap(), limits.jointGap());
    this.hump = Evidence.within("hump", held.hump(), limits.hump());
    this.nails = Evidence.of("nails", held.soundNails(), held.wantedNails());
    this.moisture = Evidence.within("moisture", wood.moisture(), limits.moisture());
  }

  /** Whether each test speaks, as a word for a cell. */
  Map<SheetTest, Choice<YesNo>> speaking() {
    Map<SheetTest, Condition> by = new EnumMap<>(SheetTest.class);
    by.put(SheetTest.FRAMING, place.framingStops().choice().is(YesNo.YES));
    by.put(SheetTest.PROBE, probe.isAbove());
    by.put(SheetTest.BROKEN, isOneOf(DELAMINATED, BROKEN));
    by.put(SheetTest.LARGE_HOLE, Condition.all(finding.is(HOLE), hole.isAbove()));
    by.put(SheetTest.HOLD, hold.isBelow());
    by.put(SheetTest.UNMEASURED_WOOD, isUnmeasuredWood());
    by.put(SheetTest.THICKNESS, thickness.isBelow());
    by.put(SheetTest.UNMEASURED_THICKNESS, Condition.all(finding.is(THIN), thickness.isOpen()));
    by.put(SheetTest.HOLE, Condition.all(finding.is(HOLE), hole.isAtMost()));
    by.put(SheetTest.BEARING, bearing.isBelow());
    by.put(SheetTest.EDGE, isBareEdge());
    by.put(
        SheetTest.UNMEASURED_SUPPORT,
        Condition.all(isOneOf(UNSUPPORTED, GAP_WIDE), bearing.isOpen()));
    by.put(SheetTest.HUMP, Condition.all(jointGap.isBelow(), hump.isAbove()));
    by.put(SheetTest.UNMEASURED_JOINT, Condition.all(finding.is(TIGHT), isUnmeasuredJoint()));
    by.put(SheetTest.NAILS, nails.isBelow());
    by.put(
        SheetTest.LOOSE,
        Condition.any(finding.is(LOOSE), Condition.all(finding.is(SOFT), probe.isAtMost())));
    by.put(SheetTest.MOISTURE, moisture.isAbove());
    by.put(SheetTest.STAIN, finding.is(STAIN));
    by.put(SheetTest.BUILD_UP, place.overBuildUp().choice().is(YesNo.YES));
    Map<SheetTest, Choice<YesNo>> speaking = new EnumMap<>(SheetTest.class);
    by.forEach((test, condition) -> speaking.put(test, condition.as(test.cell() + "_speaks")));
    return speaking;
  }

  /** How many of the nine tests that measure had something to go by. */
  Figure<Ratio> measured() {
    return probe
        .counted()
        .plus(hole.counted())
        .plus(hold.counted())
        .plus(thickness.counted())
        .plus(bearing.counted())
        .plus(Evidence.counted("edge_measured_count", areEdgesKnown()))
        .plus(Evidence.counted("joint_measured_count", isJointKnown()))
        .plus(nails.counted())
        .plus(moisture.counted());
  }

  private Condition isUnmeasuredWood() {
    var byProbe = Condition.all(isOneOf(ROT, SOFT, SWOLLEN), probe.isOpen()).as("wood_not_probed");
    var byHole = Condition.all(finding.is(HOLE), hole.isOpen()).as("hole_not_measured");
    var byPull = Condition.all(finding.is(PULLED), hold.isOpen()).as("screw_not_measured");
    return Condition.any(byProbe.is(YesNo.YES), byHole.is(YesNo.YES), byPull.is(YesNo.YES));
  }

  private Condition isBareEdge() {
    return Condition.all(
        held.edgeSupport().choice().is(Told.TOLD_NO), held.edgeNeeded().choice().is(Told.TOLD_YES));
  }

  private Condition areEdgesKnown() {
    var support = held.edgeSupport().choice();
    var needed = held.edgeNeeded().choice();
    return Condition.all(
        Condition.any(support.is(Told.TOLD_YES), support.is(Told.TOLD_NO)),
        Condition.any(needed.is(Told.TOLD_YES), needed.is(Told.TOLD_NO)));
  }

  private Condition isJointKnown() {
    return Condition.all(jointGap.isKnown(), hump.isKnown());
  }

  private Condition isUnmeasuredJoint() {
    return Condition.any(jointGap.isOpen(), hump.isOpen());
  }

  private Condition isOneOf(Finding... words) {
    return Condition.any(Arrays.stream(words).map(finding::is).toArray(Condition[]::new));
  }
}
