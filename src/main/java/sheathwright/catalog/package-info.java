/**
 * What makes a static method a library function, and where every function is found: its name, its
 * text, its parameters with unit and range, its results and its source, each written once at the
 * method itself.
 *
 * <p>Does not know the trade; the rooms behind bring the functions.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.catalog;
