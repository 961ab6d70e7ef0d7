package sheathwright.job;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.pricing.UnitPrice;

/**
 * What is quoted and ordered of a deck: its sheets, their nails and prices, and the rafters'
 * leveling.
 *
 * @param planned the sheets that are in the price
 * @param atWorst all that the deck could take
 * @param nails in each where it takes the most, near the edges of the roof
 * @param plannedPrice of a planned sheet
 * @param extraPrice of one more
 * @param leveling of the rafters, if the job levels them
 */
record SheetWork(
    Figure<Sheets> planned,
    Figure<Sheets> atWorst,
    Figure<Per<Nails, Sheets>> nails,
    UnitPrice plannedPrice,
    UnitPrice extraPrice,
    Optional<Leveling> leveling) {}
