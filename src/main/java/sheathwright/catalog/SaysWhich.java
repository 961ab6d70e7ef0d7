package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * At a word that says which of several things a number is: each of the words may then be used as
 * that number's name. {@code snow = 30 psf} gives the number and says that it is snow.
 */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
public @interface SaysWhich {

  /** The column of the number. */
  String value();
}
