package sheathwright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.Moment;

/**
 * A day, or a day and a time, as it is typed behind an option, read as tables read it. A day that
 * could be its month is asked about in a table, which can be corrected; what a command writes for
 * it cannot be taken back, so here it is refused.
 */
final class MomentConverter implements ITypeConverter<Moment> {

  @Override
  public Moment convert(String typed) {
    try {
      Moment moment = Moment.read(typed);
      Moment.eitherWay(typed).ifPresent(write -> refuse(typed, write));
      return moment;
    } catch (RefusedException none) {
      throw new TypeConversionException(none.getMessage());
    }
  }

  private static void refuse(String typed, String write) {
    throw new TypeConversionException(
        "\"%s\" could be one day or another; %s".formatted(typed, write));
  }
}
