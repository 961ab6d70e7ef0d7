package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a parameter or a result is called where tables are filled, and the unit that its numbers are
 * in.
 */
@Target({ElementType.PARAMETER, ElementType.METHOD, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
public @interface Column {

  /** Snake case with the unit at the end: {@code edge_spacing_in}. */
  String value();

  /**
   * The unit as it is written after a number, where the name's ending does not say it: {@code
   * $/nail}.
   */
  String unit() default "";

  /** What a blank cell means, as text; empty if a value must be given. */
  String preset() default "";
}
