/**
 * The number that remembers: figures, choices, conditions and checks that record how they were
 * computed, their units, and how both are written down.
 *
 * <p>Needs nothing but the JDK. Knows no trade: what a sheet, a rafter or a price book is stands in
 * the rooms behind. Does not cover temperatures, metric units or calendar time.
 *
 * <p>When a refusal throws: a text that cannot be read ({@code in("wet")}) and a table throw at
 * once. A number that is not allowed does not: the figure made from it keeps the reason, whatever
 * is made from that passes it on, and it is thrown where somebody asks for the value or writes it
 * down. {@code refusal()} says it beforehand. What is thrown is a {@link
 * sheathwright.figure.RefusedException} with one line for whoever gave the number; any other
 * exception is a fault of the program's own, or of the caller's.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.figure;
