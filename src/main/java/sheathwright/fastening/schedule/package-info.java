/**
 * The codes' schedules: which nail, and how far apart, by code, panel, wind and exposure.
 *
 * <p>Sources: IRC, IBC and FBC-Residential roof nailing by edition, read on code pages, through the
 * published tables. Does not cover design for wind, which takes over where the schedules end.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.fastening.schedule;
