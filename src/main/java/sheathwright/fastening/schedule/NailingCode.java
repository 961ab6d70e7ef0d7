package sheathwright.fastening.schedule;

import sheathwright.figure.Option;

/**
 * A code and its edition. Of the seven that come first the roof nailing table was read; the
 * high-wind house code of 2023 prints ring-shank nails by wind (see {@code high_wind_schedule}); of
 * any other nothing is known.
 */
public enum NailingCode implements Option<NailingCode> {
  IRC_2015,
  IRC_2018,
  IRC_2021,
  IRC_2024,
  IBC_2015,
  IBC_2021,
  IBC_2024,
  FBC_2023,
  OTHER
}
