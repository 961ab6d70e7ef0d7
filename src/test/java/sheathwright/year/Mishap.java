package sheathwright.year;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import sheathwright.life.record.JobFolder;
import sheathwright.year.disk.Disk;
import sheathwright.year.disk.Killed;

/** What goes wrong, or only goes on, while a command is run; and what must hold of it. */
enum Mishap {
  /** Nothing does. */
  NONE(50) {
    @Override
    Answer befall(Scene scene) {
      return scene.run();
    }
  },

  /** The process dies while it writes, and whoever sits there runs the command again. */
  KILLED(14) {
    @Override
    Answer befall(Scene scene) {
      Disk disk = scene.disk();
      Disk twin = disk.copy();
      Answer wanted = scene.run(twin);
      if (twin.acts() == 0) {
        return scene.run();
      }
      Map<String, String> before = Scene.files(disk);
      Map<String, String> after = Scene.files(twin);
      disk.dieAt(1 + scene.random().nextInt((int) twin.acts()));
      died(scene);
      disk.heal();
      JobFolder.putRight(disk.path(scene.life().folder));
      Map<String, String> now = Scene.files(disk);
      boolean isWritten = now.equals(after);
      if (!isWritten) {
        scene.same("killed, and neither as before nor as after", now, before);
      }
      Answer again = scene.run();
      scene.same("killed and run again, and not as run once", Scene.files(disk), after);
      return isWritten ? wanted : again;
    }
  },

  /** The disk is full before all of it is written. */
  FULL(8) {
    @Override
    Answer befall(Scene scene) {
      Disk disk = scene.disk();
      Disk twin = disk.copy();
      scene.run(twin);
      if (twin.written() > 0) {
        Disk before = disk.copy();
        disk.leave(scene.random().nextInt((int) twin.written()));
        Answer full = scene.run();
        disk.heal();
        Map<String, String> now = Scene.files(disk);
        if (full.isDone()) {
          scene.same("done on a full disk, and not whole", now, Scene.files(twin));
          return full;
        }
        scene.refused(full, Scene.files(before), now);
        if (!disk.names().equals(before.names()) && !isLockAlone(disk, before)) {
          throw scene.broken("a full disk left folders: %s", disk.names());
        }
      }
      return scene.run();
    }
  },

  /** A word of a table is misspelled, which is said, and mended. */
  MISSPELLED(8) {
    @Override
    Answer befall(Scene scene) {
      Disk whole = scene.disk().copy();
      Misspelling.of(scene).ifPresent(word -> word.mustBeSaid(scene));
      scene.disk().restore(whole);
      return scene.run();
    }
  },

  /** The rows of a table are sorted, and stay so. */
  SORTED(5) {
    @Override
    Answer befall(Scene scene) {
      return edited(scene, Edit::sorted);
    }
  },

  /** Another program saves a table in its own way, and it stays so. */
  SAVED(4) {
    @Override
    Answer befall(Scene scene) {
      return edited(scene, Edit::saved);
    }
  },

  /** The machine speaks another language, stands elsewhere, and has another day. */
  ABROAD(5) {
    @Override
    Answer befall(Scene scene) {
      Disk twin = scene.disk().copy();
      Answer home = scene.run(twin);
      Answer abroad = Abroad.any(scene.random()).run(scene);
      scene.same("other files abroad", Scene.files(scene.disk()), Scene.files(twin));
      if (!home.withoutQuestions().equals(abroad.withoutQuestions())) {
        throw scene.broken("abroad it says %s, at home %s", abroad, home);
      }
      return abroad;
    }
  },

  /** It is run twice. */
  TWICE(5) {
    @Override
    Answer befall(Scene scene) {
      Answer once = scene.run();
      Map<String, String> after = Scene.files(scene.disk());
      Answer twice = scene.run();
      scene.refused(twice, after, Scene.files(scene.disk()));
      scene.same("run twice", Scene.files(scene.disk()), after);
      return once;
    }
  },

  /** Another command is tried that may be out of turn. */
  ASTRAY(4) {
    @Override
    Answer befall(Scene scene) {
      Disk twin = scene.disk().copy();
      String[] words = stray(scene);
      Map<String, String> before = Scene.files(twin);
      Answer answer = scene.life().desk.run(twin, words);
      scene.refused(answer, before, Scene.files(twin));
      return scene.run();
    }
  };

  private final int weight;

  Mishap(int weight) {
    this.weight = weight;
  }

  /** One of them, by chance. */
  static Mishap any(Random random) {
    int all = List.of(values()).stream().mapToInt(each -> each.weight).sum();
    int at = random.nextInt(all);
    for (Mishap each : values()) {
      at -= each.weight;
      if (at < 0) {
        return each;
      }
    }
    throw new IllegalStateException();
  }

  /** Runs the command with it, and holds what must hold. */
  abstract Answer befall(Scene scene);

  private static void died(Scene scene) {
    try {
      scene.run();
      if (!scene.disk().isDead()) {
        throw scene.broken("it writes less often than it did on a copy");
      }
    } catch (Killed asTold) {
      // nothing of it reaches the disk any more
    }
  }

  private static String[] stray(Scene scene) {
    String folder = scene.life().folder;
    String day = scene.life().today();
    int steps = scene.life().desk instanceof Commands ? 6 : 4;
    return switch (scene.random().nextInt(steps)) {
      case 0 -> new String[] {"quote", folder, "--issue", "--on", day};
      case 1 -> new String[] {"agree", folder, "--on", day};
      case 2 -> new String[] {"change-order", folder, "--on", day};
      case 3 -> new String[] {"close", folder, "--on", day};
      case 4 -> new String[] {"papers", folder, "--force"};
      default -> new String[] {"forecast", folder};
    };
  }

  private static boolean isLockAlone(Disk disk, Disk before) {
    return disk.names().size() == before.names().size() + 1
        && disk.names().contains("/firm/.firm.lock");
  }

  /** What a hand or another program did to a table's form changes nothing that is done with it. */
  private static Answer edited(Scene scene, Function<Scene, String> edit) {
    Disk twin = scene.disk().copy();
    String what = edit.apply(scene);
    Answer wanted = scene.run(twin);
    Answer answer = scene.run();
    if (answer.status() != wanted.status()) {
      throw scene.broken("%s, and then %s; before it was %s", what, answer, wanted);
    }
    String sent = scene.life().folder + "/sent.csv";
    String is = Edit.sums(scene.disk().text(sent));
    if (!is.equals(Edit.sums(twin.text(sent)))) {
      throw scene.broken("%s, and then sums are %s and not %s", what, is, twin.text(sent));
    }
    return answer;
  }
}
