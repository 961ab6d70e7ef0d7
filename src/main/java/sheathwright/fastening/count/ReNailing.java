package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.YesNo;

/**
 * What a re-roof rule asks of an existing deck.
 *
 * @param needed whether nails must be added
 * @param nails to drive into one sheet
 */
public record ReNailing(
    @Column("needed") Choice<YesNo> needed,
    @Column(value = "nails", unit = "nails/sheet") Figure<Per<Nails, Sheets>> nails) {}
