package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Functions take things: few arguments, none of which could be taken for its neighbor. */
class ArgumentsTest {

  private static final int MOST = 5;

  static Stream<Card> cards() {
    return Catalog.shipped().cards().stream();
  }

  static Stream<Class<? extends Record>> things() {
    return cards()
        .flatMap(card -> card.arguments().stream())
        .flatMap(ArgumentsTest::thingsIn)
        .distinct();
  }

  private static Stream<Class<? extends Record>> thingsIn(Argument argument) {
    return argument instanceof Argument.Thing thing
        ? Stream.concat(
            Stream.of(thing.type()), thing.parts().stream().flatMap(ArgumentsTest::thingsIn))
        : Stream.empty();
  }

  @Test
  void functions_takeAtMostFiveArgumentsAndNoTwoNeighborsOfOneKind() {
    assertThat(cards().filter(card -> isLoose(card.method())).map(Card::name)).isEmpty();
  }

  @Test
  void isLoose_seesSixArgumentsAndTwoNeighborsOfOneKind() throws NoSuchMethodException {
    assertThat(isLoose(List.class.getMethod("of", Object.class, Object.class))).isTrue();
    assertThat(isLoose(String.class.getMethod("substring", int.class, int.class))).isTrue();
    assertThat(isLoose(String.class.getMethod("indexOf", String.class, int.class))).isFalse();
    assertThat(
            isLoose(
                String.class.getMethod(
                    "regionMatches", boolean.class, int.class, String.class, int.class, int.class)))
        .isTrue();
  }

  private static boolean isLoose(Method method) {
    List<Type> kinds = List.of(method.getGenericParameterTypes());
    return kinds.size() > MOST
        || IntStream.range(1, kinds.size())
            .anyMatch(
                place -> kinds.get(place).equals(kinds.get(place - 1)) && !hasOwner(method, place));
  }

  /** Two things of one kind are told apart by whose they are. */
  private static boolean hasOwner(Method method, int place) {
    Column column = method.getParameters()[place].getAnnotation(Column.class);
    return column != null && !column.prefix().isEmpty();
  }

  @ParameterizedTest
  @MethodSource("things")
  void thing_letsEveryPartThroughItsColumns(Class<? extends Record> thing) throws Exception {
    Object[] nothing = new Object[thing.getRecordComponents().length];
    Record made = (Record) Columns.of(thing).constructor().newInstance(nothing);
    for (var component : thing.getRecordComponents()) {
      assertThat(component.getAccessor().invoke(made)).as(component.getName()).isNotNull();
    }
  }
}
