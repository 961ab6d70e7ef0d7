package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * Whether to patch a deck or to lay it anew, before its bad sheets are counted.
 *
 * @param breakEven from so many bad sheets on, the whole deck anew costs no more
 * @param patch what patching costs on average
 * @param redeck what the whole deck costs anew
 * @param chance how likely it is that the whole deck anew turns out the cheaper
 */
public record PatchOrRedeck(
    @Column(value = "break_even_sheets", unit = "sheet") Figure<Sheets> breakEven,
    @Column("patch_mean_usd") Figure<Money> patch,
    @Column("redeck_all_usd") Figure<Money> redeck,
    @Column("chance_redeck_cheaper") Figure<Ratio> chance) {}
