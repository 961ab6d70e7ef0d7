package sheathwright.framing;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Stress;
import sheathwright.published.LumberSize;

/** Rafters with a sister along their full length, both on the same supports. */
public final class SisteredRafters {

  private SisteredRafters() {}

  /**
   * How an old rafter and a full-length sister share the load that comes on after nailing: by their
   * stiffness.
   *
   * <pre>
   * sister share = E_sister I_sister ÷ (E_rafter I_rafter + E_sister I_sister)
   * rafter share = E_rafter I_rafter ÷ (E_rafter I_rafter + E_sister I_sister)
   * </pre>
   *
   * <p>Does not cover a sister that ends short of the supports, load that was on the rafter before,
   * old lumber larger than its dressed size, or ripped stock. Section moduli are never added: the
   * piece that is first used up limits both. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * sisterShare(SIZE_2X8, SIZE_2X8, psi(1600000), psi(1600000)).sister() // 0.5
   * sisterShare(SIZE_2X6, SIZE_2X8, psi(1400000), psi(1600000)).sister() // 0.7236
   * }</pre>
   *
   * @param rafterSize nominal size of the old rafter, taken at its dry dressed size
   * @param sisterSize nominal size of the sister, taken at its dry dressed size
   * @param rafterModulus E of the old rafter, 100000 psi to 5000000 psi
   * @param sisterModulus E of the sister, 100000 psi to 5000000 psi
   * @return the old rafter's part of the load and the sister's; together 1
   * @throws RefusedException if a number lies outside its range
   * @see "derived: two pieces side by side bend to one curve; dressed sizes from PS 20 (2020), read
   *     second hand"
   */
  @LibraryFunction
  public static SisterShare sisterShare(
      @Column("rafter_size") OneOf<LumberSize> rafterSize,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column(value = "rafter_modulus_psi", preset = "1400000") Figure<Stress> rafterModulus,
      @Column(value = "sister_modulus_psi", preset = "1400000") Figure<Stress> sisterModulus) {
    var rafter = Ply.dressed("rafter", rafterSize.choice().argument("rafter_size"));
    var sister = Ply.dressed("sister", sisterSize.choice().argument("sister_size"));
    return new Stiffnesses(
            rafter.stiffness(SisterArguments.modulus("rafter", rafterModulus)),
            sister.stiffness(SisterArguments.modulus("sister", sisterModulus)))
        .share();
  }
}
