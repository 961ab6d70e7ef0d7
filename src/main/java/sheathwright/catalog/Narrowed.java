package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import sheathwright.figure.Limits;

/**
 * Says at a function's parameter that it allows less of one part of the thing than the thing does:
 * help, tables and drop-downs state this range instead. The function's body guards the part once
 * more with the same constants.
 */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(Narrowed.Several.class)
public @interface Narrowed {

  /** The part's column as the function's tables call it, prefix included. */
  String column();

  /** The least number that this function allows. */
  double least();

  /** The greatest number that this function allows. */
  double most();

  /** Which numbers between the two are allowed. */
  Limits.Kind allowed() default Limits.Kind.ANY;

  /** Why this function allows no more, and something right to try. */
  String rule();

  /** Several parts of one thing. */
  @Target(ElementType.PARAMETER)
  @Retention(RetentionPolicy.RUNTIME)
  @interface Several {
    Narrowed[] value();
  }
}
