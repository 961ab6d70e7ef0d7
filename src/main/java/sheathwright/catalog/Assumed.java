package sheathwright.catalog;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What is taken for a parameter or a part of a thing where a line at the prompt leaves it out; the
 * answer says that it was assumed. A table has to say it all the same.
 */
@Target({ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
@Repeatable(Assumed.Several.class)
public @interface Assumed {

  /** The value, as text. */
  String value();

  /** The column that decides, where this is not always what is taken. */
  String where() default "";

  /** The word in that column under which this is taken, before what is taken always. */
  String is() default "";

  /** Several, each under a word of its own. */
  @Target({ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
  @Retention(RetentionPolicy.RUNTIME)
  @interface Several {
    Assumed[] value();
  }
}
