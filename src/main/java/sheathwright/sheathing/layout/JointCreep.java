package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Sheets;

/**
 * How far a row of sheets can run before it must be trimmed.
 *
 * @param panels whole sheets before the first joint that loses its bearing, or no limit
 */
public record JointCreep(@Column(value = "panels", unit = "sheet") Figure<Sheets> panels) {}
