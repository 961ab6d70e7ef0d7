package sheathwright.life.firm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.forecast.FailRate;
import sheathwright.forecast.FirmRecords;
import sheathwright.forecast.FitRange;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.forecast.KeptSheets;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.FirmTables;
import sheathwright.job.life.ForecastFields;
import sheathwright.life.unseen.OfficeShare;

/** What the closed jobs of a firm say of the next house, how sure that is, and whether it held. */
public final class HistoryRates {

  private static final List<String> NAMES =
      List.of(ForecastFields.BAD_ALPHA.name(), ForecastFields.BAD_BETA.name());
  private static final String HISTORY = FirmTables.Table.HISTORY.file();
  private static final String CALLBACKS = FirmTables.Table.CALLBACKS.file();

  /** Jobs from which on a fit is to be trusted: a suggestion of our own, no source. */
  private static final int TRUSTED = 30;

  private static final double PRICED = 0.9;

  private final FirmTables firm;
  private final List<House> houses;
  private final boolean keepsCallbacks;
  private final Optional<String> lack;

  /**
   * What a firm's tables say.
   *
   * @param keepsCallbacks whether the firm writes down who calls back
   */
  public HistoryRates(FirmTables firm, boolean keepsCallbacks) {
    this.firm = firm;
    this.houses = firm.houses();
    this.keepsCallbacks = keepsCallbacks;
    this.lack = HistoryFit.lack(houses);
  }

  /** Why nothing can be fitted to them; nothing where it can. */
  public Optional<String> lack() {
    return lack.map(why -> HISTORY + ": " + why);
  }

  /** How often each of many percentiles has held; none where nothing can be fitted. */
  public List<Held> curve() {
    return lack.isPresent() ? List.of() : Held.drawn(houses);
  }

  /** How many jobs were closed. */
  public int jobs() {
    return houses.size();
  }

  /**
   * What they say of each rate.
   *
   * @param old a rate as the jobs have it now
   */
  List<Proposal> proposals(Function<String, Old> old) {
    List<Proposal> all = new ArrayList<>();
    if (lack.isPresent()) {
      for (String name : NAMES) {
        all.add(Proposal.none(name, old.apply(name).shown(), houses.size(), lack().orElseThrow()));
      }
    } else {
      OfficeShare share = OfficeShare.of(houses);
      FitRange range = range();
      String both =
          "both ends belong together: the fit that asks for the fewest sheets, and for the most";
      all.add(share(share.alpha(), old, range, HistoryFit::alpha).known(both));
      all.add(share(share.beta(), old, range, HistoryFit::beta).known(both));
    }
    all.add(failures());
    return all;
  }

  private Proposal share(
      Figure<Ratio> fitted,
      Function<String, Old> old,
      FitRange range,
      ToDoubleFunction<HistoryFit> part) {
    double most = part.applyAsDouble(range.most());
    return Proposal.of(
        fitted.name(),
        old.apply(fitted.name()).shown(),
        fitted.value(),
        houses.size(),
        range.least().isBinomial()
            ? "houses that do not differ to " + Proposal.shown(most)
            : Proposal.range(part.applyAsDouble(range.least()), most));
  }

  private FitRange range() {
    return FitRange.of(houses, roof(), PRICED, FitRange.SEED);
  }

  /** The roof that fits are compared by: the average one. */
  private int roof() {
    return (int) Math.round(houses.stream().mapToInt(House::sheets).average().orElse(1));
  }

  private Proposal failures() {
    String name = "fail_pct";
    int kept = houses.stream().mapToInt(house -> house.sheets() - house.bad()).sum();
    if (!keepsCallbacks || kept == 0) {
      String reason =
          keepsCallbacks
              ? HISTORY + ": no sheet was kept"
              : "there is no %s: give it its heading once somebody writes down who calls back"
                  .formatted(CALLBACKS);
      return Proposal.none(name, "", houses.size(), reason);
    }
    Set<String> closed =
        firm.history().stream()
            .map(row -> row.of(FirmFields.JOB).value())
            .collect(Collectors.toSet());
    long failed =
        firm.callbacks().stream()
            .filter(row -> closed.contains(row.of(FirmFields.JOB).value()))
            .filter(row -> row.has(FirmFields.WAS))
            .filter(row -> row.of(FirmFields.WAS).value() == FirmFields.Was.KEPT)
            .count();
    FailRate rate =
        FirmRecords.failRate(
            KeptSheets.kept(Figure.of(kept, Units.SHEET))
                .failed(Figure.of(Math.min(failed, kept), Units.SHEET)),
            Figure.of(95, Units.PERCENT));
    return Proposal.of(
            name,
            "",
            rate.rate().in(Units.PERCENT).value(),
            houses.size(),
            "at most " + Proposal.shown(rate.atMost().in(Units.PERCENT).value()))
        .known(Shown.text("%s of %,d sheets that were kept; at most with 95 of 100", failed, kept));
  }

  /** What they say, in words. */
  List<String> lines() {
    if (lack.isPresent()) {
      return List.of(lack().orElseThrow());
    }
    HistoryFit fit = HistoryFit.byMoments(houses);
    FitRange range = range();
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s: %s jobs; a roof of %s sheets, the average one, has at most %s bad ones in 9 of 10 houses (%s to %s given only %s jobs)%s"
            .formatted(
                HISTORY,
                houses.size(),
                roof(),
                ninetieth(fit),
                ninetieth(range.least()),
                ninetieth(range.most()),
                houses.size(),
                houses.size() < TRUSTED
                    ? "; 12 jobs are enough to begin with, %s to trust".formatted(TRUSTED)
                    : ""));
    if (fit.isBinomial()) {
      lines.add(HISTORY + ": houses differ no more than chance makes them");
    }
    lines.add("each house, forecast from all others:");
    Held.priced(houses).forEach(held -> lines.add("  " + held.inWords()));
    curve().forEach(held -> lines.add("  " + held.bar()));
    lines.add(
        "  # held, | meant: held beyond meant is caution, held short of it a forecast that says too few");
    return lines;
  }

  private int ninetieth(HistoryFit fit) {
    return fit.chances(roof()).percentile(PRICED);
  }
}
