/**
 * The one linear program behind the bounds on sticks and on sheets, and the certificate that a
 * bound can be checked by without it.
 *
 * <p>Its numbers are floating point; whoever takes a bound from them makes whole numbers of them
 * first. It is made for programs of columns over some hundreds of rows.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.cutting.program;
