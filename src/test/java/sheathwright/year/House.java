package sheathwright.year;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A house that somebody called about: small, so that many stand in a year. Its people and places
 * are invented.
 *
 * @param tables its first tables, by file
 * @param owner who says yes
 * @param hasBoards whether its deck is boards
 */
record House(Map<String, String> tables, String owner, boolean hasBoards) {

  private static final List<String> CODES =
      List.of("irc-2015", "irc-2018", "irc-2021", "irc-2024", "fbc-2023");
  private static final List<String> OWNERS =
      List.of("Odalys Brackenridge-Plume", "Tomas Ellingworth-Vane", "Hester Lanyard-Mop");
  private static final List<String> STOPS =
      List.of("split", "cut", "truss", "charred", "bearing-rot");

  static House of(Random random, int number) {
    Map<String, String> tables = new LinkedHashMap<>();
    String owner = any(random, OWNERS);
    boolean hasBoards = random.nextInt(6) == 0;
    tables.put("job.csv", job(random, number, owner, hasBoards));
    tables.put("planes.csv", planes(random, hasBoards));
    if (random.nextInt(3) == 0) {
      tables.put("reports.csv", reports(random));
    }
    if (random.nextInt(2) == 0) {
      tables.put("stages.csv", stages(random));
    }
    if (random.nextInt(3) == 0) {
      tables.put("options.csv", options(random));
    }
    return new House(tables, owner, hasBoards);
  }

  private static String job(Random random, int number, String owner, boolean hasBoards) {
    Typed job = Typed.with("key", "value", "note");
    job.fact("job_name", "Deck of house " + number);
    job.fact("customer", owner);
    job.fact("site", number + " Quince Hollow Lane, Pemberly Flats");
    job.fact("prepared_by", "Corvane and Thrupp, deck repairs");
    job.fact("quote_date", "2027-01-04");
    job.fact("valid_days", "" + (10 + random.nextInt(60)));
    job.fact("looked_at", "the eave from below");
    job.fact("not_looked_at", "the rest");
    job.fact("base_roofing_usd", money(random, 4000, 20000));
    job.fact("permit_usd", money(random, 0, 300));
    job.fact("planned_sheets", hasBoards ? "0" : "" + random.nextInt(5));
    job.fact("credit_usd", "" + 10 * random.nextInt(7));
    job.fact("support_spacing_in", any(random, List.of("16", "24", "19.2")));
    job.fact("blocked_edges", random.nextBoolean() ? "yes" : "no");
    job.fact("stage", "surveyed");
    if (random.nextInt(3) == 0) {
      site(random, job);
    } else {
      job.fact("edge_spacing_in", "6");
      job.fact("field_spacing_in", any(random, List.of("6", "12")));
    }
    if (!hasBoards) {
      job.fact("bill_rule", any(random, List.of("place", "place", "half", "area")));
      if (random.nextInt(3) == 0) {
        job.fact("ceiling_sheets", "" + (5 + random.nextInt(6)));
      }
      if (random.nextInt(4) == 0) {
        job.fact("reopen_sheets", "" + (5 + random.nextInt(8)));
      }
    }
    if (random.nextInt(3) == 0) {
      job.fact("pre_agreed_sheets", "1");
      job.fact("pre_agreed_usd", "150");
    }
    return job.text();
  }

  private static void site(Random random, Typed job) {
    job.fact("code", any(random, CODES));
    job.fact("wind_mph", any(random, List.of("110", "115", "120", "130")));
    job.fact("exposure", any(random, List.of("b", "c")));
    job.fact("enclosed_known", "measured");
    job.fact("eave_height_ft", "10");
    job.fact("roof_shape", any(random, List.of("gable", "hip")));
    job.fact("building_length_ft", "30");
    job.fact("building_width_ft", "20");
    job.fact("panel_thickness_in", "15/32");
    job.fact("panel_kind", any(random, List.of("plywood", "osb")));
    job.fact("panel_span_rating", "32/16");
    job.fact("nail", job.behind("code").equals("fbc-2023") ? "rsrs-01" : "8d-common");
    job.fact("species", any(random, List.of("spruce-pine-fir", "douglas-fir-larch")));
    job.fact("species_known", "stamped");
    job.fact("ring_shank", "no");
    job.fact("rise_in_12", "" + (3 + random.nextInt(6)));
  }

  private static String planes(Random random, boolean hasBoards) {
    if (hasBoards) {
      return "plane,eave_ft,slope_length_ft,deck,board_in\nA,%d,%d,boards,%s\n"
          .formatted(
              12 + random.nextInt(10),
              8 + random.nextInt(5),
              any(random, List.of("5-1/2", "7-1/4", "9-1/4")));
    }
    int eave = 12 + random.nextInt(9);
    int slope = 6 + random.nextInt(5);
    if (random.nextInt(3) > 0) {
      return "plane,eave_ft,slope_length_ft\nA,%d,%d\nB,%d,%d\n"
          .formatted(eave, slope, eave, slope);
    }
    return """
        plane,eave_ft,slope_length_ft,left_lean_ft,right_lean_ft
        S,%d,%d,5,5
        N,%d,%d,5,5
        E,10,%d,5,5
        W,10,%d,5,5
        """
        .formatted(eave, slope, eave, slope, slope, slope);
  }

  private static String reports(Random random) {
    Typed reports = Typed.with("report", "seen", "where", "evidence");
    reports.row(Map.of("report", "F-1", "seen", "nothing", "where", "plates and ridge"));
    for (int i = random.nextInt(3); i > 0; i--) {
      reports.row(
          Map.of(
              "report",
              "F-" + (1 + reports.rows().size()),
              "seen",
              any(random, STOPS),
              "where",
              "rafter %d of plane A".formatted(1 + i),
              "evidence",
              "photo " + i));
    }
    return reports.text();
  }

  private static String stages(Random random) {
    int percent = 10 * (1 + random.nextInt(8));
    return "stage,part_pct,usd,when\ndeposit,%d,,on signing\nlast,%d,,when it is done\n"
        .formatted(percent, 100 - percent);
  }

  private static String options(Random random) {
    return "option,item,quantity,unit,usd,chosen\nO-1,Ridge vent instead of box vents,%d,foot,%s,%s\n"
        .formatted(
            10 + random.nextInt(30), money(random, 5, 20), random.nextBoolean() ? "yes" : "no");
  }

  static String money(Random random, int least, int most) {
    return "%d.%02d".formatted(least + random.nextInt(most - least), random.nextInt(100));
  }

  static <T> T any(Random random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
