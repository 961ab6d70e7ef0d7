package sheathwright.catalog;

import java.util.function.Function;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/**
 * One result of a library function.
 *
 * @param column as tables call it
 * @param unit of its numbers; null if it is a word
 * @param marked whether the crew marks or cuts it
 * @param in takes it out of what the method returned
 */
public record Result(String column, Unit<?> unit, Marked marked, Function<Object, Traced> in) {}
