package sheathwright.job.office;

import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of an office's quotes, one after the other: behind 2027-041 comes 2027-042. */
public final class QuoteNumbers {

  private static final Pattern COUNTED = Pattern.compile("(.*?)(\\d+)");

  private QuoteNumbers() {}

  /** The number behind another one; none where that does not end in digits. */
  public static Optional<String> after(String number) {
    Matcher parts = COUNTED.matcher(number);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String digits = parts.group(2);
    String next = new BigInteger(digits).add(BigInteger.ONE).toString();
    return Optional.of(
        parts.group(1) + "0".repeat(Math.max(0, digits.length() - next.length())) + next);
  }
}
