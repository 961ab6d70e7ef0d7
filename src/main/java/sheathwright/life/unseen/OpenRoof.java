package sheathwright.life.unseen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Shown;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.forecast.Chances;
import sheathwright.forecast.InHouses;
import sheathwright.forecast.RedeckPrices;
import sheathwright.forecast.Redecking;
import sheathwright.forecast.Zone;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.FoundUnit;
import sheathwright.job.price.OpenFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.life.bill.Agreement;
import sheathwright.life.found.FoundWork;
import sheathwright.pricing.OpenAreas;
import sheathwright.pricing.RainRisk;
import sheathwright.pricing.WorkDay;

/**
 * What is to be known after each plane that is opened: what the rest of the house likely holds, and
 * whether the work goes on as it was agreed. What nobody has said is named, with the key to fill.
 */
public final class OpenRoof {

  private static final Figure<Ratio> WHOLE = Figure.of(1, Units.RATIO);
  private static final double ENOUGH = 0.9;

  /** A break-even that is a whole number but for rounding is that number. */
  private static final double ROUNDING = 1e-9;

  private final Estimate estimate;
  private final FoundWork work;
  private final JobForecast forecast;
  private final Optional<Figure<Sheets>> truck;
  private final List<String> lines = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();

  /**
   * A roof as it lies.
   *
   * @param open planes that are open though no mark was found on them
   * @param truck sheets on the truck, if somebody has just counted them
   * @throws sheathwright.figure.RefusedException if the deck has more places than a forecast takes
   */
  public OpenRoof(Estimate estimate, Set<String> open, Optional<Figure<Sheets>> truck) {
    this.estimate = estimate;
    this.work = FoundWork.of(estimate);
    this.forecast = JobForecast.now(estimate, work, open);
    this.truck =
        truck.isPresent() ? truck : given(estimate.job(), LifeFields.TRUCK_SHEETS, JobTable.JOB);
    planes();
    likely();
    reopening();
    patchOrRedeck();
    onTheTruck();
    weather();
  }

  /** What is likely, counting what is open. */
  public JobForecast forecast() {
    return forecast;
  }

  /** What is known, a line each. */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  /** What is not known, a line each, with the key to fill. */
  public List<String> unknown() {
    return List.copyOf(unknown);
  }

  /** A fact, if it is given; else it is named among those that are not. */
  private <T extends sheathwright.figure.Traced> Optional<T> given(
      Facts facts, Field<T> field, JobTable table) {
    if (facts.knows(field)) {
      return Optional.of(facts.fact(field));
    }
    unknown.add("%s: give %s in %s".formatted(field.label(), field.name(), table.file()));
    return Optional.empty();
  }

  private void planes() {
    Set<String> open = new TreeSet<>(forecast.opened());
    List<String> closed =
        estimate.deck().parts().stream()
            .map(Deck.Part::plane)
            .map(plane -> plane.name())
            .filter(name -> !open.contains(name))
            .toList();
    lines.add(
        "open: %s%s; still closed: %s"
            .formatted(
                open.isEmpty() ? "nothing" : String.join(", ", open),
                open.isEmpty()
                    ? ""
                    : ", %s of %s places bad".formatted(forecast.known(), openPlaces()),
                closed.isEmpty() ? "nothing" : String.join(", ", closed)));
  }

  private int openPlaces() {
    return forecast.zones().stream()
        .filter(zone -> zone.seen() == zone.places() && zone.recognized() == 1)
        .mapToInt(Zone::places)
        .sum();
  }

  private void likely() {
    Chances rest = forecast.chancesOfTheRest();
    Chances all = forecast.chances();
    int closed = forecast.places() - openPlaces();
    if (closed > 0) {
      lines.add("likely in the rest, in houses like this one: " + InHouses.words(rest));
      lines.add("bad places of the %s in the rest: %s".formatted(closed, percentiles(rest)));
    }
    lines.add("bad places of all %s: %s".formatted(all.most(), percentiles(all)));
    lines.add("this rests on other houses, " + forecast.told());
  }

  private static String percentiles(Chances chances) {
    return "not more than %s in half of such houses, %s in 8 of 10, %s in 9 of 10, %s in 19 of 20"
        .formatted(
            chances.percentile(0.50),
            chances.percentile(0.80),
            chances.percentile(0.90),
            chances.percentile(0.95));
  }

  /** Whether so many were found that both sides were to talk again. */
  private void reopening() {
    List<sheathwright.job.table.Row> agreed = estimate.job().lines(JobTable.AGREED);
    Optional<? extends Figure<?>> number =
        agreed.isEmpty()
            ? given(estimate.job(), LifeFields.REOPEN_SHEETS, JobTable.JOB)
            : Agreement.of(agreed).reopen();
    if (number.isEmpty()) {
      return;
    }
    double most = number.get().value();
    double found = work.found().value();
    lines.add(
        found > most
            ? "STOP: %s sheets are found, and beyond %s both sides talk again: speak with the owner before the next plane is opened"
                .formatted(work.found().plain(), number.get().plain())
            : "%s sheets are found, and beyond %s both sides talk again: not yet"
                .formatted(work.found().plain(), number.get().plain()));
  }

  private void patchOrRedeck() {
    Optional<Figure<Per<Money, Sheets>>> keep = keeping();
    if (keep.isEmpty()) {
      return;
    }
    Figure<Per<Money, Sheets>> patch = estimate.extraSheet().direct();
    if (patch.value() <= keep.get().value()) {
      lines.add("patch or lay anew: a sheet costs no more to replace than to keep: lay it anew");
      return;
    }
    given(estimate.job().rateBook(), OpenFields.REDECK_HOURS, JobTable.RATES);
    Figure<Sheets> sheets = estimate.deckSheets();
    Figure<Per<Money, Sheets>> redeck = WholeDeck.costOfASheet(estimate);
    double evens =
        Redecking.redeckBreakEven(sheets, RedeckPrices.patch(patch).redeck(redeck).keep(keep.get()))
            .value();
    double places = evens * forecast.places() / sheets.value();
    Chances bad = forecast.chances();
    double chance = bad.moreThan((int) Math.ceil(places - ROUNDING) - 1);
    boolean isPatched = bad.mean() < places;
    lines.add(
        Shown.text(
            "%s: with %.2f bad sheets of %s both cost the same, and the chance that there are so many is %s (%s to replace one, %s laid anew with all others, %s kept)",
            isPatched
                ? "patching still costs less than the whole deck anew"
                : "STOP: the whole deck anew costs less than patching it",
            evens,
            sheets.plain(),
            chance(chance),
            patch,
            redeck,
            keep.get().in(Units.USD_PER_SHEET)));
  }

  private static String chance(double chance) {
    return chance < 0.0001 ? "below 0.0001" : Shown.text("%.3g", chance);
  }

  /** What one sound sheet costs that is kept: fastened again, and what may come of it. */
  private Optional<Figure<Per<Money, Sheets>>> keeping() {
    Facts rates = estimate.job().rateBook();
    Optional<Figure<Per<Money, Sheets>>> fastened =
        estimate.found().stream()
            .filter(price -> price.unit() == FoundUnit.REFASTEN)
            .map(FoundPrice::direct)
            .findFirst()
            .map(
                each ->
                    each.times(Figure.of(1, FoundWork.unitOf(Item.REFASTEN)))
                        .in(Units.USD)
                        .dividedBy(Figure.of(1, Units.SHEET))
                        .in(Units.USD_PER_SHEET));
    if (fastened.isEmpty()) {
      unknown.add(
          "whether patching beats a new deck: give refasten_h and refasten_nails in rates.csv, what keeping a sheet costs");
      return Optional.empty();
    }
    Optional<Figure<Ratio>> fails = given(rates, OpenFields.FAIL, JobTable.RATES);
    Optional<Figure<Money>> cost = given(rates, OpenFields.FAIL_COST, JobTable.RATES);
    if (fails.isEmpty() || cost.isEmpty()) {
      return fastened;
    }
    Figure<Per<Money, Sheets>> later =
        fails
            .get()
            .times(cost.get())
            .in(Units.USD)
            .dividedBy(Figure.of(1, Units.SHEET))
            .in(Units.USD_PER_SHEET);
    return fastened.map(each -> each.plus(later).as("keeping_usd", Units.USD_PER_SHEET));
  }

  /** A place takes one sheet, whatever of it is cut off. */
  private void onTheTruck() {
    int wanted = forecast.chancesOfTheRest().percentile(ENOUGH);
    truck.ifPresent(
        loaded ->
            lines.add(
                loaded.value() >= wanted
                    ? "the %s sheets on the truck are enough for the rest in 9 of 10 such houses, which takes %s"
                        .formatted(loaded.plain(), wanted)
                    : "the %s sheets on the truck are too few: the rest takes %s in 9 of 10 such houses, load %s more"
                        .formatted(
                            loaded.plain(),
                            wanted,
                            Figure.of(wanted, Units.SHEET).minus(loaded).roundedUp().plain())));
  }

  private void weather() {
    Optional<Figure<Area>> squares = openable();
    squares.ifPresent(
        area ->
            lines.add(
                "a day's work opens and closes %s of the %s"
                    .formatted(area, estimate.deckArea().in(Units.SQUARE))));
    Facts rates = estimate.job().rateBook();
    Optional<Figure<Money>> lost = given(rates, OpenFields.LOST_DAY, JobTable.RATES);
    Optional<Figure<Money>> damage = given(rates, OpenFields.RAIN_DAMAGE, JobTable.RATES);
    if (lost.isPresent() && damage.isPresent()) {
      Figure<Ratio> share =
          squares
              .map(area -> area.dividedBy(estimate.deckArea()).in(Units.RATIO).min(WHOLE))
              .orElse(WHOLE);
      Figure<Ratio> most =
          OpenAreas.rainThreshold(
              RainRisk.lostDay(lost.get())
                  .damage(damage.get())
                  .open(share.as("open_share", Units.RATIO, Source.ARITHMETIC)));
      lines.add(
          "open nothing where rain is as likely as %s%s"
              .formatted(most, squares.isPresent() ? "" : ", were all of it open"));
    }
  }

  private Optional<Figure<Area>> openable() {
    Facts job = estimate.job();
    Optional<Figure<Ratio>> crew = given(job, LifeFields.CREW, JobTable.JOB);
    var hours = given(job, LifeFields.CREW_HOURS, JobTable.JOB);
    Optional<Figure<Ratio>> efficiency = given(job, LifeFields.EFFICIENCY, JobTable.JOB);
    var square = given(estimate.job().rateBook(), OpenFields.SQUARE_HOURS, JobTable.RATES);
    if (crew.isEmpty() || hours.isEmpty() || efficiency.isEmpty() || square.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        OpenAreas.openArea(
            WorkDay.crew(crew.get()).hours(hours.get()).efficiency(efficiency.get()),
            square.get()));
  }
}
