package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Estimate;
import sheathwright.job.Leveling;
import sheathwright.job.Survey;
import sheathwright.job.SurveyedPlane;
import sheathwright.leveling.plan.PlannedRafter;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.LevelMap;
import sheathwright.workbook.draw.SagChart;
import sheathwright.workbook.told.Told;

/** The page of rafters that are straightened: how they lie, and how they will. */
final class RaftersPage {

  /**
   * A rafter, or a station of one.
   *
   * @param name of the rafter, or how far up the station is
   * @param before below the string, as found
   * @param after below the string, when the work is done
   */
  private record Spot(Traced name, Figure<Length> before, Figure<Length> after) {}

  private final Book book;
  private final Letter letter;
  private final Tab tab;
  private final Leveling leveling;

  private RaftersPage(Book book, Letter letter, Leveling leveling) {
    this.book = book;
    this.letter = letter;
    this.tab = letter.tab();
    this.leveling = leveling;
  }

  /**
   * Writes the page, if rafters are straightened.
   *
   * @param page made where it is needed
   */
  static void write(Book book, Estimate estimate, Supplier<Letter> page) {
    estimate
        .rafterLeveling()
        .ifPresent(leveling -> new RaftersPage(book, page.get(), leveling).write(estimate));
  }

  private void write(Estimate estimate) {
    tab.heading("Rafters before and after");
    letter.sentence(
        "A string pulled tight along the roof shows where your rafters have sunk. A covering laid on them shows every dip.");
    letter.sentence(
        "%s to be straightened with new wood beside it, %s with thin strips on top."
            .formatted(
                count((int) leveling.sisters().value(), "rafter is", "rafters are"),
                count((int) leveling.shims().value(), "rafter", "rafters")));
    letter.sentence(
        estimate.framing().mayRepair().is(YesNo.YES).holds()
            ? "That flattens the roof; it is not meant to make rafters stronger."
            : "Nothing of it is done before whoever page 1 names has decided.");
    leveling.atMiddle().ifPresent(this::atMiddle);
    leveling.survey().ifPresent(this::survey);
  }

  private static String count(int rafters, String one, String many) {
    return rafters + " " + (rafters == 1 ? one : many);
  }

  private void atMiddle(Leveling.AtMiddle middle) {
    Roll readings = middle.readings();
    List<Traced> planes = readings.cellsOf("plane");
    List<Spot> spots = new ArrayList<>();
    String worst = planes.get(worst(readings)).plain();
    for (int i = 0; i < planes.size(); i++) {
      if (planes.get(i).plain().equals(worst)) {
        spots.add(
            spot(
                readings.cellsOf("rafter").get(i),
                readings.cellsOf("before_in").get(i),
                readings.cellsOf("after_in").get(i)));
      }
    }
    chart(worst, "Plane " + worst + ", rafters at mid-length", "rafter", spots);
  }

  private static int worst(Roll readings) {
    List<Traced> drops = readings.cellsOf("before_in");
    int worst = 0;
    for (int i = 1; i < drops.size(); i++) {
      if (Math.abs(((Figure<?>) drops.get(i)).value())
          > Math.abs(((Figure<?>) drops.get(worst)).value())) {
        worst = i;
      }
    }
    return worst;
  }

  @SuppressWarnings("unchecked") // heights are lengths
  private static Spot spot(Traced name, Traced before, Traced after) {
    return new Spot(
        Choice.literal(name.plain()),
        Told.of("before_in", (Figure<Length>) before),
        Told.of("after_in", (Figure<Length>) after));
  }

  private void survey(Survey survey) {
    SurveyedPlane plane =
        survey.planes().stream()
            .max(Comparator.comparingDouble(each -> worst(each).greatest().value()))
            .orElseThrow();
    String worst = worst(plane).rafter();
    List<Spot> spots = new ArrayList<>();
    Roll stations = plane.stations();
    for (int i = 0; i < stations.rows().size(); i++) {
      if (stations.cellsOf("rafter").get(i).plain().equals(worst)) {
        List<Traced> row = stations.rows().get(i);
        spots.add(spot(Choice.literal(inches(row.get(1))), row.get(2), row.get(3)));
      }
    }
    chart(
        plane.name(),
        "Plane %s, rafter %s".formatted(plane.name(), worst),
        "how far up the slope",
        spots);
    LevelMap.draw(
        tab,
        "Plane " + plane.name() + ": how much is built up where, in inches",
        plane.name(),
        plane.straightened().buildUps());
  }

  private static PlannedRafter worst(SurveyedPlane plane) {
    return plane.straightened().worst();
  }

  private static String inches(Traced length) {
    return Lengths.inFeetAndInches(((Figure<?>) length).in(Units.INCH).value());
  }

  private void chart(String plane, String heading, String below, List<Spot> spots) {
    Roll roll =
        Roll.of(
            "rafters",
            "rafters before and after",
            spots,
            Roll.<Spot>column("rafter", Spot::name),
            Roll.column("before_in", Spot::before),
            Roll.column("after_in", Spot::after));
    tab.heading(heading + ": inches from the string");
    tab.inFractionsOfALine("string");
    Listing listing =
        tab.list(
            roll,
            List.of(capital(below), "Now", "Then"),
            Arrays.asList(null, Units.INCH, Units.INCH));
    SagChart.draw(
        book,
        tab,
        "Seen from the side",
        below,
        new SagChart.Part(plane, listing, 0, spots.size() - 1, 0, 1, 2));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
