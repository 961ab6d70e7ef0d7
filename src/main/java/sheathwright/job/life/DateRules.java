package sheathwright.job.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.YesNo;
import sheathwright.job.life.MarkFields.Seen;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/** The days of a job come in their order, and what was found lies between them. */
final class DateRules {

  private final LifeTables tables;

  DateRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold(Field<Choice<String>> quoteDate) {
    Optional<Field<Choice<String>>> before = Optional.empty();
    for (Field<Choice<String>> date : LifeTables.dates(quoteDate)) {
      Optional<String> day = tables.day(date);
      if (day.isPresent()) {
        before.ifPresent(earlier -> inOrder(earlier, date));
        before = Optional.of(date);
      }
    }
    tables.marks().rows().stream().filter(DateRules::isKept).forEach(this::isFoundInTime);
    tables.orders().rows().forEach(this::isApprovedAfterwards);
  }

  private static boolean isBefore(String one, String other) {
    return Moment.read(one).isBefore(Moment.read(other));
  }

  private static boolean isKept(Row mark) {
    return mark.read(MarkFields.VOID).filter(taken -> taken.value() == YesNo.YES).isEmpty();
  }

  private void inOrder(Field<Choice<String>> earlier, Field<Choice<String>> later) {
    String first = tables.day(earlier).orElseThrow();
    String second = tables.day(later).orElseThrow();
    if (isBefore(second, first)) {
      tables
          .job()
          .problem(
              later,
              "%s is given, but %s is %s (%s); a job is asked for, looked at, quoted, agreed, opened and closed, in that order: give %3$s or a later day"
                  .formatted(second, earlier.name(), first, tables.job().place(earlier)));
    }
  }

  /** A mark of the open deck was found while it was open. */
  private void isFoundInTime(Row mark) {
    Optional<String> on = mark.read(MarkFields.ON).map(Choice::value);
    if (on.isEmpty()) {
      return;
    }
    Optional<String> opened = tables.day(LifeFields.OPENED_ON);
    boolean isBlank = !mark.has(MarkFields.STAGE_FOUND);
    boolean isOpened =
        isBlank
            ? tables.stage().isAtLeast(Stage.OPENED)
            : mark.read(MarkFields.STAGE_FOUND).filter(it -> it.value() == Seen.OPENED).isPresent();
    if (isOpened && opened.isPresent() && isBefore(on.get(), opened.get())) {
      tables
          .marks()
          .problem(
              mark,
              MarkFields.ON,
              "%s is given, but the deck was opened on %s (%s), and the mark is of stage_found opened%s; give %2$s or a later day, or surveyed in stage_found"
                  .formatted(
                      on.get(),
                      opened.get(),
                      tables.job().place(LifeFields.OPENED_ON),
                      isBlank ? ", which a blank means by now" : ""));
    }
    Optional<String> closed = tables.day(LifeFields.CLOSED_ON);
    if (closed.isPresent() && isBefore(closed.get(), on.get())) {
      tables
          .marks()
          .problem(
              mark,
              MarkFields.ON,
              "%s is given, but the job was closed on %s (%s); give %2$s or an earlier day, or yes in void"
                  .formatted(on.get(), closed.get(), tables.job().place(LifeFields.CLOSED_ON)));
    }
  }

  private void isApprovedAfterwards(Row order) {
    List<String> days = new ArrayList<>();
    order.read(OrderFields.ON).ifPresent(on -> days.add(on.value()));
    order.read(OrderFields.APPROVED_ON).ifPresent(on -> days.add(on.value()));
    if (days.size() == 2 && isBefore(days.get(1), days.get(0))) {
      tables
          .orders()
          .problem(
              order,
              OrderFields.APPROVED_ON,
              "%s is given, but the order is of %s; nobody approves what is not written yet: give %2$s or a later day"
                  .formatted(days.get(1), days.get(0)));
    }
  }
}
