package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.ExampleRunner;

/** Every function says everything that the catalog wants to know of it. */
class FunctionTextsTest {

  private static final String SCREENING =
      "Screening only: local code and a licensed engineer decide";

  static Stream<Card> cards() {
    return Catalog.shipped().cards().stream();
  }

  @Test
  void catalog_holdsEveryMarkedMethodAndNoOther() {
    List<String> marked =
        new ClassFileImporter()
            .importUrl(Catalog.class.getProtectionDomain().getCodeSource().getLocation()).stream()
                .flatMap(type -> type.getMethods().stream())
                .filter(method -> method.isAnnotatedWith(LibraryFunction.class))
                .map(JavaMethod::reflect)
                .map(method -> method.getDeclaringClass().getName() + "#" + method.getName())
                .toList();
    assertThat(cards().map(Card::method))
        .extracting(method -> method.getDeclaringClass().getName() + "#" + method.getName())
        .containsExactlyInAnyOrderElementsOf(marked)
        .isNotEmpty();
  }

  @Test
  void names_areUsedOnce() {
    assertThat(cards().map(Card::name)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void method_isPublicAndStatic(Card card) {
    assertThat(Modifier.isPublic(card.method().getModifiers())).isTrue();
    assertThat(Modifier.isStatic(card.method().getModifiers())).isTrue();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void text_hasEveryPart(Card card) {
    Text text = card.text();
    assertThat(text.summary()).isNotBlank().endsWith(".");
    assertThat(text.formula()).isNotBlank();
    assertThat(text.limits()).startsWith("Does not cover ").endsWith(".");
    assertThat(text.examples()).isNotEmpty().allMatch(ExampleRunner::statesAnAnswer);
    assertThat(text.result()).isNotBlank();
    assertThat(text.refusals()).startsWith("if ");
    assertThat(text.source()).isNotBlank();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void everyParameterAndResult_hasItsTextAndUnit(Card card) {
    assertThat(card.arguments()).hasSize(card.method().getParameterCount()).isNotEmpty();
    assertThat(card.arguments()).allSatisfy(each -> assertThat(each.text()).isNotBlank());
    assertThat(card.parameters())
        .allSatisfy(
            parameter -> {
              assertThat(parameter.text()).isNotBlank();
              assertThat(parameter.column()).matches("[a-z][a-z0-9]*(_[a-z0-9]+)*");
              assertThat(parameter.unit() == null).isNotEqualTo(parameter.options() == null);
            });
    assertThat(card.parameters().stream().map(Parameter::column)).doesNotHaveDuplicates();
    assertThat(card.results()).isNotEmpty();
    assertThat(card.results().stream().map(Result::column)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void source_namesAnEditionOrSaysThatThereIsNone(Card card) {
    assertThat(card.text().source())
        .matches(
            source ->
                source.startsWith("common practice, no source")
                    || source.matches(".*\\b(19|20)\\d\\d\\b.*")
                    || source.matches(".*\\b7-(10|16|22)\\b.*")
                    || source.startsWith("derived"));
  }

  @Test
  void framing_saysThatItIsScreening() {
    assertThat(cards().filter(card -> List.of("framing", "wood").contains(card.room())))
        .isNotEmpty()
        .allSatisfy(card -> assertThat(card.text().limits()).contains(SCREENING));
  }
}
