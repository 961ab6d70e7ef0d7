package sheathwright.fastening.schedule;

import sheathwright.figure.Option;

/** Why a nailing schedule has the spacings that it has. */
public enum NailingReason implements Option<NailingReason> {
  NO_WIND_FOOTNOTE,
  WIND_WITHIN_THE_FOOTNOTE,
  WIND_BEYOND_THE_FOOTNOTE
}
