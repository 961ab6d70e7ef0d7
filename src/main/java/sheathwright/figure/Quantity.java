package sheathwright.figure;

/**
 * The kinds of quantity that a {@link Figure} can be. A kind exists for the compiler alone: handing
 * a {@code Figure<Pressure>} to a parameter that wants a {@code Figure<Length>} does not compile.
 */
public interface Quantity {

  /** Feet, inches. */
  interface Length extends Quantity {}

  /** Square feet, squares. */
  interface Area extends Quantity {}

  /** Section modulus, in cubic inches. */
  interface SectionModulus extends Quantity {}

  /** Second moment of area, in inches to the fourth. */
  interface SecondMoment extends Quantity {}

  /** A load spread over an area, in pounds per square foot. */
  interface Pressure extends Quantity {}

  /**
   * A wind pressure at strength level. It is no {@link Pressure}: the building code's share makes
   * it one at ASD level.
   */
  interface StrengthPressure extends Quantity {}

  /** The share of a load at strength level that is its allowable level. */
  interface AllowableShare extends Quantity {}

  /** Miles an hour. */
  interface Speed extends Quantity {}

  /** A stress or modulus inside the wood, in pounds per square inch. */
  interface Stress extends Quantity {}

  /** Pounds, tons. */
  interface Force extends Quantity {}

  /** Pounds for each inch or foot of length. */
  interface LineForce extends Quantity {}

  /** What a volume weighs, in pounds per cubic foot. */
  interface Density extends Quantity {}

  /** Bending moment, in inch-pounds. */
  interface Moment extends Quantity {}

  /** Stiffness in bending, modulus times moment of inertia, in pound-square-inches. */
  interface Stiffness extends Quantity {}

  /** Hours of labor. */
  interface Time extends Quantity {}

  /** Dollars. */
  interface Money extends Quantity {}

  /** A pure number: a factor, a percentage, a pitch, a specific gravity. */
  interface Ratio extends Quantity {}

  /** Whole or part sheets of decking. */
  interface Sheets extends Quantity {}

  /** Nails. */
  interface Nails extends Quantity {}

  /** Sticks, sisters, rafters: lumber by the piece. */
  interface Pieces extends Quantity {}

  /** So much of one kind for each one of another: dollars per sheet, nails per sheet. */
  interface Per<A extends Quantity, B extends Quantity> extends Quantity {}
}
