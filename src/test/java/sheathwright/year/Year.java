package sheathwright.year;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import sheathwright.year.disk.Disk;

/** A firm's year from its seed: houses side by side, each step with whatever befalls it. */
final class Year {

  private static final int HOUSES = 5;
  private static final int STEPS_AT_MOST = 60;
  private static final int DOCUMENTS_IN = 50;

  private final long seed;
  private final Spoil spoil;
  private final Random random;
  private final Disk disk = new Disk();
  private final Calendar calendar = new Calendar();
  private final PriceBook book;
  private final Invariants invariants;
  private final List<Life> lives = new ArrayList<>();
  private final Map<Mishap, Integer> befallen = new EnumMap<>(Mishap.class);
  private int steps;

  Year(long seed, Spoil spoil) {
    this.seed = seed;
    this.spoil = spoil;
    random = new Random(seed * 1_000_003);
    book = new PriceBook(new Random(seed));
    invariants = new Invariants(book);
  }

  /** Plays it to its end. */
  Year played() {
    begin();
    List<Life> open = new ArrayList<>(lives);
    while (!open.isEmpty()) {
      calendar.goOn(random.nextInt(3));
      if (random.nextInt(20) == 0) {
        book.tables().forEach((file, text) -> disk.type("/firm/" + file, text));
      }
      Life life = House.any(random, open);
      step(life);
      if (life.stage == Life.Stage.CLOSED) {
        open.remove(life);
      }
    }
    return this;
  }

  private void begin() {
    Typed firm = Typed.with("key", "value", "note");
    firm.fact("name", "Corvane and Thrupp, deck repairs").fact("next_quote_number", "CT-001");
    disk.type("/firm/firm.csv", firm.text());
    book.tables().forEach((file, text) -> disk.type("/firm/" + file, text));
    for (int i = 1; i <= HOUSES; i++) {
      boolean isWritten = random.nextInt(DOCUMENTS_IN) == 0;
      Desk desk = isWritten ? new Commands() : new Tables();
      House house = House.of(random, i);
      lives.add(new Life(disk, random, calendar, house, "/firm/house-" + i, desk));
    }
  }

  private void step(Life life) {
    String[] words = life.next();
    Mishap mishap = Mishap.any(random);
    Scene scene = new Scene(disk, random, life, words);
    Map<String, String> before = Scene.files(disk);
    try {
      Answer answer = mishap.befall(scene);
      scene.refused(answer, before, answer.isRefused() ? before : Map.of());
      boolean mayBeRefused = words[0].equals("close");
      if (!answer.isDone() && !mayBeRefused) {
        throw scene.broken("it should be done: %s", answer);
      }
      spoil.plant(scene);
      boolean isSettled = answer.isDone() && List.of("change-order", "close").contains(words[0]);
      invariants.hold(scene, before, isSettled);
      life.answered(words, answer);
    } catch (RuntimeException | AssertionError fault) {
      throw new AssertionError(
          "year %d, step %d, %s: %s".formatted(seed, steps, mishap, fault), fault);
    }
    steps++;
    befallen.merge(mishap, 1, Integer::sum);
    if (steps > STEPS_AT_MOST * HOUSES) {
      throw new AssertionError("year " + seed + " does not end; " + life.folder);
    }
  }

  int steps() {
    return steps;
  }

  /** How often each thing befell it. */
  Map<Mishap, Integer> befallen() {
    return befallen;
  }
}
