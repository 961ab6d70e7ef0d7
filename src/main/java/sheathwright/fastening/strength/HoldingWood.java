package sheathwright.fastening.strength;

import java.util.List;
import sheathwright.figure.Option;
import sheathwright.wood.Species;

/** The wood of a rafter, by the group on its grade stamp. */
public enum HoldingWood implements Option<HoldingWood> {
  WOOD_DOUGLAS_FIR_LARCH("douglas-fir-larch"),
  WOOD_DOUGLAS_FIR_LARCH_NORTH("douglas-fir-larch-north"),
  WOOD_HEM_FIR("hem-fir"),
  WOOD_HEM_FIR_NORTH("hem-fir-north"),
  WOOD_SOUTHERN_PINE("southern-pine"),
  WOOD_SPRUCE_PINE_FIR("spruce-pine-fir"),
  WOOD_SPRUCE_PINE_FIR_SOUTH("spruce-pine-fir-south"),
  WOOD_PONDEROSA_PINE("ponderosa-pine"),
  WOOD_EASTERN_HEMLOCK("eastern-hemlock"),
  WOOD_REDWOOD("redwood"),
  WOOD_WESTERN_CEDARS("western-cedars"),
  WOOD_WESTERN_WOODS("western-woods");

  private final String word;

  HoldingWood(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> inTheTrade() {
    return Species.inTheTrade(word);
  }
}
