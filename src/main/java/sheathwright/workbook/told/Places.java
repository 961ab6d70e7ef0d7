package sheathwright.workbook.told;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.Reading;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.roof.Box;
import sheathwright.roof.Facing;
import sheathwright.roof.Plane;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;

/**
 * Marks and places of a roof as they are told to somebody who stands in the yard: a mark by its
 * number in the order of the table, which every paper of the job calls it by, and where it lies in
 * words. The office's own keys of both stay in the office.
 */
public final class Places {

  /** What lies so near an opening is told by it, in inches. */
  private static final double BESIDE = 24;

  /** A mark with the number that every paper calls it by. */
  public record Numbered(int number, Deck.Marked marked) {

    private Box box() {
      return marked.mark().seen(Reading.aside()).box();
    }
  }

  private final Estimate estimate;
  private final Map<String, Numbered> marks = new LinkedHashMap<>();

  private Places(Estimate estimate) {
    this.estimate = estimate;
    for (Deck.Marked marked : estimate.deck().marked()) {
      marks.put(marked.mark().key(), new Numbered(marks.size() + 1, marked));
    }
  }

  /** Those of a job. */
  public static Places of(Estimate estimate) {
    return new Places(estimate);
  }

  /** Each of several keys by itself. */
  public static List<String> each(String keys) {
    return Arrays.stream(keys.split(",")).map(String::strip).toList();
  }

  /** Every mark, as they are numbered. */
  public List<Numbered> marks() {
    return List.copyOf(marks.values());
  }

  /** The number of a mark; nothing for what is no line of the table. */
  public String number(String mark) {
    return marks.containsKey(mark) ? String.valueOf(marks.get(mark).number()) : "";
  }

  /** What a mark is called in few words: its number, else where it lies. */
  public String called(String mark) {
    return marks.containsKey(mark) ? number(mark) : where(mark, mark);
  }

  /** A mark at the head of a sentence: its number, and where it lies. */
  public String told(String mark, String keys) {
    String where = where(mark, keys);
    return marks.containsKey(mark) ? "No. %s, %s".formatted(number(mark), where) : headed(where);
  }

  /** Words as they begin a line. */
  public static String headed(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A reason of the office's, other marks by their numbers and places by words. */
  public String reason(String said) {
    String told = said;
    for (Map.Entry<String, Numbered> mark : marks.entrySet()) {
      told = told.replaceAll(whole("mark " + mark.getKey()), "No. " + mark.getValue().number());
    }
    for (Deck.Part part : estimate.deck().parts()) {
      for (Place place : part.map().places(Reading.aside())) {
        String key = place.key().toString();
        if (told.contains(key)) {
          String where = where(part.plane(), place.piece().bounds());
          told = told.replaceAll(whole(key), Matcher.quoteReplacement(where));
        }
      }
    }
    return told;
  }

  /** Words that are no part of longer ones. */
  private static String whole(String words) {
    return "(?<![\\w-])" + Pattern.quote(words) + "(?![\\w-])";
  }

  /** Where a mark lies. */
  public String where(Numbered mark) {
    return where(mark.marked().part().plane(), mark.box());
  }

  /**
   * Where a mark lies.
   *
   * @param keys of the places that it reaches into, which tell it where it is no line of the table
   */
  public String where(String mark, String keys) {
    if (marks.containsKey(mark)) {
      return where(marks.get(mark));
    }
    Set<String> all = new LinkedHashSet<>();
    each(keys).forEach(key -> PlaceKey.read(key).flatMap(this::where).ifPresent(all::add));
    return String.join("; ", all);
  }

  /** A key that names no place of its plane is told by the plane. */
  private Optional<String> where(PlaceKey key) {
    return estimate.deck().parts().stream()
        .filter(part -> part.plane().name().equals(key.plane()))
        .findFirst()
        .map(
            part ->
                part.map().places(Reading.aside()).stream()
                    .filter(place -> place.key().equals(key))
                    .findFirst()
                    .map(Place::piece)
                    .map(piece -> where(part.plane(), piece.bounds()))
                    .orElseGet(() -> side(part.plane())));
  }

  /** The side, how far up, how far along as one looks up the slope, and what is near. */
  private String where(Plane plane, Box place) {
    Box all = plane.outline(Reading.aside()).bounds();
    List<String> words = new ArrayList<>(List.of(side(plane)));
    words.add(
        third(
            (place.middleY() - all.bottom()) / all.height(),
            "at the gutter",
            "half way up",
            "at the ridge"));
    words.add(third((place.middleX() - all.left()) / all.width(), "left", "middle", "right"));
    List<String> names = estimate.job().openingsOf(plane.name());
    List<Box> openings = plane.openings(Reading.aside());
    for (int i = 0; i < openings.size(); i++) {
      if (openings.get(i).grown(BESIDE).overlaps(place)) {
        String name = i < names.size() ? names.get(i) : "";
        words.add("beside the " + (name.isEmpty() ? "opening" : name));
      }
    }
    return String.join(", ", words);
  }

  /**
   * A plane as it is called from the yard: by where it looks, and by its name where two look there.
   */
  public String side(Plane plane) {
    Optional<Facing> faces = faces(plane);
    String name = "plane " + plane.name();
    if (faces.isEmpty()) {
      return name;
    }
    long alike =
        estimate.deck().parts().stream().filter(part -> faces(part.plane()).equals(faces)).count();
    return faces.get().side() + (alike > 1 ? ", " + name : "");
  }

  /** The same, as short as fits into a picture. */
  public String inPicture(Plane plane) {
    return faces(plane)
        .map(faces -> "%s (%s)".formatted(faces.spoken(), plane.name()))
        .orElse("plane " + plane.name());
  }

  private Optional<Facing> faces(Plane plane) {
    return estimate.job().onTheGround(plane.name()).faces();
  }

  private static String third(double share, String first, String second, String last) {
    if (share < 1.0 / 3) {
      return first;
    }
    return share < 2.0 / 3 ? second : last;
  }
}
