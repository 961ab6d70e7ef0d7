package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;

/** A job's tables as text, which a test may spoil before they are read. All of it is invented. */
public record JobText(Map<String, String> tables) {

  /** A plain gable: nothing is sistered and the rafters are not known. */
  public static JobText small() {
    return new JobText(
        Map.of(
            "job",
            """
            key,value,note
            job_name,A small roof,invented
            customer,Nobody at all,
            site,Nowhere,
            prepared_by,A test,
            quote_number,1,
            quote_date,2027-05-04,
            valid_days,30,
            looked_at,two sheets,
            not_looked_at,the rest,
            base_roofing_usd,1000,
            permit_usd,100,
            planned_sheets,2,
            credit_usd,50,
            support_spacing_in,16,
            edge_spacing_in,6,
            field_spacing_in,12,
            blocked_edges,no,
            """,
            "planes",
            """
            plane,eave_ft,slope_length_ft,note
            front,20,12,
            back,20,12-0 1/2,
            """,
            "prices",
            """
            item,usd,note
            sheet,40,
            nail,0.02,
            """,
            "rates",
            """
            rate,value,note
            labor_usd_per_h,50,
            overhead_pct,20,
            margin_pct,10,
            tax_pct,5,
            waste_pct,0,
            disposal_usd_per_ton,80,
            sheet_disposal_lb,50,
            planned_sheet_h,0.5,
            extra_sheet_h,1,
            order_spare_pct,10,
            nails_per_box,1000,
            """));
  }

  /** One of the demo jobs that ship with the program. */
  public static JobText demo(String name) {
    Map<String, String> tables = new LinkedHashMap<>();
    for (JobTable table : JobTable.values()) {
      Path file = Path.of("demo-data", name, table.file());
      if (Files.exists(file)) {
        tables.put(table.word(), textOf(file));
      }
    }
    return new JobText(tables);
  }

  /** The same with what the office added once the old covering was off. */
  public static JobText opened(String name) {
    JobText job = demo(name);
    for (JobTable table : JobTable.values()) {
      Path file = Path.of("demo-data", name, "opened", table.file());
      if (Files.exists(file) && table == JobTable.JOB) {
        job = job.withLines(table.word(), textOf(file).lines().skip(1).toArray(String[]::new));
      } else if (Files.exists(file)) {
        job = job.withTable(table.word(), textOf(file));
      }
    }
    return job;
  }

  /** The same with some text of a table replaced, once or wherever it stands. */
  public JobText with(String table, String text, String replacement) {
    assertThat(tables.get(table)).as("what the test spoils").contains(text);
    return withTable(table, tables.get(table).replace(text, replacement));
  }

  /** The same with lines added at the end of a table. */
  public JobText withLines(String table, String... lines) {
    return withTable(table, tables.get(table) + String.join("\n", lines) + "\n");
  }

  /** The same with another table under this name. */
  public JobText withTable(String table, String text) {
    Map<String, String> more = new LinkedHashMap<>(tables);
    more.put(table, text);
    return new JobText(more);
  }

  /** The same without one of its tables. */
  public JobText withoutTable(String table) {
    Map<String, String> less = new LinkedHashMap<>(tables);
    less.remove(table);
    return new JobText(less);
  }

  /** The job, read. */
  public Job job() {
    Map<String, CsvFile> files = new LinkedHashMap<>();
    tables.forEach((name, text) -> files.put(name, CsvFile.parse(name + ".csv", text)));
    return Job.of(new JobTables(files));
  }

  /** What is wrong with it, a line each; none if it can be read. */
  public List<String> problems() {
    try {
      job();
      return List.of();
    } catch (ProblemsException wrong) {
      return wrong.problems().stream().map(Problem::toString).toList();
    }
  }

  private static String textOf(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
