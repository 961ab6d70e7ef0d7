/**
 * A firm's year from one seed: random houses from the first call to the last invoice, with what
 * goes wrong in an office on the way. Some years run with the tests; {@code src/build/years.sh}
 * runs as many as are asked for.
 */
package sheathwright.year;
