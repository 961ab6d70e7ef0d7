package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;

/**
 * What a stick measures where it is cut through, standing on edge.
 *
 * @param thickness across the load
 * @param depth along the load
 * @param area of the cut
 * @param sectionModulus against bending
 * @param secondMoment against sagging
 */
public record SectionProperties(
    @Column("actual_thickness_in") Figure<Length> thickness,
    @Column("actual_depth_in") Figure<Length> depth,
    @Column("section_sq_in") Figure<Area> area,
    @Column("section_modulus_in3") Figure<SectionModulus> sectionModulus,
    @Column("second_moment_in4") Figure<SecondMoment> secondMoment) {}
