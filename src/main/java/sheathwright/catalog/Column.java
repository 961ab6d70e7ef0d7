package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import sheathwright.figure.Limits;

/**
 * What a parameter, a part of a thing, or a result is called where tables are filled, and
 * everything else that is to be known of it. At a part of a thing it is written once for every
 * function that takes the thing: guard, message, help and drop-down are made from it. A parameter
 * that is itself a thing has no column of its own, but may put a prefix before the thing's.
 */
@Target({ElementType.PARAMETER, ElementType.METHOD, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
public @interface Column {

  /** Snake case with the unit at the end: {@code edge_spacing_in}. */
  String value() default "";

  /** Stands before every column of a thing, where a call has two of one kind: {@code sister_}. */
  String prefix() default "";

  /**
   * The unit as it is written after a number, where the name's ending does not say it: {@code
   * $/nail}.
   */
  String unit() default "";

  /** What a blank cell means, as text; empty if a value must be given. */
  String preset() default "";

  /** The least number allowed. */
  double least() default Double.NEGATIVE_INFINITY;

  /** The greatest number allowed. */
  double most() default Double.POSITIVE_INFINITY;

  /** Which numbers between the two are allowed. */
  Limits.Kind allowed() default Limits.Kind.ANY;

  /** Whose rule that is, and something right to try. */
  String rule() default "";

  /** Whether the crew marks or cuts it, and which way it is rounded for them. */
  Marked marked() default Marked.NOT;

  /** How the equation writes it in print, where its name would read worse. */
  String symbol() default "";
}
