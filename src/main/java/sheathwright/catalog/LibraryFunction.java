package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a public static method as a library function. Its doc comment and signature are all there
 * is to say about it: the build reads the comment into an index, and the catalog serves both
 * everywhere.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface LibraryFunction {

  /** What the trade calls it that its name and first sentence do not say; help looks here too. */
  String[] words() default {};
}
