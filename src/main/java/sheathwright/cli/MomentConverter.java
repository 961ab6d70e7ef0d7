package sheathwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.Moment;

/** A day, or a day and a time, as it is typed behind an option, read as tables read it. */
final class MomentConverter implements ITypeConverter<Moment> {

  @Override
  public Moment convert(String typed) {
    try {
      return Moment.read(typed);
    } catch (RefusedException none) {
      throw new TypeConversionException(none.getMessage());
    }
  }
}
