/**
 * What work costs and what it sells for.
 *
 * <p>Sources: overhead on direct cost and margin on price are common practice; the rest is
 * arithmetic on the user's own price book. Does not cover sales tax on labor, local caps on
 * deposits, or currencies other than the dollar.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.pricing;
