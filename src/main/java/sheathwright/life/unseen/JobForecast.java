package sheathwright.life.unseen;

import static java.util.stream.Collectors.joining;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.forecast.BadSheetForecast;
import sheathwright.forecast.Chances;
import sheathwright.forecast.InHouses;
import sheathwright.forecast.Zone;
import sheathwright.forecast.ZoneForecast;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.Stage;
import sheathwright.life.found.FoundWork;
import sheathwright.sheathing.place.PlaceKey;

/**
 * How many places of a job's old deck are likely bad: from its map, what was seen of its zones, and
 * what the office knows of other houses. It is solved; its solution says when it has to be again.
 */
public final class JobForecast {

  private static final Source MIXED =
      Source.derived("binomial in each zone, the share of bad places averaged over other houses");

  private final OfficeShare share;
  private final Set<String> opened;
  private final List<Zone> zones;
  private final ZoneForecast solved;
  private final Solution solution;
  private final BadSheetForecast figures;

  private JobForecast(
      OfficeShare share, Set<String> opened, List<Zone> zones, Reading reading, String name) {
    this.share = share;
    this.opened = Set.copyOf(opened);
    this.zones = List.copyOf(zones);
    int places = zones.stream().mapToInt(Zone::places).sum();
    if (places > ZoneForecast.MOST_PLACES) {
      throw new RefusedException(
          Shown.text(
              "the deck has %,d places; a forecast takes at most %,d: forecast its planes apart",
              places, ZoneForecast.MOST_PLACES));
    }
    double alpha = reading.number("alpha of other houses", share.alpha(), Units.RATIO);
    double beta = reading.number("beta of other houses", share.beta(), Units.RATIO);
    this.solution = reading.solution(name);
    this.solved = ZoneForecast.of(zones, alpha, beta);
    this.figures =
        new BadSheetForecast(
            places(name + "_mean", chances().mean()),
            places(name + "_sd", chances().sd()),
            chance(name + "_none", chances().of(0)),
            percentile(10),
            percentile(50),
            percentile(80),
            percentile(90),
            percentile(95),
            chances());
  }

  /**
   * What was likely before anything was open.
   *
   * @throws RefusedException if the deck has more places than a forecast takes
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with the history
   */
  public static JobForecast before(Estimate estimate) {
    Reading reading = new Reading();
    List<Zone> zones = new DeckZones(reading, estimate).before();
    return new JobForecast(
        OfficeShare.of(estimate.job()), Set.of(), zones, reading, "deck_forecast");
  }

  /**
   * What is likely now: of every plane that is open each place is known. A plane is open if a mark
   * was found on it with the covering off, if it is named here, or if the job is closed.
   *
   * @param named planes that are open though no mark says so
   * @throws RefusedException if the deck has more places than a forecast takes
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with the history
   */
  public static JobForecast now(Estimate estimate, FoundWork work, Set<String> named) {
    Set<String> opened = new LinkedHashSet<>(named);
    opened.addAll(DeckZones.opened(estimate, work));
    Reading reading = new Reading();
    if (reading.word("stage of the job", estimate.job().stage()).isAtLeast(Stage.CLOSED)) {
      estimate.deck().parts().stream()
          .map(Deck.Part::plane)
          .forEach(plane -> opened.add(plane.name()));
    }
    DeckZones zones = new DeckZones(reading, estimate);
    Set<PlaceKey> bad = zones.replaced(estimate, work);
    return new JobForecast(
        OfficeShare.of(estimate.job()),
        opened,
        zones.now(opened, bad),
        reading,
        "deck_forecast_now");
  }

  /** How likely each number of bad places is, those that are known included. */
  public Chances chances() {
    return solved.ofAll();
  }

  /** The same of one zone, in the order of {@link #zones}. */
  public List<Chances> chancesOfZones() {
    return solved.ofZones();
  }

  /** How likely each number of bad places is on planes that are not open. */
  public Chances chancesOfTheRest() {
    int known = known();
    return Chances.of(chances().most() - known, count -> chances().of(count + known));
  }

  /** Bad places of the planes that are open. */
  public int known() {
    return zones.stream().filter(JobForecast::isOpen).mapToInt(Zone::bad).sum();
  }

  /** Whether every place of a zone was seen, and showed what it was. */
  private static boolean isOpen(Zone zone) {
    return zone.seen() == zone.places() && zone.recognized() == 1;
  }

  /** The zones that it was made from, plain. */
  public List<Zone> zones() {
    return zones;
  }

  /** Whether any plane is open. */
  public boolean hasBegun() {
    return !opened.isEmpty();
  }

  /** The planes that are open. */
  public Set<String> opened() {
    return opened;
  }

  /** Places of the old deck. */
  public int places() {
    return chances().most();
  }

  /** What the office knows of other houses, and who says so. */
  public OfficeShare share() {
    return share;
  }

  /** What it was solved for. */
  public Solution solution() {
    return solution;
  }

  /** What stands on a page of it: the average, and what is not exceeded in so many houses. */
  public BadSheetForecast figures() {
    return figures;
  }

  /** Some places, counted by this forecast. */
  Figure<Sheets> places(String name, double number) {
    return solution.figure(name, number, Units.SHEET, MIXED);
  }

  /** A chance by this forecast. */
  Figure<Ratio> chance(String name, double number) {
    return solution.figure(name, number, Units.RATIO, MIXED);
  }

  private Figure<Sheets> percentile(int percent) {
    return places(
        "%s_p%s".formatted(solution.name(), percent), chances().percentile(percent / 100.0));
  }

  /** For the owner of the house, without a number that nobody can see. */
  public Choice<String> inHouses() {
    if (opened.isEmpty()) {
      return word("In houses like this one: %s.".formatted(InHouses.words(chances())));
    }
    return zones.stream().allMatch(JobForecast::isOpen)
        ? word("All of it is open, with %s bad.".formatted(known()))
        : word(
            "Open: %s, with %s bad. Of the rest, in houses like this one: %s."
                .formatted(
                    opened.stream().sorted().collect(joining(", ")),
                    known(),
                    InHouses.words(chancesOfTheRest())));
  }

  private Choice<String> word(String text) {
    return solution.word("", text, MIXED);
  }

  /** What it rests on, in words. */
  public String told() {
    boolean isOdd = zones.stream().anyMatch(zone -> zone.odds() != 1);
    return share.told() + (isOdd ? "; the odds of zones are " + OfficeShare.GUESS : "");
  }
}
