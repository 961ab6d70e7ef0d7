package sheathwright.loads;

import sheathwright.figure.Option;

/** What a roof is built up of, as the table of dead loads names it. */
public enum RoofMaterial implements Option<RoofMaterial> {
  ASPHALT_SHINGLES,
  WOOD_SHINGLES,
  ASBESTOS_CEMENT_SHINGLES,
  SLATE_3_16("slate-3/16-in"),
  SLATE_1_4("slate-1/4-in"),
  CEMENT_TILE,
  BOOK_TILE_2_IN,
  BOOK_TILE_3_IN,
  ROMAN_TILE,
  SPANISH_TILE,
  /** Comes on top of the tile that is laid in it. */
  TILE_MORTAR,
  THREE_PLY_READY_ROOFING,
  FOUR_PLY_FELT_AND_GRAVEL,
  FIVE_PLY_FELT_AND_GRAVEL,
  SINGLE_PLY_SHEET,
  BITUMINOUS_SMOOTH,
  BITUMINOUS_GRAVEL,
  COPPER_OR_TIN,
  LIQUID_APPLIED,
  CORRUGATED_ASBESTOS_CEMENT,
  STANDING_SEAM,
  PLYWOOD_DECK("plywood"),
  WOOD_SHEATHING,
  DECKING_2_IN,
  DECKING_3_IN,
  FIBERBOARD_1_2("fiberboard-1/2-in"),
  GYPSUM_BOARD,
  PLASTER_ON_WOOD_LATH,
  ACOUSTICAL_FIBERBOARD,
  FIBROUS_GLASS_INSULATION,
  POLYSTYRENE_FOAM,
  RIGID_INSULATION_1_2("rigid-insulation-1/2-in"),
  SUSPENDED_STEEL_CHANNEL;

  private final String word;

  RoofMaterial() {
    this("");
  }

  RoofMaterial(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word.isEmpty() ? Option.super.word() : word;
  }
}
