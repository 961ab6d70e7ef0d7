package sheathwright.life.unseen;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.forecast.Zone;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.zone.ToldZone;

/** The zones that a forecast was made from, with what is likely in each. */
public final class ZoneList {

  private ZoneList() {}

  /** The zones of a forecast that was made before anything was open. */
  public static Roll of(Estimate estimate, JobForecast forecast) {
    List<ToldZone> told = estimate.job().lines(JobTable.ZONES).stream().map(ToldZone::new).toList();
    return Roll.of(
        "deck_zones",
        "the zones of the deck",
        IntStream.range(0, forecast.zones().size()).boxed().toList(),
        Roll.<Integer>column("zone", zone -> Choice.literal(forecast.zones().get(zone).name())),
        Roll.column("places", zone -> forecast.places("", forecast.zones().get(zone).places())),
        Roll.column("seen", zone -> of(told, zone, ToldZone::seen, forecast, Zone::seen)),
        Roll.column("bad", zone -> of(told, zone, ToldZone::bad, forecast, Zone::bad)),
        Roll.column("odds", zone -> of(told, zone, ToldZone::odds, forecast, Zone::odds)),
        Roll.column(
            "shows_pct",
            zone ->
                of(told, zone, ToldZone::recognized, forecast, plain -> plain.recognized())
                    .in(Units.PERCENT)),
        Roll.column(
            "most",
            zone -> forecast.places("", forecast.chancesOfZones().get(zone).percentile(0.9))));
  }

  private static Figure<Ratio> of(
      List<ToldZone> told,
      int zone,
      Function<ToldZone, Figure<Ratio>> said,
      JobForecast forecast,
      ToDoubleFunction<Zone> otherwise) {
    return zone < told.size()
        ? said.apply(told.get(zone))
        : forecast.chance("", otherwise.applyAsDouble(forecast.zones().get(zone)));
  }
}
