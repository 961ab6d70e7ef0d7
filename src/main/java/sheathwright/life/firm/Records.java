package sheathwright.life.firm;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sheathwright.figure.Figure;
import sheathwright.job.Job;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.life.Item;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Field;
import sheathwright.life.bill.ItemHours;

/** What the crews of all jobs have logged, and the hours that the offices' rates have for it. */
final class Records {

  /** Rates that are looked at besides. */
  private static final List<Field<? extends Figure<?>>> BESIDE =
      List.of(OfficeFields.PLANNED_SHEET_HOURS, ForecastFields.BAD_ALPHA, ForecastFields.BAD_BETA);

  private final List<Done> log = new ArrayList<>();
  private final Map<String, List<Double>> rates = new TreeMap<>();

  /**
   * The records of one job.
   *
   * @param log its rows
   * @param rates each by its key
   */
  record OfJob(List<Done> log, Map<String, Double> rates) {

    static OfJob of(Job job) {
      Map<String, Double> rates = new TreeMap<>();
      ItemHours hours = ItemHours.of(job);
      for (Item item : Item.values()) {
        hours.each(item).ifPresent(each -> rates.put(ItemHours.key(item), each.value()));
      }
      BESIDE.stream()
          .filter(job.rateBook()::knows)
          .forEach(field -> rates.put(field.name(), job.rateBook().fact(field).value()));
      return new OfJob(Done.of(job), rates);
    }
  }

  void add(OfJob job) {
    log.addAll(job.log());
    job.rates()
        .forEach((key, hours) -> rates.computeIfAbsent(key, each -> new ArrayList<>()).add(hours));
  }

  /** A rate as the jobs have it now. */
  Old old(String key) {
    return Old.of(rates.getOrDefault(key, List.of()));
  }

  /** What they say of each rate of hours. */
  List<Proposal> proposals() {
    Map<Item, TaskHours> items = new EnumMap<>(Item.class);
    Map<String, Integer> others = new LinkedHashMap<>();
    Map<String, List<Done>> byTask = new LinkedHashMap<>();
    log.forEach(done -> byTask.computeIfAbsent(done.task(), each -> new ArrayList<>()).add(done));
    for (Item item : Item.values()) {
      items.put(item, TaskHours.of(byTask.getOrDefault(item.word(), List.of())));
      byTask.remove(item.word());
    }
    byTask.forEach((task, rows) -> others.put(task, rows.size()));
    List<Proposal> all = new ArrayList<>();
    items.forEach(
        (item, hours) -> {
          String key = ItemHours.key(item);
          if (!hours.rows().isEmpty() || rates.containsKey(key)) {
            all.add(hours.proposal(key, old(key)));
          }
        });
    String planned = OfficeFields.PLANNED_SHEET_HOURS.name();
    all.add(
        Proposal.none(
            planned,
            old(planned).shown(),
            items.get(Item.SHEET).rows().size(),
            "the log does not tell sheets that were foreseen from those that were found"));
    others.forEach(
        (task, rows) -> all.add(Proposal.none(task, "", rows, "a task that no rate is for")));
    all.add(KindFactor.STEEP.proposal(items.values()));
    all.add(KindFactor.LAYERS.proposal(items.values()));
    return all;
  }
}
