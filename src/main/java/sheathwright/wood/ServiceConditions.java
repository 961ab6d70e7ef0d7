package sheathwright.wood;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * Where wood serves, and the nails and screws in it: no warmer than a roof gets, unless something
 * else is said. Whether it stays dry has to be said: nobody's word is no dryness.
 *
 * @param moisture of the wood when it is nailed and afterwards; dry is stays-dry, wet is stays-wet
 * @param temperature degrees Fahrenheit that the wood keeps for long
 */
public record ServiceConditions(
    @Column("moisture") @Assumed("stays-wet") OneOf<Moisture> moisture,
    @Column(
            value = "temperature_f",
            preset = "70",
            least = 0,
            most = 150,
            rule = "100 and less changes nothing; more than 150 is not for wood")
        Figure<Ratio> temperature) {

  private static final Columns COLUMNS = Columns.of(ServiceConditions.class);
  private static final Figure<Ratio> WARM = border("warm_f", 100);
  private static final Figure<Ratio> HOT = border("hot_f", 125);

  /** Wood that stays dry and no warmer than a roof gets. */
  public static final ServiceConditions DRY = new ServiceConditions(Moisture.STAYS_DRY, null);

  /** How damp the wood is in service, however it was when it was nailed. */
  public enum InService implements Option<InService> {
    /** 19 % at most. */
    DRY,
    /** Above 19 % for a long time. */
    WET
  }

  /** How warm the wood stays, in degrees Fahrenheit, as the tables are divided. */
  public enum Heat implements Option<Heat> {
    TO_100_F,
    TO_125_F,
    TO_150_F
  }

  public ServiceConditions {
    moisture = COLUMNS.let("moisture", moisture);
    temperature = COLUMNS.let("temperature", temperature);
  }

  /** In this damp or dryness. */
  public static ServiceConditions of(OneOf<Moisture> moisture) {
    return new ServiceConditions(moisture, null);
  }

  public ServiceConditions temperature(Figure<Ratio> degrees) {
    return new ServiceConditions(moisture, degrees);
  }

  /** What its moisture comes to in service. */
  public Choice<InService> inService() {
    var damp = moisture.choice();
    return Choice.choose(
            Condition.any(damp.is(Moisture.GETS_WET_LATER), damp.is(Moisture.STAYS_WET)),
            InService.WET,
            InService.DRY)
        .as("in_service");
  }

  /** The part of the tables that its temperature falls in. */
  public Choice<Heat> heat() {
    var above =
        Choice.choose(temperature.isAtMost(HOT), Heat.TO_125_F, Heat.TO_150_F).as("heat_above");
    return Choice.choose(temperature.isAtMost(WARM), Heat.TO_100_F, above).as("heat");
  }

  private static Figure<Ratio> border(String name, double degrees) {
    return Figure.constant(name, degrees, Units.RATIO, Source.fromMemory("NDS 2018, Table 2.3.3"))
        .symbol((int) degrees + " °F");
  }
}
