package sheathwright.cli;

import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.Dates;

/** A day as it is typed behind an option, read as tables read it. */
final class DayConverter implements ITypeConverter<LocalDate> {

  @Override
  public LocalDate convert(String typed) {
    try {
      return Dates.read(typed);
    } catch (RefusedException none) {
      throw new TypeConversionException(none.getMessage());
    }
  }
}
