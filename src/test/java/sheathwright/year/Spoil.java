package sheathwright.year;

import java.util.List;
import java.util.Map;
import sheathwright.year.disk.Disk;

/** A defect that the test itself plants behind a command, so that it is seen to be reported. */
enum Spoil {
  NOTHING {
    @Override
    void plant(Scene scene) {
      // as the program left it
    }
  },

  /** A change order bills a mark that an earlier line has billed. */
  BILL_TWICE {
    @Override
    void plant(Scene scene) {
      Typed lines = scene.life().table("order_lines.csv", "order");
      if (!lines.rows().isEmpty()) {
        lines.rows().add(lines.rows().get(0));
        scene.disk().type(scene.life().folder + "/order_lines.csv", lines.text());
        Typed orders = scene.life().table("orders.csv", "order");
        Map<String, String> line = lines.named().get(0);
        for (int i = 0; i < orders.rows().size(); i++) {
          if (orders.named().get(i).get("order").equals(line.get("order"))) {
            String usd = orders.named().get(i).get("usd");
            orders.set(i, "usd", Typed.number(usd).add(Typed.number(line.get("usd"))).toString());
          }
        }
        scene.disk().type(scene.life().folder + "/orders.csv", orders.text());
      }
    }
  },

  /** An order comes to a cent more than its lines. */
  LOSE_A_CENT {
    @Override
    void plant(Scene scene) {
      Typed orders = scene.life().table("orders.csv", "order");
      if (!orders.rows().isEmpty()) {
        String usd = orders.named().get(0).get("usd");
        orders.set(0, "usd", Typed.number(usd).add(Typed.number("0.01")).toString());
        scene.disk().type(scene.life().folder + "/orders.csv", orders.text());
      }
    }
  },

  /** A mark is lost. */
  LOSE_A_MARK {
    @Override
    void plant(Scene scene) {
      Typed marks = scene.life().table("marks.csv", "mark");
      if (!marks.rows().isEmpty()) {
        marks.rows().remove(0);
        scene.disk().type(scene.life().folder + "/marks.csv", marks.text());
      }
    }
  },

  /** What stops a repair is forgotten. */
  FORGET_A_STOP {
    @Override
    void plant(Scene scene) {
      Typed reports = scene.life().table("reports.csv", "report", "seen");
      if (reports.rows().removeIf(row -> !row.get(1).equals("nothing"))) {
        scene.disk().type(scene.life().folder + "/reports.csv", reports.text());
      }
    }
  },

  /** A table ends in the middle of a line. */
  HALF_A_FILE {
    @Override
    void plant(Scene scene) {
      String job = scene.life().folder + "/job.csv";
      String text = scene.disk().text(job);
      scene.disk().type(job, text.substring(0, text.length() - 3));
    }
  },

  /** A document is kept of which half was written. */
  HALF_A_DOCUMENT {
    @Override
    void plant(Scene scene) {
      Disk disk = scene.disk();
      for (String file : disk.files().keySet()) {
        if (file.startsWith(scene.life().folder + "/sent/") && !file.endsWith("estimate.xlsx")) {
          disk.type(file, disk.text(file).substring(1));
        }
      }
    }
  },

  /** A draft is left where a run ended. */
  LITTER {
    @Override
    void plant(Scene scene) {
      scene.disk().type(scene.life().folder + "/.job.csv.1-1.part", "half");
    }
  },

  /** A new owner's file says what the office pays. */
  TELL_A_COST {
    @Override
    void plant(Scene scene) {
      String rates = scene.disk().text("/firm/rates.csv");
      String cost = Typed.of(rates).behind("margin_pct");
      scene.disk().type(scene.life().folder + "/quote.xlsx", "margin=" + cost);
    }
  },

  /** A job that is closed stands twice in the history. */
  CLOSE_TWICE {
    @Override
    void plant(Scene scene) {
      String history = scene.disk().text("/firm/history.csv");
      List<String> lines = history.lines().toList();
      if (lines.size() > 1) {
        scene.disk().type("/firm/history.csv", history + lines.get(lines.size() - 1) + "\n");
      }
    }
  };

  abstract void plant(Scene scene);
}
