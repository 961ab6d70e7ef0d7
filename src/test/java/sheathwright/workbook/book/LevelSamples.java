package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.leveling.plan.FramingAnswer;
import sheathwright.leveling.plan.LevelCost;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelRules;
import sheathwright.leveling.string.FlatnessLimit;
import sheathwright.leveling.string.FlatnessSurvey;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.RafterProfile;
import sheathwright.leveling.string.StringLine;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.wood.LumberSize;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Sections;

/** Tables of cases for what is asked of string lines, strips and sisters. */
public final class LevelSamples {

  private LevelSamples() {}

  public static void putInto(Map<String, String> tables) {
    tables.put(
        "string_sag", "string_ft,place_ft,line_lb_per_ft,tension_lb\n20,10,,\n16-6,4,0.003,12\n");
    tables.put("drop_below_string", "reading_in,block_in,string_sag_in\n2-1/8,,\n1/2,3/4,0.045\n");
    tables.put("sag_fraction", "sag_in,span_ft,fraction\n1-5/8,12-0 1/4,\n0,12,180\n1/2,15,180\n");
    tables.put(
        "chord_deviation",
        """
        first_in,first_drop_in,last_in,last_drop_in,place_in,drop_in
        0,1/4,120,3/4,60,7/8
        24,0,144,-1/2,48,1/8
        """);
    tables.put(
        "leveling_action",
        """
        build_up_in,leave_in,shim_in,truss
        1/8,,,
        3/8,,,no
        1/2,,,no
        1/2,,,yes
        -1/4,,,no
        -1/4,1/8,1/2,yes
        """);
    tables.put("shim_thickness", "build_up_in,step_in\n0.2,\n-1/4,\n3/8,1/8\n");
    tables.put(
        "shim_taper",
        "first_thickness_in,last_thickness_in,length_ft,most_in_12\n0,3/8,2,\n1/2,1/8,1,0.3\n");
    tables.put("shim_nail", "nail_in,shim_in\n2-1/2,3/8\n2,0\n");
    tables.put(
        "sister_lap",
        """
        build_up_in,sister_size,rafter_size,least_lap_in
        1-5/8,2x8,2x4,
        1-5/8,2x4,2x4,2-1/2
        4,2x4,2x6,3
        10,2x6,2x10,
        """);
  }

  /** A leveling plan of five rafters with all its lists. */
  public static byte[] book() {
    StringReadings readings = StringReadings.of("A", read(), SuspicionRules.usual());
    FlatnessSurvey survey = FlatnessSurvey.of("A", readings.profiles(), FlatnessLimit.strict());
    LevelPlan plan = plan(readings.profiles());
    LevelCost cost = LevelCost.of(plan, prices());
    Book book = new Book(Particulars.of("A leveled plane", "Sisters and shims of one plane"));
    Tab tab = Sections.tab(book, "Leveling", "a plan of five rafters");
    Tab working = Sections.workingTab(book, "a plan of five rafters");
    Tab tables = Sections.tablesTab(book, "a plan of five rafters");
    List<Roll> rolls =
        List.of(
            readings.roll(),
            survey.roll(),
            plan.roll(),
            plan.marksRoll(),
            plan.stripsRoll(),
            plan.thicknessesRoll(),
            cost.sticks());
    for (Roll roll : rolls) {
      tab.heading(roll.title());
      tab.list(roll, roll.columns(), units(roll));
    }
    tab.heading("What it adds up to");
    tab.total("Suspects", readings.suspectCount(), "");
    tab.total("Strips", plan.totals().shims(), "");
    tab.total("Nails", plan.totals().nails(), "");
    tab.total("Lap", plan.lap().ratio(), "");
    tab.total("Cost", cost.total(), "");
    tab.entry("Who decides", plan.decision(), "");
    return book.finished(working, tables);
  }

  private static List<Unit<?>> units(Roll roll) {
    List<Unit<?>> units = new ArrayList<>();
    for (Traced cell : roll.rows().get(0)) {
      units.add(Tab.unitOf(cell));
    }
    return units;
  }

  private static List<StringReading> read() {
    double[] drops = {0, 0.3, 0.9, 0.45, -0.25};
    StringLine string =
        new StringLine(
            Amounts.ft(0),
            Amounts.ft(12),
            Amounts.in(0.75),
            Amounts.lbPerFt(0.0015),
            Amounts.lb(20));
    List<StringReading> read = new ArrayList<>();
    for (int rafter = 0; rafter < drops.length; rafter++) {
      for (int station = 0; station <= 4; station++) {
        read.add(
            string.read(
                "A-" + (rafter + 1),
                Amounts.in(24 * rafter),
                Amounts.in(36 * station),
                Amounts.in(0.75 + drops[rafter] * station * (4 - station) / 4)));
      }
    }
    return read;
  }

  private static LevelPlan plan(List<RafterProfile> buildUps) {
    Figure<Quantity.Length> lower = Amounts.in(0);
    Figure<Quantity.Length> upper = Amounts.in(144);
    return LevelPlan.of(
        "A",
        buildUps.stream().map(profile -> new LevelRafter(profile, lower, upper)).toList(),
        LevelRules.usual(LumberSize.SIZE_2X8, LumberSize.SIZE_2X4),
        FramingAnswer.of(Amounts.number(0.8)));
  }

  private static LevelPrices prices() {
    return new LevelPrices(
        List.of(
            new LevelPrices.Stick(Amounts.ft(12), Amounts.usdPerPiece(14.2)),
            new LevelPrices.Stick(Amounts.ft(10), Amounts.usdPerPiece(11.5))),
        Amounts.usdPerPiece(1),
        Amounts.hoursPerPiece(1.5),
        Amounts.hoursPerPiece(0.25),
        Amounts.usdPerHour(46));
  }
}
