package sheathwright.loads;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The dead load of a roof, built up from its layers. */
public final class DeadLoad {

  private static final String LOAD = "load_psf";

  private DeadLoad() {}

  /** The layers as a list: material, layers, thickness in inches, load on the slope in psf. */
  public static Roll roll(List<Layer> layers) {
    return Roll.of(
        "dead_layers",
        "the layers of the roof",
        layers,
        Roll.column("material", Layer::material),
        Roll.column("layers", Layer::layers),
        Roll.column("thickness_in", Layer::thickness),
        Roll.column(LOAD, Layer::load));
  }

  /** What all the layers weigh, for each square foot of the slope. */
  public static Figure<Pressure> onSlope(Roll layers) {
    return layers
        .sum(LOAD, Units.PSF)
        .as("dead_on_slope_psf", Units.PSF, Source.derived("sum of the layers"));
  }
}
