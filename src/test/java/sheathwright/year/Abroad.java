package sheathwright.year;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;

/**
 * Where and when a machine thinks that it is.
 *
 * @param language of its user
 * @param zone of its clock
 * @param day that its clock shows
 */
record Abroad(String language, String zone, String day) {

  private static final String TODAY = "sheathwright.today";

  static Abroad any(Random random) {
    return new Abroad(
        House.any(
            random,
            List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "th-TH-u-ca-buddhist-nu-thai", "hi-IN")),
        House.any(random, List.of("Pacific/Kiritimati", "Asia/Kathmandu", "America/Los_Angeles")),
        House.any(random, List.of("1999-12-31", "2028-02-29", "2031-07-01")));
  }

  /** Runs a command there, and comes home. */
  Answer run(Scene scene) {
    Locale locale = Locale.getDefault();
    TimeZone clock = TimeZone.getDefault();
    String today = System.getProperty(TODAY);
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      System.setProperty(TODAY, day);
      return scene.run();
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(clock);
      if (today == null) {
        System.clearProperty(TODAY);
      } else {
        System.setProperty(TODAY, today);
      }
    }
  }
}
