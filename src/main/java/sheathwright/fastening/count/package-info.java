/**
 * How many nails a sheet, a piece or an old deck takes, and what to order.
 *
 * <p>Sources: arithmetic on the spacing; common practice for spare and packages. Does not cover
 * which spacing the code asks for.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.fastening.count;
