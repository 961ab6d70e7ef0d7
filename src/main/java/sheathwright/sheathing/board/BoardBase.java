package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.YesNo;

/**
 * Whether old boards can be covered as they are.
 *
 * @param thickEnough whether the thinnest board is thick enough
 * @param gapOk whether the widest gap is narrow enough
 * @param holeOk whether the widest hole is small enough
 * @param ok whether all three hold
 */
public record BoardBase(
    @Column("thick_enough") Choice<YesNo> thickEnough,
    @Column("gap_ok") Choice<YesNo> gapOk,
    @Column("hole_ok") Choice<YesNo> holeOk,
    @Column("ok") Choice<YesNo> ok) {}
