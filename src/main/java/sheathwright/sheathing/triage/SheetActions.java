package sheathwright.sheathing.triage;

import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.RefusedException;

/** What is done where something was found on a deck. */
public final class SheetActions {

  private SheetActions() {}

  /**
   * What is to be done with a sheet where something was found, by what was measured there: replace
   * it, cover a hole, support, relieve, refasten, dry, watch, lift and lay it again, or stop; with
   * the reason in a sentence.
   *
   * <pre>
   * the first of these that speaks: framing stopped → stop; probe &gt; limit → replace;
   * delaminated or broken → replace; hole &gt; limit → replace; screw hold &lt; wanted → replace;
   * rot, soft, swollen, hole or pulled, not measured → replace; thickness &lt; least → stop;
   * thin, not measured → stop; hole up to the limit → cover; bearing &lt; limit → support;
   * edge bare that is to be held → support; unsupported or gap-wide, not measured → support;
   * joint &lt; limit and hump &gt; limit → relieve; tight, not measured → relieve;
   * sound nails &lt; wanted → refasten; loose, or soft with a probe up to its limit → refasten;
   * moisture &gt; limit → dry; stain → watch; over a built-up rafter → lift; else → watch
   * </pre>
   *
   * <p>Does not cover why the wood went bad, the framing, fire-treated panels, or a whole roof:
   * what nobody opened is not known. Moisture alone never replaces a sheet. A blank was not
   * measured, and what was not measured is never good.
   *
   * <pre>{@code
   * sheetAction(SheetEvidence.of(ROT).probe(in("3/8")), HoldEvidence.NOT_LOOKED_AT, SheetPlace.FREE, TriageLimits.USUAL).reason() // replace: an awl goes in 3/8 in; more than 1/4 in is cut out
   * sheetAction(SheetEvidence.of(ROT), HoldEvidence.NOT_LOOKED_AT, SheetPlace.FREE, TriageLimits.USUAL).reason() // replace: rot, not measured
   * }</pre>
   *
   * @param wood what was found, and what was measured of the wood
   * @param held what was measured of joints, bearing, edges and nails
   * @param place what is known of the framing under it
   * @param limits how far it may go
   * @return the action, a sentence with what was measured and its limit, the other tests that
   *     speak, and how many of nine tests had something to go by
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: probe, hole, hump, and the order; ANSI/SPRI FX-1, from
   *     memory: a screw pulled on the roof; APA E30, from memory: 1/8 in between panels; 19 % is
   *     the line of dry lumber, NDS, from memory"
   */
  @LibraryFunction(
      words = {
        "patch",
        "triage",
        "rot",
        "soft",
        "awl",
        "moisture",
        "what to do",
        "replace",
        "damage"
      })
  public static SheetAction sheetAction(
      SheetEvidence wood, HoldEvidence held, SheetPlace place, TriageLimits limits) {
    return SheetTests.USUAL.action(wood, held, place, limits);
  }
}
