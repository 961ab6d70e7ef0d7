package sheathwright.job.zone;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;

/**
 * The columns of the tables that divide an old deck: into zones by what could be seen of it, and
 * into the places that documents name.
 */
public final class ZoneFields {

  public static final Field<Choice<String>> ZONE = Field.name("zone", "Zone");

  /** The plane of a zone; one without it lies on all of them. */
  public static final Field<Choice<String>> PLANE = Field.name("plane", "Plane").ifKnown();

  public static final Field<Figure<Ratio>> FROM_COURSE =
      Field.whole("from_course", "From this course up", Units.RATIO, 1, 200).ifKnown();

  public static final Field<Figure<Ratio>> TO_COURSE =
      Field.whole("to_course", "Up to this course", Units.RATIO, 1, 200).ifKnown();

  public static final Field<Figure<Ratio>> PLACES =
      Field.whole("places", "Places in it", Units.RATIO, 1, 20_000).ifKnown();

  public static final Field<Figure<Ratio>> SEEN =
      Field.whole("seen", "Of which seen", Units.RATIO, 0, 20_000).ifKnown();

  public static final Field<Figure<Ratio>> SEEN_BAD =
      Field.whole("seen_bad", "Of which bad", Units.RATIO, 0, 20_000).ifKnown();

  public static final Field<Figure<Ratio>> ODDS =
      Field.number(
              "odds", "Odds of a place being bad, beside a plain place's", Units.RATIO, 0.1, 20)
          .ifKnown();

  public static final Field<Figure<Ratio>> SEEN_SHARE =
      Field.number(
              "seen_share_pct",
              "Bad places that show as bad to whoever looks",
              Units.PERCENT,
              5,
              100)
          .ifKnown();

  public static final Field<Choice<String>> WHY =
      Field.text("why", "Why it is told apart").ifKnown();

  /** What could be seen of the deck, and what not. */
  public static final List<Field<?>> ZONES =
      List.of(ZONE, PLANE, FROM_COURSE, TO_COURSE, PLACES, SEEN, SEEN_BAD, ODDS, SEEN_SHARE, WHY);

  public static final Field<Choice<String>> KEY = Field.name("key", "Place");

  public static final Field<Choice<String>> ITS_PLANE = Field.name("plane", "Plane");

  public static final Field<Figure<Length>> ALONG =
      Field.number("along_in", "From the left", Units.INCH, -2_400, 6_000);

  public static final Field<Figure<Length>> UP =
      Field.number("up_in", "From the eave", Units.INCH, -2_400, 6_000);

  public static final Field<Figure<Length>> WIDTH =
      Field.number("width_in", "Width", Units.INCH, 0, 6_000);

  public static final Field<Figure<Length>> HEIGHT =
      Field.number("height_in", "Height", Units.INCH, 0, 6_000);

  /** The map as it was when a document first named a place; written by us and never edited. */
  public static final List<Field<?>> PLACES_NAMED =
      List.of(KEY, ITS_PLANE, ALONG, UP, WIDTH, HEIGHT);

  private ZoneFields() {}
}
