package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.forecast.Chances;
import sheathwright.forecast.Zone;
import sheathwright.forecast.ZoneForecast;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.job.zone.SeenRules;
import sheathwright.job.zone.ToldZone;
import sheathwright.job.zone.ZoneFields;

/** How many places of a roof are bad, zone by zone: some rot first and are seen least. */
final class DeckForecaster {

  static final SolverOption<Figure<Ratio>> ALPHA = history("alpha", "Weighs the bad sheets");
  static final SolverOption<Figure<Ratio>> BETA = history("beta", "Weighs the sound sheets");
  private static final SolverOption<Choice<String>> PMF =
      new SolverOption<>(Field.text("pmf", "File for the chance of each count"), "");

  static final List<SolverOption<?>> OPTIONS = List.of(ALPHA, BETA, PMF);

  private DeckForecaster() {}

  private static SolverOption<Figure<Ratio>> history(String name, String label) {
    return new SolverOption<>(
        Field.number(name, label, Units.RATIO, ForecastFields.LEAST, ForecastFields.MOST), "");
  }

  static SolvedTable forecast(CsvFile file, SolverOptions options) {
    double alpha = options.number(ALPHA);
    double beta = options.number(BETA);
    List<Zone> zones = zones(file);
    ZoneForecast forecast = ZoneForecast.of(zones, alpha, beta);
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < zones.size(); i++) {
      Zone zone = zones.get(i);
      lines.add(
          line(zone.name(), zone.places(), zone.seen(), zone.bad(), forecast.ofZones().get(i)));
    }
    Chances all = forecast.ofAll();
    lines.add(
        line(
            "all",
            all.most(),
            zones.stream().mapToInt(Zone::seen).sum(),
            zones.stream().mapToInt(Zone::bad).sum(),
            all));
    List<String> header = new ArrayList<>(List.of("zone", "places", "seen", "seen_bad"));
    header.addAll(Percentiles.HEADINGS);
    return new SolvedTable(header, lines, summary(zones, all), Optional.empty(), Set.of("zone"))
        .beside(options.textIfGiven(PMF), List.of("bad_sheets", "chance"), masses(all));
  }

  private static List<String> line(String name, int places, int seen, int bad, Chances chances) {
    List<String> cells =
        new ArrayList<>(
            List.of(name, String.valueOf(places), String.valueOf(seen), String.valueOf(bad)));
    cells.addAll(Percentiles.of(chances));
    return cells;
  }

  private static String summary(List<Zone> zones, Chances all) {
    boolean isGuess = zones.stream().anyMatch(zone -> zone.odds() != 1);
    return "%s to %s bad sheets in 8 houses of 10, %s%s"
        .formatted(
            all.percentile(0.10),
            all.percentile(0.90),
            all.of(0) < 0.005
                ? "hardly ever none"
                : "none in 1 house of " + Math.round(1 / all.of(0)),
            isGuess ? "; the odds of zones are a guess until a history has zones" : "");
  }

  private static List<List<String>> masses(Chances all) {
    List<List<String>> lines = new ArrayList<>();
    for (int count = 0; count <= all.most(); count++) {
      lines.add(List.of(String.valueOf(count), Shown.plain(all.of(count))));
    }
    return lines;
  }

  /**
   * The zones of a table.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  private static List<Zone> zones(CsvFile file) {
    TableReader reader = new TableReader();
    ReadTable table = reader.table(file.name(), Optional.of(file), ZoneFields.ZONES, true);
    SeenRules.hold(table, ZoneFields.PLACES, ZoneFields.SEEN, ZoneFields.SEEN_BAD);
    for (Row row : table.rows()) {
      if (!row.has(ZoneFields.PLACES)) {
        table.problem(row, ZoneFields.PLACES, "it is empty; give the places in this zone");
      }
    }
    reader.raiseProblems();
    List<Row> rows = table.rows();
    double places = rows.stream().mapToDouble(row -> row.of(ZoneFields.PLACES).value()).sum();
    if (rows.isEmpty() || places > ZoneForecast.MOST_PLACES) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  file.name(),
                  0,
                  "",
                  rows.isEmpty()
                      ? "it has no zone; give a line for each, or one for the whole roof"
                      : Shown.text(
                          "its zones have %.0f places; a forecast takes at most %,d",
                          places, ZoneForecast.MOST_PLACES))));
    }
    return rows.stream().map(row -> new ToldZone(row).plain(Reading.aside(), 0)).toList();
  }
}
