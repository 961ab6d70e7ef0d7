package sheathwright.job.table;

import java.util.Map;
import sheathwright.figure.Traced;

/**
 * What a table of two columns says.
 *
 * @param inputs by the word of the first column
 */
public record KeyedFacts(Map<String, TableReader.Input> inputs) implements Facts {

  @Override
  public boolean knows(Field<?> field) {
    return inputs.containsKey(field.name());
  }

  @Override
  public <T extends Traced> T fact(Field<T> field) {
    return field.as(inputs.get(field.name()).value());
  }
}
