/**
 * A disk that is kept in memory, can be copied whole, fills up, and on which a process dies in the
 * middle of what it writes. The program finds it through its paths, as it finds any other.
 */
package sheathwright.year.disk;
