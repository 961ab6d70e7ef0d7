package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Pressure;

/**
 * What a dry panel weighs.
 *
 * @param weight of a square foot, in psf
 * @param sheet of one sheet, in pounds
 */
public record PanelWeight(
    @Column("weight_psf") Figure<Pressure> weight, @Column("sheet_lb") Figure<Force> sheet) {}
