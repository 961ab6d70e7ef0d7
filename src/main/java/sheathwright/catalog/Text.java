package sheathwright.catalog;

import java.util.List;

/**
 * What a library function's doc comment says.
 *
 * @param summary what it is, in one sentence a carpenter can read
 * @param formula the formula as printed
 * @param limits what it does not cover
 * @param notes anything else, or empty
 * @param examples lines of the form {@code expression // answer}
 * @param result the result, with unit
 * @param refusals what it refuses
 * @param source edition and clause, or the honest mark that there is none
 */
public record Text(
    String summary,
    String formula,
    String limits,
    String notes,
    List<String> examples,
    String result,
    String refusals,
    String source) {}
