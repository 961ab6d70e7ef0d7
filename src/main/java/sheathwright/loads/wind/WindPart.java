package sheathwright.loads.wind;

import sheathwright.published.LoadEdition;

/** A part of a plane by where it lies, and the label that an edition's figures give it. */
enum WindPart {
  FIELD(WindZone.ZONE_1, WindZone.ZONE_1),
  EAVE(WindZone.ZONE_2, WindZone.ZONE_2E),
  RAKE(WindZone.ZONE_2, WindZone.ZONE_2N),
  RIDGE(WindZone.ZONE_2, WindZone.ZONE_2R),
  EAVE_CORNER(WindZone.ZONE_3, WindZone.ZONE_3E),
  RIDGE_CORNER(WindZone.ZONE_3, WindZone.ZONE_3R);

  private final WindZone plain;
  private final WindZone in2016;

  WindPart(WindZone plain, WindZone in2016) {
    this.plain = plain;
    this.in2016 = in2016;
  }

  /** Corners of hip roofs are zone 3 in every edition. */
  WindZone label(LoadEdition edition, RoofShape roof) {
    boolean isHipCorner = roof == RoofShape.HIP && this == EAVE_CORNER;
    return edition == LoadEdition.ASCE7_16 && !isHipCorner ? in2016 : plain;
  }
}
