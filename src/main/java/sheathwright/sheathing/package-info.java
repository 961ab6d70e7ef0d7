/**
 * Sheets of decking: how many a roof takes.
 *
 * <p>Sources: arithmetic on the nominal 4 ft by 8 ft sheet. Does not cover where each sheet lies,
 * strips at the ridge, spans, or which old sheets may stay.
 */
package sheathwright.sheathing;
