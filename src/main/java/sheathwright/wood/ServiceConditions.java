package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * Where wood serves: dry, no warmer than a roof gets, and not incised, unless something else is
 * said.
 *
 * @param moisture whether it stays at 19 % or less
 * @param temperature degrees Fahrenheit that the wood keeps for long
 * @param incised whether slits were pressed into it for a preservative
 */
public record ServiceConditions(
    @Column(value = "moisture", preset = "dry") OneOf<ServiceMoisture> moisture,
    @Column(
            value = "temperature_f",
            preset = "70",
            least = 0,
            most = 150,
            rule = "100 and less changes nothing; more than 150 is not for wood")
        Figure<Ratio> temperature,
    @Column(value = "incised", preset = "no") OneOf<YesNo> incised) {

  private static final Columns COLUMNS = Columns.of(ServiceConditions.class);

  public ServiceConditions {
    moisture = COLUMNS.let("moisture", moisture);
    temperature = COLUMNS.let("temperature", temperature);
    incised = COLUMNS.let("incised", incised);
  }

  /** In this damp or dryness. */
  public static ServiceConditions of(OneOf<ServiceMoisture> moisture) {
    return new ServiceConditions(moisture, null, null);
  }

  public ServiceConditions temperature(Figure<Ratio> degrees) {
    return new ServiceConditions(moisture, degrees, incised);
  }

  public ServiceConditions incised(OneOf<YesNo> slits) {
    return new ServiceConditions(moisture, temperature, slits);
  }
}
