package sheathwright.job.price;

import sheathwright.figure.Figure;

/**
 * What one of something that may be found costs and sells for.
 *
 * @param unit what it is
 * @param direct material with tax, and labor
 * @param exact with overhead and margin
 * @param quoted up to the next step of its price
 */
public record FoundPrice(FoundUnit unit, Figure<?> direct, Figure<?> exact, Figure<?> quoted) {}
