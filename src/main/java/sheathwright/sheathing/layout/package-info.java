/**
 * Where each sheet of a plane lies: courses, joints, strips, what is cut off and used again.
 *
 * <p>Sources: arithmetic on the nominal 4 ft by 8 ft sheet, common practice for gaps and stagger.
 * Does not read an old deck's joints.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.layout;
