package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.YesNo;

/**
 * The two chains that hold a roof down, side by side.
 *
 * @param seam wind against panel and seam
 * @param clip wind against a clip
 * @param screws wind against the screws of a clip
 * @param nails wind against the nails of the deck
 * @param covering uplift that the covering's hold on the deck bears
 * @param deck uplift that the deck's hold on the rafters bears
 * @param weakest the link that gives way first
 * @param ok whether every link holds
 */
public record HoldDown(
    @Column("seam_ratio") Check seam,
    @Column("clip_ratio") Check clip,
    @Column("screws_ratio") Check screws,
    @Column("nails_ratio") Check nails,
    @Column("covering_holds_psf") Figure<Pressure> covering,
    @Column("deck_holds_psf") Figure<Pressure> deck,
    @Column("weakest") Choice<Link> weakest,
    @Column("ok") Choice<YesNo> ok) {

  /** A link of the chain from the covering to the rafters. */
  public enum Link implements Option<Link> {
    SEAM,
    CLIP,
    SCREWS,
    NAILS
  }

  @Override
  public String toString() {
    return "covering to deck holds %s, deck to rafters holds %s; weakest: %s, ok: %s"
        .formatted(covering, deck, weakest, ok);
  }
}
