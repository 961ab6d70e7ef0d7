package sheathwright.loads;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The dead load of a roof, built up from its layers. */
public final class DeadLoad {

  private static final String FATE = "fate";
  private static final String LOAD = "load_psf";
  private static final String OFF = "comes_off_psf";
  private static final String ON = "goes_on_psf";

  private static final Source LAYERS = Source.derived("sum of the layers");

  private DeadLoad() {}

  /**
   * The layers as a list: material, layers, thickness in inches, what becomes of them, load on the
   * slope in psf, and how much of it comes off and goes on.
   */
  public static Roll roll(List<Layer> layers) {
    return Roll.of(
        "dead_layers",
        "the layers of the roof",
        layers,
        Roll.column("material", Layer::material),
        Roll.column("layers", Layer::layers),
        Roll.column("thickness_in", Layer::thickness),
        Roll.column(FATE, Layer::fate),
        Roll.column(LOAD, Layer::load),
        Roll.column(OFF, layer -> layer.loadIf(LayerFate.COMES_OFF)),
        Roll.column(ON, layer -> layer.loadIf(LayerFate.GOES_ON)));
  }

  /** What all the layers weigh that lie there when the job is done, for each sq ft of the slope. */
  public static Figure<Pressure> onSlope(Roll layers) {
    return layers
        .sum(LOAD, Units.PSF)
        .minus(comingOff(layers))
        .as("dead_on_slope_psf", Units.PSF, LAYERS);
  }

  /** Whether the list says what comes off or goes on. */
  public static boolean saysWhatChanges(Roll layers) {
    return layers.cellsOf(FATE).stream()
        .anyMatch(fate -> !fate.plain().equals(LayerFate.STAYS.word()));
  }

  /** What comes off weighs. */
  public static Figure<Pressure> comingOff(Roll layers) {
    return layers.sum(OFF, Units.PSF).as("covering_off_psf", Units.PSF, LAYERS);
  }

  /** What goes on weighs. */
  public static Figure<Pressure> goingOn(Roll layers) {
    return layers.sum(ON, Units.PSF).as("covering_on_psf", Units.PSF, LAYERS);
  }
}
