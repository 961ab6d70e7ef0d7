/**
 * The number that remembers: figures, choices, conditions and checks that record how they were
 * computed, their units, and how both are written down.
 *
 * <p>Needs nothing but the JDK. Knows no trade: what a sheet, a rafter or a price book is stands in
 * the rooms behind. Does not cover temperatures, metric units or calendar time.
 */
package sheathwright.figure;
