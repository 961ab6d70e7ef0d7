package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.fastening.uplift.MakerRequirement.Met;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.QuoteLines;
import sheathwright.job.life.LifeFields;
import sheathwright.job.price.FoundUnit;
import sheathwright.job.site.SiteFields;
import sheathwright.job.site.Spacings;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Field;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.told.Told;

/** The page of what is put on the roof, what nobody has seen, and what may change. */
final class TermsPage {

  private final Letter letter;
  private final Tab tab;
  private final Estimate estimate;
  private final Job job;

  TermsPage(Letter letter, Estimate estimate) {
    this.letter = letter;
    this.tab = letter.tab();
    this.estimate = estimate;
    this.job = estimate.job();
  }

  void write() {
    get();
    besides();
    seen();
    change();
    maker();
    tab.heading("Before you sign");
    letter.sentence(
        "The notices that your state asks of a contractor are attached to the contract; ask for any that is missing.");
    tab.heading("While we work");
    HomeCautions.ALL.forEach(letter::sentence);
  }

  private void get() {
    tab.heading("What you get");
    if (estimate.deck().hasSheets()) {
      letter.fact("New deck panels", panel());
      letter.fact("Nails", nails());
      letter.fact("Counted so", SheetWords.one(estimate.billRule().value()));
    }
    if (!estimate.deck().ofBoards().isEmpty()) {
      letter.fact(
          "Boards",
          "As thick and as wide as the old ones, over whole rafters, two nails at each. They are counted by the foot: whole boards, as long as the bad part.");
    }
    letter.fact(
        "Permit",
        job.fact(JobFields.PERMIT).value() > 0
            ? "We apply for it; its fee is in the price."
            : "No permit fee is in the price. Ask the building department whether one is needed.");
    letter.fact("Old wood", "Taken out, carried away, and the yard swept with a magnet.");
  }

  private String panel() {
    if (!job.knows(SiteFields.PANEL_THICKNESS)) {
      return "At least as thick as the old ones; thickness and stamp are told to you before we lay them.";
    }
    String kind = job.knows(SiteFields.PANEL_KIND) ? job.fact(SiteFields.PANEL_KIND).plain() : "";
    String stamp =
        job.knows(SiteFields.PANEL_RATING)
            ? ", stamped " + job.fact(SiteFields.PANEL_RATING).plain()
            : "";
    return "%s in %s, 4 by 8 ft%s"
        .formatted(
            inches(job.fact(SiteFields.PANEL_THICKNESS)),
            kind.equals("osb") ? "OSB" : kind.isEmpty() ? "panels" : kind,
            stamp);
  }

  private String nails() {
    Spacings used = estimate.site().nailing().used();
    if (used.refusal().isPresent()) {
      return "As the building department asks.";
    }
    String nail = job.knows(SiteFields.NAIL) ? nail(job.fact(SiteFields.NAIL).plain()) + ", " : "";
    return "%sone every %s in along the edges of a sheet and every %s in between; closer near the roof's own edges where the code asks."
        .formatted(nail, inches(used.edge()), inches(used.field()));
  }

  /** A deck nail as a homeowner may ask about it. */
  private static String nail(String word) {
    return word.startsWith("rsrs")
        ? "ring-shank nails (%s)".formatted(word.toUpperCase(java.util.Locale.ROOT))
        : word.replace('-', ' ') + " nails";
  }

  private static String inches(Figure<Length> length) {
    return Lengths.inFractions(length.in(Units.INCH).value());
  }

  /** What each thing costs that may be found besides bad sheets. */
  private void besides() {
    Map<FoundUnit, Figure<?>> extras = estimate.quote().extras();
    if (!extras.isEmpty()) {
      tab.heading("What else may be found, and what each costs");
      extras.forEach(
          (unit, price) ->
              letter.sentence(
                  "%s, each %s".formatted(unit.label(), unit.each()),
                  Told.of(QuoteLines.toldName(unit), price)));
    }
  }

  private void seen() {
    tab.heading("What was seen, and what nobody has seen");
    said("Seen", JobFields.LOOKED_AT, "Nothing is told of what was looked at.");
    said(
        "Not seen",
        JobFields.NOT_LOOKED_AT,
        "The deck under the old covering: it cannot be seen before that is off.");
    LikelyWords.of(estimate).ifPresent(words -> letter.fact("How many may be bad", words));
  }

  private void said(String label, Field<Choice<String>> fact, String otherwise) {
    letter.fact(label, job.knows(fact) ? job.fact(fact).value() : otherwise);
  }

  private void change() {
    tab.heading("What may change");
    letter.fact(
        estimate.deck().hasSheets() ? "A bad sheet more" : "A bad board",
        "We stop, photograph it and call you. It is covered only after you have seen the photo and said yes.");
    letter.fact(
        "Something that stops us",
        "A split or rotten rafter, live wires, material that may hold asbestos: we stop there, close the roof so that it is dry, and call you. Whoever is licensed for it decides.");
    letter.fact(
        "Who says yes",
        job.knows(LifeFields.APPROVER) ? approver() : "You, in writing; an e-mail is enough.");
    letter.fact(
        "Rain",
        "We open no more in a day than we can close again. If nobody can be reached and rain comes, we close the roof so that it is dry"
            + preAgreed());
    if (job.knows(LifeFields.PRICE_UNTIL)) {
      letter.fact(
          "Prices hold until", Dates.inWords(Dates.read(job.fact(LifeFields.PRICE_UNTIL).value())));
    }
    said("Deposit", LifeFields.DEPOSIT_RULE, "As the contract says.");
    if (FirmTerms.of(job).cancel().isPresent()) {
      letter.fact("If you cancel", "As on page 1.");
    } else {
      said("If you cancel", LifeFields.CANCEL_RULE, "As the contract and your state's law say.");
    }
  }

  private String approver() {
    String within =
        job.knows(LifeFields.ANSWER_WITHIN)
            ? "; please answer within "
                + Shown.with(Units.HOUR, job.fact(LifeFields.ANSWER_WITHIN).value())
            : "";
    return job.fact(LifeFields.APPROVER).value() + within + ".";
  }

  private String preAgreed() {
    return job.knows(LifeFields.PRE_AGREED_SHEETS)
        ? ", and replace up to %s without a further yes."
            .formatted(SheetWords.counted(job.fact(LifeFields.PRE_AGREED_SHEETS)))
        : ", and replace nothing without your yes.";
  }

  /** What the covering's maker asks for, met or not, in words. */
  private void maker() {
    estimate
        .maker()
        .ifPresent(
            roll -> {
              tab.heading("What the maker of the covering asks of the deck");
              asked("Met", roll, Met.YES);
              asked("Not met", roll, Met.NO);
              asked("Not shown yet", roll, Met.NOT_SHOWN);
            });
  }

  private void asked(String label, Roll roll, Met how) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < roll.rows().size(); i++) {
      if (roll.cellsOf("met").get(i).plain().equals(how.word())) {
        all.add(roll.cellsOf("requirement").get(i).plain());
      }
    }
    if (!all.isEmpty()) {
      String then = how == Met.NO ? "; the maker decides before the covering goes on" : "";
      letter.fact(label, capital(String.join(", ", all)) + then + ".");
    }
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }

  /** What somebody who lives below has to know while a roof is open. */
  private static final class HomeCautions {

    private static final List<String> ALL =
        List.of(
            "Keep people, pets and cars away from below the roof's edge, and nobody else up the ladders. The old deck may not bear a person, from above or from the attic.",
            "Cover what must not get wet in the attic. Loose, pebbly insulation, old felt and old siding may hold asbestos, and paint from before 1978 lead: keep out, and do not sweep.",
            "Tell us of cables, solar wiring and antennas. Wear shoes in the yard until we have swept it for nails the last time.",
            "What we check is screening only: local code and licensed engineers decide.");

    private HomeCautions() {}
  }
}
