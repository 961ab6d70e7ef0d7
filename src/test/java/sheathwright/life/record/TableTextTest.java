package sheathwright.life.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.ProblemsException;

class TableTextTest {

  private static final Keys KEYS = JobTable.JOB.keys().orElseThrow();

  private static final List<Field<?>> COLUMNS =
      Stream.concat(OrderFields.ORDERS.stream(), OrderFields.ORDER_LINES.stream()).toList();

  @TempDir private Path folder;

  @Test
  void aKey_isSetInItsLineAndNothingElseChanges() {
    String before =
        "\uFEFFkey,value,note\r\n\r\njob_name,\"A, \"\"B\"\" and\r\nC\",mine\r\nstage,quoted,\"was, once\"\r\n\r\nsite,x\r\n\r\n";
    assertThat(set(before, LifeFields.STAGE, "agreed"))
        .isEqualTo(before.replace("stage,quoted,", "stage,agreed,"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void aKeyThatIsNotThere_comesBehindTheLastLineWithTheSameEnd(String end) {
    String before = "key,value,note" + end + "site,x,y" + end;
    assertThat(set(before, LifeFields.STAGE, "agreed")).isEqualTo(before + "stage,agreed," + end);
  }

  @Test
  void aLastLineWithoutAnEnd_isEndedFirst() {
    assertThat(set("key,value\nsite,x", LifeFields.STAGE, "agreed"))
        .isEqualTo("key,value\nsite,x\nstage,agreed\n");
    assertThat(set("key,value\nstage,quoted", LifeFields.STAGE, "agreed"))
        .as("nor does it get one")
        .isEqualTo("key,value\nstage,agreed");
  }

  @Test
  void aKeyWithoutAValue_getsOneUnderItsHeading() {
    assertThat(set("note,key,value\n\"x, y\",stage\n", LifeFields.STAGE, "agreed"))
        .isEqualTo("note,key,value\n\"x, y\",stage,agreed\n");
  }

  @Test
  void aRow_hasTheColumnsSeparatorAndDecimalsOfItsTable() {
    String before = "usd;order;note;status;on\n1,50;CO-01;\"a;b\";offered;2027-05-04\n";
    assertThat(
            appended(
                before,
                Map.of(
                    OrderFields.ORDER.name(),
                    "CO-02",
                    OrderFields.STATUS.name(),
                    "a;\"b\"",
                    AgreedFields.USD.name(),
                    "1250.00")))
        .isEqualTo(before + "1250,00;CO-02;;\"a;\"\"b\"\"\";\n");
  }

  /** 4,125 between semicolons is four thousand to some readers. */
  @Test
  void threeDecimals_areNeverThousands() {
    assertThat(appended("quantity;item\n", Map.of(AgreedFields.QUANTITY.name(), "4.125")))
        .isEqualTo("quantity;item\n4,1250;\n");
    assertThat(appended("quantity,item\n", Map.of(AgreedFields.QUANTITY.name(), "4.125")))
        .isEqualTo("quantity,item\n4.125,\n");
  }

  @Test
  void aColumnThatIsNotThere_isAskedFor() {
    assertThatThrownBy(() -> appended("order,on\n", Map.of(OrderFields.STATUS.name(), "offered")))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "orders.csv, line 1, column status: this column is missing and something is to be"
                + " written under it; add it");
  }

  @Test
  void aNewTable_beginsWithItsColumns() {
    TableText text = TableText.empty("sent.csv", OrderFields.SENT, ';');
    assertThat(new String(text.bytes(), StandardCharsets.UTF_8))
        .isEqualTo("document;file;file_sha256;record_sha256;total_usd;on;manifest_sha256\n");
    assertThat(text.parsed().header()).hasSize(7);
  }

  private String set(String before, Field<?> key, String value) {
    return text(text("job.csv", before).with(KEYS, key, value));
  }

  private String appended(String before, Map<String, String> cells) {
    return text(text("orders.csv", before).withRow(cells));
  }

  private TableText text(String name, String before) {
    try {
      return TableText.of(Files.writeString(folder.resolve(name), before), COLUMNS);
    } catch (IOException unwritable) {
      throw new java.io.UncheckedIOException(unwritable);
    }
  }

  private static String text(TableText table) {
    return new String(table.bytes(), StandardCharsets.UTF_8);
  }
}
