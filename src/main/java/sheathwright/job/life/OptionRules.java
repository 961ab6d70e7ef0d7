package sheathwright.job.life;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/**
 * What the owner chooses is in what was agreed, or was chosen since, so that a change order asks
 * for it; and what was agreed is not given up in silence.
 */
final class OptionRules {

  private final LifeTables tables;

  OptionRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold() {
    if (!tables.agreed().rows().isEmpty()) {
      List<String> agreed = agreed();
      tables.options().rows().forEach(option -> isAgreedOrChosenSince(option, agreed));
    }
  }

  private List<String> agreed() {
    return tables.agreed().rows().stream()
        .filter(row -> row.read(AgreedFields.ITEM).filter(it -> isOption(it.value())).isPresent())
        .flatMap(row -> row.read(AgreedFields.WORDS).stream())
        .map(Choice::value)
        .toList();
  }

  private static boolean isOption(String item) {
    return item.startsWith(OrderFields.OPTION_LINE + "-");
  }

  private void isAgreedOrChosenSince(Row option, List<String> agreed) {
    if (option.read(AgreedFields.OPTION).isEmpty()) {
      return;
    }
    boolean isAgreed = AgreedFields.isAgreed(option, agreed);
    boolean isChosen = AgreedFields.isChosen(option);
    Optional<String> on = tables.day(LifeFields.AGREED_ON);
    if (isAgreed && !isChosen) {
      tables
          .options()
          .question(
              option,
              AgreedFields.CHOSEN,
              "it is not chosen here, but it is in what was agreed%s, and stays on the bill; if the owner gives it up, agree on what comes back, or give yes"
                  .formatted(on.map(day -> " on " + day).orElse("")));
    }
    if (!isAgreed && isChosen) {
      isChosenSince(option, on);
    }
  }

  private void isChosenSince(Row option, Optional<String> agreedOn) {
    Optional<String> chosenOn = option.read(AgreedFields.CHOSEN_ON).map(Choice::value);
    String day = agreedOn.map(on -> " on " + on).orElse("");
    if (chosenOn.isEmpty()) {
      tables
          .options()
          .problem(
              option,
              AgreedFields.CHOSEN_ON,
              "it is empty, but the option is chosen and is not in what was agreed%s; give the day on which the owner chose it since, and the next change order asks for it, or no in chosen"
                  .formatted(day));
    } else if (agreedOn.isPresent()
        && Moment.read(chosenOn.get()).isBefore(Moment.read(agreedOn.get()))) {
      tables
          .options()
          .problem(
              option,
              AgreedFields.CHOSEN_ON,
              "%s is given, but what was agreed%s does not have the option; give the day on which the owner chose it since, and the next change order asks for it, or no in chosen"
                  .formatted(chosenOn.get(), day));
    }
  }
}
