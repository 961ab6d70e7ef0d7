package sheathwright.life.unseen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Reading;
import sheathwright.forecast.Zone;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.zone.ToldZone;
import sheathwright.life.found.Found;
import sheathwright.life.found.FoundWork;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;

/**
 * The zones of a job's deck as plain numbers: as its table has them, the rest of the map a zone of
 * its own, and planes that are open counted anew by their marks.
 */
final class DeckZones {

  private static final String REST = "the rest";
  private static final String WHOLE = "the whole deck";
  private static final String OPEN = "open";

  private final Reading reading;
  private final List<PlaceKey> map = new ArrayList<>();
  private final List<ToldZone> told;

  DeckZones(Reading reading, Estimate estimate) {
    this.reading = reading;
    for (Deck.Part part : estimate.deck().parts()) {
      part.map().places(reading).stream().map(Place::key).forEach(map::add);
    }
    this.told = estimate.job().lines(JobTable.ZONES).stream().map(ToldZone::new).toList();
  }

  /** What was seen before anything was open. */
  List<Zone> before() {
    List<Zone> zones = new ArrayList<>();
    for (ToldZone zone : told) {
      zones.add(zone.plain(reading, (int) map.stream().filter(zone.reach(reading)::holds).count()));
    }
    int inZones = zones.stream().mapToInt(Zone::places).sum();
    if (inZones < map.size()) {
      zones.add(new Zone(zones.isEmpty() ? WHOLE : REST, map.size() - inZones, 0, 0, 1, 1));
    }
    return zones;
  }

  /**
   * What is known with some planes open: every place of theirs was seen, and shows what it is.
   *
   * @param opened the planes
   * @param bad the places of the deck that are replaced
   */
  List<Zone> now(Set<String> opened, Set<PlaceKey> bad) {
    List<PlaceKey> open = map.stream().filter(key -> opened.contains(key.plane())).toList();
    List<Zone> zones = new ArrayList<>();
    List<PlaceKey> left = new ArrayList<>(open);
    List<Zone> before = before();
    for (int i = 0; i < before.size(); i++) {
      Zone zone = before.get(i);
      List<PlaceKey> here =
          i < told.size() ? in(told.get(i).reach(reading), left, zone.places()) : left;
      int places = Math.min(here.size(), zone.places());
      int found = (int) here.stream().limit(places).filter(bad::contains).count();
      left = left.stream().filter(key -> !here.contains(key)).toList();
      if (places > 0) {
        zones.add(new Zone(zone.name() + ", " + OPEN, places, places, found, zone.odds(), 1));
      }
      if (places < zone.places()) {
        zones.add(stillClosed(zone, places, found));
      }
    }
    return zones;
  }

  private static List<PlaceKey> in(ToldZone.Reach reach, List<PlaceKey> places, int most) {
    return places.stream().filter(reach::holds).limit(most).toList();
  }

  /**
   * What is left of a zone beside its open part. Nobody says which of the places lay in that part
   * that were seen before: as many as its share, and bad ones only as many as are bad there.
   */
  private static Zone stillClosed(Zone zone, int open, int found) {
    int places = zone.places() - open;
    int seen = (int) Math.round((double) zone.seen() * places / zone.places());
    int bad =
        Math.max(
            zone.bad() - found, (int) Math.round((double) zone.bad() * places / zone.places()));
    return new Zone(
        zone.name(),
        places,
        Math.max(seen, Math.min(bad, places)),
        Math.min(bad, places),
        zone.odds(),
        zone.recognized());
  }

  /** The planes that a mark says are open. */
  static Set<String> opened(Estimate estimate, FoundWork work) {
    Set<String> planes = new LinkedHashSet<>();
    List<Deck.Marked> marks = estimate.deck().marked();
    for (int i = 0; i < marks.size(); i++) {
      if (work.list().get(i).isOpened()) {
        planes.add(marks.get(i).part().plane().name());
      }
    }
    return planes;
  }

  /** The places that are replaced because of what was found. */
  Set<PlaceKey> replaced(Estimate estimate, FoundWork work) {
    Set<PlaceKey> places = new LinkedHashSet<>();
    List<Deck.Marked> marks = estimate.deck().marked();
    reading.word("what the marks lead to", work.solution().state());
    for (int i = 0; i < marks.size(); i++) {
      Found found = work.list().get(i);
      if (!found.isVoid() && found.action().equals(Decided.REPLACE.word())) {
        Deck.Part on = marks.get(i).part();
        marks.get(i).mark().places(reading, on.map()).stream().map(Place::key).forEach(places::add);
      }
    }
    return places;
  }
}
