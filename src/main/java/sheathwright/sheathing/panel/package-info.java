/**
 * Panels by their stamp: spans, weights, clips on edges, and which pieces fit.
 *
 * <p>Sources: IRC 2021 Table R503.2.1.1(1) and IBC; panel makers' advice and weights. Does not
 * cover panels without a stamp.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.panel;
