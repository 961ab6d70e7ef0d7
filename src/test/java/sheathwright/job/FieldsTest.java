package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Columns;
import sheathwright.fastening.count.Nailing;
import sheathwright.fastening.uplift.MakerSpacing;
import sheathwright.fastening.uplift.ScrewedClips;
import sheathwright.fastening.uplift.StandingSeam;
import sheathwright.figure.Figure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.rafter.ClearSpan;
import sheathwright.framing.rafter.DeckOff;
import sheathwright.framing.rafter.OldRafter;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.framing.rafter.SagLimits;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.site.CoveringFields;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.loads.LiveLoad;
import sheathwright.loads.RoofLoads;
import sheathwright.loads.UniformLoad;
import sheathwright.loads.snow.GroundSnow;
import sheathwright.loads.wind.CodeWind;
import sheathwright.loads.wind.RoofPlace;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.Rates;
import sheathwright.pricing.SheetMaterial;
import sheathwright.roof.Leans;
import sheathwright.roof.PlaneSize;
import sheathwright.wood.Lumber;
import sheathwright.wood.Member;
import sheathwright.wood.Seat;
import sheathwright.wood.ServiceConditions;

/** What a job's tables take is what the functions behind them take. */
class FieldsTest {

  private static final List<Class<? extends Record>> THINGS =
      List.of(
          Nailing.class,
          Rates.class,
          SheetMaterial.class,
          Disposal.class,
          Leans.class,
          PlaneSize.class,
          Lumber.class,
          ClearSpan.class,
          Seat.class,
          LiveLoad.class,
          UniformLoad.class,
          RoofLoads.class,
          ServiceConditions.class,
          Member.class,
          OldRafter.class,
          Birdsmouth.class,
          RoofTriangle.class,
          DeckOff.class,
          SagLimits.class,
          SisterLoad.class,
          CodeWind.class,
          RoofPlace.class,
          GroundSnow.class,
          StandingSeam.class,
          ScrewedClips.class,
          MakerSpacing.class);

  private static List<Field<?>> fields() {
    return Stream.of(
            JobFields.JOB,
            SiteFields.SITE,
            SiteFields.SPACINGS,
            CoveringFields.COVERING,
            PlaceFields.PLANES,
            OfficeFields.RATES,
            KnownRafters.WOOD,
            FramingFields.RAFTERS,
            FramingFields.OLD_RAFTERS,
            FramingFields.SISTER_CHOICE)
        .<Field<?>>flatMap(List::stream)
        .toList();
  }

  /** A job is not taken that a function would refuse: of one name, the job's range is no wider. */
  @Test
  void numbers_areNoWiderThanWhatTheThingTakes() {
    List<String> held = new ArrayList<>();
    for (Field<?> field : fields()) {
      for (Class<? extends Record> thing : THINGS) {
        for (var component : thing.getRecordComponents()) {
          if (component.isAnnotationPresent(sheathwright.catalog.Column.class)
              && Columns.of(thing).name(component.getName()).equals(field.name())
              && field.unit() != null) {
            var limits = Columns.of(thing).limits(component.getName());
            assertThat(field.limits().least())
                .as(field.name())
                .isGreaterThanOrEqualTo(limits.least());
            assertThat(field.limits().most()).as(field.name()).isLessThanOrEqualTo(limits.most());
            held.add(field.name());
          }
        }
      }
    }
    assertThat(held).contains("overhead_pct", "edge_spacing_in", "span_ft", "live_psf", "eave_ft");
    assertThat(held).hasSizeGreaterThan(20);
  }

  /** A bare fraction in a column of feet could be inches, and is asked about. */
  @Test
  void everyNumberOfEveryTable_takesAFraction() {
    List<String> read = new ArrayList<>();
    for (JobTable table : JobTable.values()) {
      for (Field<?> field : TableGuide.fields(table).values()) {
        boolean isPart =
            field.unit() != null
                && !field.unit().equals(Units.FOOT)
                && !field.limits().inWords().contains("whole");
        if (isPart) {
          double middle =
              Math.max(
                  0, Math.floor(Math.min(field.limits().most() - 1, 2 + field.limits().least())));
          String fraction = "%d 1/4".formatted((long) middle);
          Figure<?> figure = (Figure<?>) field.read(field.name(), fraction, Source.GIVEN);
          assertThat(figure.value()).as(table + " " + field.name()).isEqualTo(middle + 0.25);
          read.add(field.name());
        }
      }
    }
    assertThat(read).contains("relief_ft_h", "margin_pct", "thickness_in", "hours", "nail");
  }

  @Test
  void aFieldOfAThing_isThePartItself() {
    Field<?> overhead = Field.of(Rates.class, "overhead", "Overhead on direct cost");
    assertThat(overhead.name()).isEqualTo("overhead_pct");
    assertThat(overhead.limits()).isEqualTo(Columns.of(Rates.class).limits("overhead"));
    assertThat(overhead.unit()).isEqualTo(sheathwright.figure.Units.PERCENT);
    Field<?> species = Field.of(Lumber.class, "species", "Sister species").named("sister_species");
    assertThat(species.name()).isEqualTo("sister_species");
    assertThat(species.allowed()).startsWith("one of douglas-fir-larch, ");
  }
}
