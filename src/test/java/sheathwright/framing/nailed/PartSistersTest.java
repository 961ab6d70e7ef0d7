package sheathwright.framing.nailed;

import static java.util.Arrays.stream;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.lbPerInch;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import sheathwright.framing.sister.Elasticity;
import sheathwright.framing.sister.LiveSpan;
import sheathwright.framing.sister.MeasuredRafter;
import sheathwright.framing.sister.Ply;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.TwoBeams;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.LumberSize;

/** Sisters that end short of the supports, against the two-beam model on chance cases. */
class PartSistersTest {

  /** One chance case, in plain numbers. */
  private record Case(
      double depth,
      LumberSize size,
      double rafterModulus,
      double sisterModulus,
      double span,
      double live,
      double dead,
      double existing,
      double part,
      double arm,
      double end,
      double lateral,
      double slip) {

    static Case by(Random chance) {
      double span = 96 + chance.nextInt(144);
      double part = 0.6 + 0.39 * chance.nextDouble();
      double end = 1 + 4 * chance.nextDouble();
      double longest = part * span / 2 - end;
      double dead = 5 + 20 * chance.nextDouble();
      return new Case(
          3.5 + 6 * chance.nextDouble(),
          LumberSize.values()[chance.nextInt(4)],
          1e6 + 9e5 * chance.nextDouble(),
          1e6 + 9e5 * chance.nextDouble(),
          span,
          15 + 50 * chance.nextDouble(),
          dead,
          dead * chance.nextDouble(),
          part,
          6 + (longest - 6.5) * chance.nextDouble(),
          end,
          60 + 90 * chance.nextDouble(),
          Math.pow(10, 3 + 2 * chance.nextDouble()));
    }

    double rafterStiffness() {
      return rafterModulus * 1.5 * Math.pow(depth, 3) / 12;
    }

    double sisterStiffness() {
      return sisterModulus * 1.5 * Math.pow(DressedSizes.width(size).value(), 3) / 12;
    }

    double lineLoad(double pressure) {
      return pressure * 16 / 144;
    }

    double sisterEnd() {
      return span * (1 - part) / 2;
    }

    PartSister answer() {
      return PartSisters.partSister(
          RafterPly.depth(in(depth)).bending(psi(1200)).modulus(psi(rafterModulus)),
          ShortSister.size(size)
              .length(in(span * part))
              .bending(psi(1300))
              .modulus(psi(sisterModulus)),
          SisterLoad.of(SpanLoad.span(in(span)).spacing(in(16)).live(psf(live)).dead(psf(dead)))
              .existing(psf(existing)),
          SlippingGroups.of(GroupNailing.arm(in(arm)).endDistance(in(end)).lateral(lb(lateral)))
              .stiffness(lbPerInch(slip)),
          number(0.4));
    }

    PartSisterSag bounds() {
      return PartSisterSags.partSisterSag(
          MeasuredRafter.depth(in(depth)),
          Elasticity.of(psi(rafterModulus)),
          Ply.size(size).modulus(psi(sisterModulus)),
          LiveSpan.span(in(span)).spacing(in(16)).live(psf(live)),
          in(span * part));
    }

    double[] groups() {
      double far = sisterEnd() + end;
      double near = far + arm;
      return new double[] {far, near, span - near, span - far};
    }

    Case with(double newPart, double newLateral) {
      return new Case(
          depth,
          size,
          rafterModulus,
          sisterModulus,
          span,
          live,
          dead,
          existing,
          newPart,
          arm,
          end,
          newLateral,
          slip);
    }

    /** The same by finite elements, each group of nails a spring, under one of the loads. */
    TwoBeams model(double load, double nails) {
      return model(load, nails, groups());
    }

    TwoBeams model(double load, double nails, double[] groups) {
      return new TwoBeams(
          span,
          load,
          rafterStiffness(),
          sisterStiffness(),
          sisterEnd(),
          span - sisterEnd(),
          groups,
          nails * slip,
          false,
          -1);
    }
  }

  @Test
  void forceAndMoments_areThoseOfTheTwoBeamModel() {
    Random chance = new Random(11);
    for (int i = 0; i < 200; i++) {
      Case given = Case.by(chance);
      PartSister answer = given.answer();
      double added = given.lineLoad(given.live + given.dead - given.existing);
      double nails = answer.groupNails().value();
      TwoBeams model = given.model(added, nails);
      double force = answer.group().value();
      assertThat(model.forces()[1]).as(given.toString()).isCloseTo(force, within(1e-5 * force));
      assertThat(-model.forces()[0]).isCloseTo(force, within(1e-5 * force));
      assertThat(given.model(added, 1e5).forces()[1])
          .isCloseTo(answer.rigid().value(), within(0.01 * answer.rigid().value()));

      double locked = given.lineLoad(given.existing);
      double greatest = 0;
      double from = given.sisterEnd() + given.end;
      for (int k = 0; k <= 2000; k++) {
        double x = from + (given.span / 2 - from) * k / 2000;
        greatest = Math.max(greatest, model.rafterMoment(x) + locked * x * (given.span - x) / 2);
      }
      double asked = answer.rafter().ratio().value() * 1200 * 1.5 * given.depth * given.depth / 6;
      assertThat(asked).isCloseTo(greatest, within(2e-5 * greatest));
      double brought = model.sisterMoment(given.span / 2);
      double addedMoment = added * given.span * given.span / 8;
      assertThat(answer.part().value() * addedMoment)
          .isCloseTo(brought, within(1e-5 * force * given.arm));
      double share = given.sisterStiffness() / (given.rafterStiffness() + given.sisterStiffness());
      assertThat(answer.sister().demand().in(answer.sister().capacity().unit()).value())
          .isCloseTo(Math.max(brought, share * addedMoment), within(1e-5 * addedMoment));
    }
  }

  @Test
  void sag_isThatOfTheTwoBeamModelAndBetweenItsBounds() {
    Random chance = new Random(13);
    for (int i = 0; i < 200; i++) {
      Case given = Case.by(chance);
      PartSister answer = given.answer();
      double sag = answer.sag().value();
      TwoBeams model = given.model(given.lineLoad(given.live), answer.groupNails().value());
      assertThat(sag).as(given.toString()).isCloseTo(model.sag(), within(1e-6 * sag));
      PartSisterSag bounds = given.bounds();
      assertThat(sag).isBetween(bounds.least().value(), bounds.most().value());
    }
  }

  @Test
  void leastSag_liesBelowEveryModelHoweverStiffTheNails() {
    Random chance = new Random(17);
    for (int i = 0; i < 60; i++) {
      Case given = Case.by(chance);
      PartSisterSag bounds = given.bounds();
      double from = given.sisterEnd();
      int count = 4 + chance.nextInt(14);
      double[] nails = TwoBeams.evenly(from + 0.5, given.span - from - 0.5, count);
      for (double stiffness : new double[] {500, 6000, 60_000, 1e7}) {
        TwoBeams model =
            new TwoBeams(
                given.span,
                given.lineLoad(given.live),
                given.rafterStiffness(),
                given.sisterStiffness(),
                from,
                given.span - from,
                nails,
                stiffness,
                false,
                -1);
        assertThat(model.sag()).isBetween(bounds.least().value(), bounds.most().value());
      }
    }
  }

  @Test
  void leastSag_ofASisterAsLongAsTheSpanIsThatOfBoth() {
    PartSisterSag full = sag(13);
    double both = 2 * 1.6e6 * 1.5 * Math.pow(7.25, 3) / 12;
    assertThat(full.least().value())
        .isCloseTo(5 * (40 * 24 / 144d) * Math.pow(156, 4) / (384 * both), within(1e-9));
    assertThat(full.role().value()).isEqualTo(PartSisterSag.Role.STIFFENER);
    assertThat(sag(7.7).role().value()).isEqualTo(PartSisterSag.Role.SPLICE);
    assertThat(sag(7.9).role().value()).isEqualTo(PartSisterSag.Role.STIFFENER);
    assertThat(sag(13.1).least().refusal().orElseThrow().reason())
        .startsWith("the sister is longer than the span");
  }

  private static PartSisterSag sag(double feet) {
    return PartSisterSags.partSisterSag(
        MeasuredRafter.depth(in(7.25)),
        Elasticity.of(psi(1.6e6)),
        Ply.size(LumberSize.SIZE_2X8).modulus(psi(1.6e6)),
        LiveSpan.span(ft(13)).spacing(in(24)).live(psf(40)),
        ft(feet));
  }

  /** One nail is a hinge: a group is three nails in two rows at least, however strong a nail is. */
  @Test
  void aGroup_hasThreeNailsAtLeast() {
    Random chance = new Random(19);
    for (int i = 0; i < 100; i++) {
      Case given = Case.by(chance);
      PartSister answer = given.with(given.part, 5000).answer();
      assertThat(answer.couple().value()).isLessThan(5000);
      assertThat(answer.groupNails().value()).as(given.toString()).isEqualTo(3);
    }
  }

  /**
   * A longer sister with the same arm may leave more sag, and the model says so each time: its near
   * groups go out with its ends. Where the nails of the shorter one stay in place and those of the
   * longer one come on top, the model sags less.
   */
  @Test
  void aLongerSister_sagsMoreOnlyWhereItsNailsLeaveTheMiddle() {
    Random chance = new Random(23);
    int more = 0;
    for (int i = 0; i < 200; i++) {
      Case given = Case.by(chance);
      Case longer =
          given.with(given.part + (0.99 - given.part) * chance.nextDouble(), given.lateral);
      double nails = given.answer().groupNails().value();
      double few = longer.answer().groupNails().value();
      double live = given.lineLoad(given.live);
      double sag = given.model(live, nails).sag();
      boolean sagsMore = longer.answer().sag().value() > given.answer().sag().value();
      assertThat(sagsMore).as(given.toString()).isEqualTo(longer.model(live, few).sag() > sag);
      more += sagsMore ? 1 : 0;
      double[] both =
          DoubleStream.concat(stream(given.groups()), stream(longer.groups())).toArray();
      assertThat(longer.model(live, nails, both).sag())
          .as(given.toString())
          .isLessThan(sag * (1 + 1e-9));
    }
    assertThat(more).isPositive();
  }

  @Test
  void aTooShortSister_isCalledASplice() {
    Case given = Case.by(new Random(1));
    Case shorter =
        new Case(
            given.depth,
            given.size,
            given.rafterModulus,
            given.sisterModulus,
            given.span,
            given.live,
            given.dead,
            given.existing,
            0.59,
            6,
            given.end,
            given.lateral,
            given.slip);
    assertThat(shorter.answer().sister().ratio().refusal().orElseThrow().reason())
        .startsWith("a sister shorter than 0.6 of the span does not stiffen it");
  }
}
