package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import sheathwright.job.cell.CellCall;
import sheathwright.job.life.LifeText;
import sheathwright.job.table.JobText;
import sheathwright.repl.Script;
import sheathwright.workbook.page.Samples;

/** What reads, and how one spoiled input is tried on it. */
enum Reader {
  /** A job's tables: every complaint names its table. */
  TABLES(1) {
    @Override
    void tries(Random random, Path folder) {
      JobText job = anyJob(random);
      String table = any(random, job.tables().keySet().stream().sorted().toList());
      JobText spoiled =
          job.withTable(table, new TextFaults(random).spoiled(job.tables().get(table)));
      for (String problem : spoiled.problems()) {
        assertThat(problem).containsPattern("[a-z_]+\\.csv");
        assertThat(problem).doesNotContain("\n", "Exception", "java.");
      }
    }
  },

  /** The same as files, made into workbooks. */
  QUOTE(25) {
    @Override
    void tries(Random random, Path folder) {
      JobText job = anyJob(random);
      String table = any(random, job.tables().keySet().stream().sorted().toList());
      job.withTable(table, new TextFaults(random).spoiled(job.tables().get(table)))
          .tables()
          .forEach((name, text) -> written(folder, name + ".csv", bytes(text)));
      Ran.in(folder, "quote", folder);
    }
  },

  /** One function down a table. */
  FILL(2) {
    @Override
    void tries(Random random, Path folder) {
      Map<String, String> tables = Samples.tablesToFill();
      String function = any(random, List.copyOf(tables.keySet()));
      String spoiled = new TextFaults(random).spoiled(tables.get(function));
      Path file = written(folder, "cases.csv", bytes(spoiled));
      Ran.of("fill", function, file).holds();
    }
  },

  /** The office's workbook, as the way back. */
  ESTIMATE(60) {
    @Override
    void tries(Random random, Path folder) {
      Path job = Sent.once().copy(folder);
      Path file = spoiled(random, job.resolve("sent/QH-01-issue-1-estimate.xlsx"), "estimate.xlsx");
      Ran.in(folder, "quote", file, "--force");
    }
  },

  /** The homeowner's workbook, held against what was sent. */
  AUDIT(40) {
    @Override
    void tries(Random random, Path folder) {
      Path job = Sent.once().copy(folder);
      Path file = spoiled(random, job.resolve("sent/QH-01-issue-1.xlsx"), "returned.xlsx");
      Ran.in(folder, "audit", file, "--job", job);
    }
  },

  /** A crew's workbook. */
  CREW(25) {
    @Override
    void tries(Random random, Path folder) {
      Path job = Sent.once().copy(folder);
      Ran.in(folder, "take-in", job, spoiled(random, job.resolve("crew.xlsx"), "crew.xlsx"));
    }
  },

  /** The office's letterhead. */
  LETTERHEAD(40) {
    @Override
    void tries(Random random, Path folder) {
      Path job = Sent.once().copy(folder);
      Path file = spoiled(random, job.resolve("letterhead.xlsx"), "ours.xlsx");
      Ran.in(folder, "quote", job, "--letterhead", file, "--force");
    }
  },

  /** A command line; what it may write lies deep in a folder of its own. */
  COMMANDS(1) {
    /** A word behind {@code @} is a file or a folder. */
    private static final List<String> LINES =
        List.of(
            "fill rafter_max_span @cases.csv",
            "functions rafter_check",
            "tables",
            "help marks",
            "explain nails_per_sheet sheets=4",
            "solve forecast @cases.csv alpha=1 beta=20",
            "solve stick_list @cases.csv stock_ft=16",
            "quote @job -o @out",
            "agree @job --on 2027-05-04",
            "change-order @job --on 2027-05-12",
            "close @job --force",
            "audit @none.xlsx --job @job",
            "compare @a.xlsx @b.xlsx",
            "new @job --hip",
            "run @x.jsh",
            "crew @job -o @c.xlsx",
            "take-in @job @c.xlsx",
            "letterhead quote -o @letter.xlsx",
            "papers @job",
            "intake @job",
            "check @job",
            "forecast @job",
            "season @job",
            "calibrate @job",
            "calculators sheets_by_area -o @calculators.xlsx",
            "functions --markdown --version");

    @Override
    void tries(Random random, Path folder) {
      Path deep = made(folder.resolve("a/b/c"));
      written(deep, "cases.csv", bytes("sheets\n1\n"));
      List<String> words = new ArrayList<>(List.of(any(random, LINES).split(" ")));
      int at = random.nextInt(words.size());
      boolean isFile = words.get(at).startsWith("@");
      words.set(at, (isFile ? "@" : "") + spoiled(random, words));
      Ran.in(
          folder,
          words.stream()
              .map(word -> word.replace("\0", ""))
              .map(word -> word.startsWith("@") ? deep + "/" + word.substring(1) : word)
              .toArray());
    }

    private static String spoiled(Random random, List<String> words) {
      TextFaults faults = new TextFaults(random);
      return random.nextBoolean() ? faults.nasty() : faults.spoiled(any(random, words));
    }
  },

  /** Lines that are typed, of the kind that is answered without a compiler and of the other. */
  PROMPT(8) {
    @Override
    void tries(Random random, Path folder) {
      List<String> typed = Typed.lines();
      String lines = "";
      for (int line = 0; line < 10; line++) {
        lines += new TextFaults(random).spoiled(any(random, typed)).replace("\n", " ") + "\n";
      }
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      int status =
          Script.pipe(
              new BufferedReader(new StringReader(lines)),
              new PrintWriter(out, true),
              new PrintWriter(err, true));
      new Ran(status, out.toString(), err.toString()).holds();
    }
  },

  /** A function as a cell calls it, with whatever stands in other cells. */
  CELLS(1) {
    @Override
    void tries(Random random, Path folder) {
      Map<String, String> tables = Samples.tablesToFill();
      String function = any(random, List.copyOf(tables.keySet()));
      Object[][] rows =
          tables
              .get(function)
              .lines()
              .map(line -> (Object[]) line.split(","))
              .toArray(Object[][]::new);
      Object[][] spoiled = new InCells(random).spoiled(rows);
      InCells.held(CellCall.results(function, spoiled[spoiled.length - 1]));
      InCells.held(CellCall.working(function, spoiled[spoiled.length - 1]));
      for (Object[] line : CellCall.table(function, spoiled)) {
        InCells.held(line);
      }
      String noFunction = new TextFaults(random).nasty();
      assertThat(CellCall.results(noFunction, 1.0))
          .singleElement()
          .asString()
          .startsWith(CellCall.REFUSED);
    }
  };

  private final int cost;

  /**
   * @param cost how long one input takes, against the cheapest reader
   */
  Reader(int cost) {
    this.cost = cost;
  }

  /** One input, spoiled by what this random source says; the folder is empty. */
  abstract void tries(Random random, Path folder);

  int cost() {
    return cost;
  }

  private static JobText anyJob(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> LifeText.opened();
      case 1 -> JobText.small();
      default -> JobText.demo(any(random, Samples.JOBS));
    };
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static Path made(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static Path written(Path folder, String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static <T> T any(Random random, List<T> things) {
    return things.get(random.nextInt(things.size()));
  }

  private static Path spoiled(Random random, Path file, String name) {
    try {
      byte[] bytes = new FileFaults(random).spoiled(Files.readAllBytes(file));
      return written(
          file.getParent().endsWith("sent") ? file.getParent().getParent() : file.getParent(),
          name,
          bytes);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
