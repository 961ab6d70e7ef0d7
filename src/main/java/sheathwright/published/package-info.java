/**
 * Tables as printed, one file each in a folder by body and edition, and the words that find their
 * rows.
 *
 * <p>Sources: NDS 2018 and 1997 supplements, NDS 2018 gravities, fastener sizes and factors,
 * southern pine values before June 2013, member factors, sizes by PS 20 and before it, rafter ties,
 * IRC 2021 panel spans, panel makers' weights, IRC, IBC and FBC-Residential roof nailing, IRC 2015,
 * 2021 and 2024 and FBC 2023 wind tables, ASCE 7 exposure coefficients, roof live and snow loads
 * and weights of materials. Each file begins with its caption, source, mark and units, and every
 * deviation from print. Does not cover machine-graded lumber, timbers, or any table that a code
 * prints of computed results: those are computed here and only tested against print.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.published;
