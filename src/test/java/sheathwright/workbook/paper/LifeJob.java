package sheathwright.workbook.paper;

import java.awt.Color;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.life.Item;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;
import sheathwright.life.found.Found;
import sheathwright.workbook.draw.DrawnPictures;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.told.Photos;

/**
 * A small job with its roof open: five sheets are bad where three are in the price, six are nailed
 * again and one joint of 24 ft is sawn open. Its photographs are drawn, its people and prices
 * invented.
 */
public final class LifeJob {

  /** As the owner agreed to it: 10,420 and 165 and three sheets at 96. */
  static final String AGREED =
      """
      item,unit,usd,included,credit_usd,most,words
      sheet,half,117,3,80,50,Deck sheet taken out and replaced
      refasten,place,8,,,,A sheet refastened
      relief,ft,1.05,,,,A tight joint sawn open
      line-1,job,"10,420.00",1,,,Roof covering
      line-2,job,165,1,,,Permit
      line-3,sheet,96,3,,,Deck sheets taken out and replaced
      total,,"10,873.00",,,,The agreed sum
      stage-1,,1000,,,,Deposit
      stage-2,,"5,436.50",,,,At dry-in
      stage-3,,"4,436.50",,,,Final
      pre-agreed,,500,,,6,Without a further yes when rain comes
      """;

  static final String STAGES =
      """
      stage,part_pct,usd,when,paid_on,paid_usd
      Deposit,,1000,on signing,2027-05-10,1000
      At dry-in,,"5,436.50",when the roof is dry,2027-05-21,"5,436.50"
      Final,,"4,436.50",when the owner has looked,,
      """;

  static final String OPTIONS =
      """
      option,item,quantity,unit,usd,chosen,chosen_on
      level-B,plane B: up to 1-1/8 in low at mid-length,4,rafter,472,no,2027-05-03
      """;

  /** The one change order of the job, as it stands at the end. */
  static final String ORDERS =
      """
      order,on,usd,days,status,approved_by,approved_how,approved_on
      01,2027-05-18,248.70,0.25,approved,Odalys Brackenridge-Plume,signed,2027-05-18
      """;

  static final String ORDER_LINES =
      """
      order,item,unit,quantity,usd,marks
      01,sheet,half,1.5,175.50,"4: 1, 5: 0.5"
      01,refasten,place,6,48.00,"6: 1, 7: 1, 8: 1, 9: 1, 10: 1, 11: 1"
      01,relief,ft,24,25.20,12: 24
      """;

  static final String SENT =
      """
      document,file,file_sha256,record_sha256,total_usd,on
      QH-01,sent/quote-QH-01.xlsx,0a,0b,"10,873.00",2027-05-04
      CO-01,sent/change-order-01.xlsx,0c,0d,248.70,2027-05-18
      """;

  /** The quote alone, while no order was sent. */
  private static final String QUOTE =
      SENT.lines().limit(2).map(line -> line + "\n").reduce("", String::concat);

  /** What the tables say besides when all is done. */
  public static final Map<String, String> CLOSED =
      Map.of("orders", ORDERS, "order_lines", ORDER_LINES, "sent", SENT);

  private static final String PHOTOS =
      """
      photo,mark,report,sheet,view,taken,caption
      photos/4-before.jpg,4,,,before,2027-05-18,eave behind the gutter
      photos/4-open.jpg,4,,,open,2027-05-18,
      photos/4-after.jpg,4,,,after,2027-05-19,
      photos/2-before.jpg,2,,,before,2027-05-18,
      photos/2-open.png,2,,,open,2027-05-18,an awl goes in to the handle
      photos/5-before.jpg,5,,,before,2027-05-18,
      photos/lost.jpg,5,,,open,2027-05-18,
      photos/stamp.jpg,,,B-5-3,stamp,2027-05-19,15/32 32/16
      """;

  private static final String LIFE =
      """
      stage,opened,
      agreed_on,2027-05-10,
      opened_on,2027-05-18,
      crew,4,
      crew_hours,8,
      efficiency_pct,75,
      approver,Odalys Brackenridge-Plume,invented person
      approver_contact,"555 0143, by voice or text",invented
      answer_within_h,4,
      """;

  private static final Color STAIN = new Color(0x4A, 0x34, 0x22);

  private LifeJob() {}

  /** Its tables while the roof is open, with these in the place of its own or besides. */
  public static Map<String, RowSource> tables(Map<String, String> other) {
    Map<String, RowSource> files = new LinkedHashMap<>(Samples.tables("quince-hollow").files());
    RowSource job = files.get("job");
    List<RowSource.Line> lines = new ArrayList<>(job.lines());
    lines.addAll(CsvFile.parse("job.csv", "key,value,note\n" + LIFE).lines());
    files.put("job", new CsvFile(job.name(), ',', job.header(), lines));
    Map<String, String> all = new LinkedHashMap<>();
    all.put("marks", marks());
    all.put("agreed", AGREED);
    all.put("stages", STAGES);
    all.put("options", OPTIONS);
    all.put("photos", PHOTOS);
    all.put("sent", QUOTE);
    all.putAll(other);
    all.forEach((name, text) -> files.put(name, CsvFile.parse(name + ".csv", text)));
    return files;
  }

  /** The job of these tables. */
  static Job job(Map<String, RowSource> tables) {
    return Job.of(new JobTables(tables));
  }

  static Job with(Map<String, String> other) {
    return job(tables(other));
  }

  private static String marks() {
    StringBuilder marks =
        new StringBuilder(
            "mark,plane,finding,sheet,stage_found,on,probe_in,moisture_pct,by,cause\n");
    for (Found found : found()) {
      String finding =
          switch (found.action()) {
            case "replace" -> "rot";
            case "relieve" -> "tight";
            default -> "loose";
          };
      marks.append(
          "%s,%s,%s,%s,opened,%s,%s%n"
              .formatted(
                  found.mark(),
                  found.key().charAt(0),
                  finding,
                  found.key(),
                  found.on(),
                  found.key().startsWith("A-1") ? "3/8,24,Bram Okonjo-Lisle,eave-ice" : ",,,"));
    }
    return marks.toString();
  }

  /** What the marks lead to where a piece of up to 16 sq ft counts one half. */
  static List<Found> found() {
    return found(0.5);
  }

  /**
   * What the marks lead to.
   *
   * @param strip what the place in the strip at the ridge of plane B counts
   */
  static List<Found> found(double strip) {
    List<Found> all = new ArrayList<>();
    String rot = "replace: an awl goes in 3/8 in; more than 1/4 in is cut out";
    all.add(of("1", "A-1-2", "replace", rot, Item.SHEET, 1));
    all.add(of("2", "A-1-3", "replace", rot, Item.SHEET, 1));
    all.add(of("3", "A-1-4", "replace", rot, Item.SHEET, 1));
    all.add(of("4", "A-4-6", "replace", "replace: rot, not measured", Item.SHEET, 1));
    all.add(of("5", "B-5-3", "replace", "replace: rot, not measured", Item.SHEET, strip));
    for (int i = 1; i <= 6; i++) {
      all.add(refastened("" + (5 + i), "B-2-" + i));
    }
    String tight = "relieve: the joint is shut and stands up 1/4 in; more than 1/8 in is sawn open";
    all.add(of("12", "A-3-1", "relieve", tight, Item.RELIEF, 24));
    return all;
  }

  static Found refastened(String mark, String key) {
    String few = "refasten: 24 nails hold of 43 that are wanted";
    return of(mark, key, "refasten", few, Item.REFASTEN, 1);
  }

  static Found takenBack(Found found) {
    return new Found(
        found.mark(),
        found.key(),
        found.action(),
        found.reason(),
        found.item(),
        found.quantity(),
        found.on(),
        found.isOpened(),
        true);
  }

  private static Found of(
      String mark, String key, String action, String reason, Item item, double quantity) {
    return new Found(
        mark, key, action, reason, Optional.of(item), quantity, "2027-05-18", true, false);
  }

  /** Draws the job's photographs into a folder; one that its table names stays missing. */
  static Photos photos(Job job, Path folder) {
    write(folder, "4-before.jpg", DrawnPictures.jpeg(DrawnPictures.stained(800, 600, STAIN), 6));
    write(folder, "4-open.jpg", DrawnPictures.jpeg(DrawnPictures.stained(600, 800, STAIN), 1));
    write(
        folder,
        "4-after.jpg",
        DrawnPictures.jpeg(DrawnPictures.stained(800, 600, new Color(0xE8, 0xD9, 0xB4)), 1));
    write(folder, "2-before.jpg", DrawnPictures.jpeg(DrawnPictures.stained(640, 480, STAIN), 3));
    write(folder, "2-open.png", DrawnPictures.png(DrawnPictures.stained(400, 300, Color.BLACK)));
    write(folder, "5-before.jpg", DrawnPictures.jpeg(DrawnPictures.stained(640, 480, STAIN), 8));
    write(folder, "stamp.jpg", DrawnPictures.jpeg(DrawnPictures.stained(640, 480, Color.BLUE), 1));
    return Photos.of(job, folder);
  }

  private static void write(Path folder, String name, byte[] bytes) {
    try {
      Files.createDirectories(folder.resolve("photos"));
      Files.write(folder.resolve("photos").resolve(name), bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
