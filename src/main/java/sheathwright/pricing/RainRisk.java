package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;

/**
 * What is at stake when a roof is opened.
 *
 * @param lostDay a day on which nothing is opened
 * @param damage a house that is soaked through a wholly open roof
 * @param open how much of the roof is opened
 */
public record RainRisk(
    @Column(
            value = "lost_day_usd",
            least = 0,
            most = 100_000,
            rule = "a day of the crew, 780 for instance")
        Figure<Money> lostDay,
    @Column(
            value = "damage_usd",
            least = 1,
            most = 10_000_000,
            rule = "ceilings and what lies under them, 4200 for instance")
        Figure<Money> damage,
    @Column(
            value = "open_share",
            preset = "1",
            least = 0.01,
            most = 1,
            rule = "of the roof; 0.5 where half of it is opened")
        Figure<Ratio> open) {

  private static final Columns COLUMNS = Columns.of(RainRisk.class);

  public RainRisk {
    lostDay = COLUMNS.let("lostDay", lostDay);
    damage = COLUMNS.let("damage", damage);
    open = COLUMNS.let("open", open);
  }

  /** A lost day costs so much; what rain would do is still to be said. */
  public static RainRisk lostDay(Figure<Money> day) {
    return new RainRisk(day, null, null);
  }

  public RainRisk damage(Figure<Money> soaked) {
    return new RainRisk(lostDay, soaked, open);
  }

  public RainRisk open(Figure<Ratio> share) {
    return new RainRisk(lostDay, damage, share);
  }
}
