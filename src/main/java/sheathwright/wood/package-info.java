/**
 * What a stick of sawn lumber is and what it can carry: species, grades, sizes, the section as it
 * stands in the roof, the standard's design values and every factor on them.
 *
 * <p>Sources: NDS 2018 and its supplements through the published tables; PS 20 for sizes. Creep,
 * incising, heat and the stability equation are from memory and say so. Does not cover machine-
 * graded lumber, timbers or damaged members. Everything here is screening: local code and a
 * licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.wood;
