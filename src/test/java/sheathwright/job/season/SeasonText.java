package sheathwright.job.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The tables of an invented season of two jobs, some of them otherwise. */
public final class SeasonText {

  /** The twelve invented jobs whose fit an independent script has. */
  public static final String TWELVE_HOUSES =
      """
      job,closed_on,sheets,bad
      a,2026-01-09,52,1
      b,2026-01-19,64,3
      c,2026-02-09,48,0
      d,2026-02-19,88,9
      e,2026-03-09,71,2
      f,2026-03-19,60,5
      g,2026-04-09,95,4
      h,2026-04-19,44,0
      i,2026-05-09,78,16
      j,2026-05-19,66,3
      k,2026-06-09,58,2
      l,2026-06-19,82,6
      """;

  private final Map<String, String> files = new TreeMap<>();

  private SeasonText() {}

  public static SeasonText two() {
    return new SeasonText()
        .file(
            "jobs.csv",
            """
            job,job_name,customer,site,prepared_by,quote_number,quote_date,valid_days,looked_at,base_roofing_usd,permit_usd,planned_sheets,credit_usd,support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges,note
            Ash,A small roof,Nobody at all,Nowhere,A test,1,2027-05-04,30,two sheets,1000,100,2,50,16,6,12,no,invented
            Oak,Another roof,No one,Nowhere too,A test,2,2027-05-05,30,,2000,0,3,50,24,6,12,no,
            """)
        .file(
            "planes.csv",
            """
            plane,job,eave_ft,slope_length_ft
            front,Ash,20,12
            back,Ash,20,12-0 1/2
            front,Oak,30,14
            """)
        .file("marks.csv", "job,mark,plane,finding,sheet\nOak,M1,front,rot,front-1-1\n")
        .file(
            "prices.csv",
            """
            item,usd,job,note
            sheet,40,,
            nail,0.02,,
            sheet,55,Oak,thicker
            """)
        .file(
            "rates.csv",
            """
            rate,value
            labor_usd_per_h,50
            overhead_pct,20
            margin_pct,10
            tax_pct,5
            waste_pct,0
            disposal_usd_per_ton,80
            sheet_disposal_lb,50
            planned_sheet_h,0.5
            extra_sheet_h,1
            order_spare_pct,10
            nails_per_box,1000
            """);
  }

  public SeasonText file(String name, String text) {
    files.put(name, text);
    return this;
  }

  public SeasonText without(String name) {
    files.remove(name);
    return this;
  }

  public SeasonText with(String name, String text, String replacement) {
    if (!files.get(name).contains(text)) {
      throw new IllegalArgumentException("what the test spoils: " + text);
    }
    return file(name, files.get(name).replace(text, replacement));
  }

  public Path in(Path folder) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path place = folder.resolve(file.getKey());
      Files.createDirectories(place.getParent());
      Files.writeString(place, file.getValue());
    }
    return folder;
  }
}
