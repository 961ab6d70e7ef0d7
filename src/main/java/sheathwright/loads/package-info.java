/**
 * What lies and pulls on a roof: dead load by layers, roof live load, and how loads combine. Snow
 * and wind have corners of their own.
 *
 * <p>Sources: ASCE 7-10, 7-16 and 7-22 and IRC 2018 through the published tables. Loads stand on
 * the horizontal projection. Does not cover ponding, seismic loads, or loads that only a local
 * table gives. Screening: local code and a licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.loads;
