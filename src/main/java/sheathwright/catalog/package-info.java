/**
 * What makes a static method a library function, and where every function is found: its name, its
 * text, its parameters with unit and range, its results and its source, each written once at the
 * method itself.
 *
 * <p>Does not know the trade; the rooms behind bring the functions.
 */
package sheathwright.catalog;
