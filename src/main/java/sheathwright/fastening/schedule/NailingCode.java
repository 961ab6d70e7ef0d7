package sheathwright.fastening.schedule;

import sheathwright.figure.Option;

/** A code and its edition, of those whose roof nailing was read. */
public enum NailingCode implements Option<NailingCode> {
  IRC_2015,
  IRC_2018,
  IRC_2021,
  IRC_2024,
  IBC_2015,
  IBC_2021,
  IBC_2024
}
