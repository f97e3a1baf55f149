package strickle;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/** The arrows of the house: who may lean on whom. A room that is not built yet breaks no rule. */
@Tag("slow")
class HouseTest {

  private static final List<String> THINKING =
      List.of("book", "mix", "cure", "shop", "plan", "price", "supply", "safety");

  /** Each room with the rooms it may lean on. */
  private static final Map<String, List<String>> MAY_LEAN_ON =
      Map.ofEntries(
          Map.entry("book", List.of()),
          Map.entry("mix", List.of("book")),
          Map.entry("cure", List.of("book")),
          Map.entry("shop", List.of()),
          Map.entry("plan", List.of("shop", "mix", "cure", "book")),
          Map.entry("price", List.of("plan", "mix", "book")),
          Map.entry("supply", List.of("plan", "mix", "book")),
          Map.entry("safety", List.of("plan", "mix", "cure", "book")),
          Map.entry("web", List.of()),
          Map.entry("demo", THINKING),
          Map.entry("json", and(THINKING, "demo")),
          Map.entry("store", and(THINKING, "json")),
          Map.entry("paper", and(THINKING, "web")),
          Map.entry("api", and(THINKING, "demo", "web", "json", "store", "paper")),
          Map.entry("cli", and(THINKING, "demo", "web", "json", "store", "paper", "api")));

  private static final Set<String> ROOMS = MAY_LEAN_ON.keySet();

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("strickle");

  @ParameterizedTest
  @FieldSource("ROOMS")
  void aRoomLeansOnlyWhereItsArrowsPoint(String room) {
    String[] allowed =
        Stream.concat(Stream.of(room), MAY_LEAN_ON.get(room).stream())
            .map(HouseTest::room)
            .toArray(String[]::new);
    classes()
        .that()
        .resideInAPackage(room(room))
        .should()
        .onlyDependOnClassesThat(
            not(resideInAPackage("strickle..")).or(resideInAnyPackage(allowed)))
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @Test
  void everyClassLivesInARoomOfTheDesign() {
    String[] rooms = ROOMS.stream().map(HouseTest::room).toArray(String[]::new);
    classes().should().resideInAnyPackage(rooms).check(HOUSE);
  }

  @Test
  void noTwoRoomsLeanOnEachOther() {
    slices().matching("strickle.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void theShopKnowsNothingButTimefoldAndJava() {
    classes()
        .that()
        .resideInAPackage("strickle.shop..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "strickle.shop..", "ai.timefold..", "java..", "org.slf4j..", "org.jspecify..")
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @Test
  void theAuditReadsOnlyTheBookAndTheRecordsOfThePlan() {
    DescribedPredicate<JavaClass> partOfThePlan =
        resideInAPackage("strickle.plan")
            .and(describe("is a record or an enum", c -> c.isRecord() || c.isEnum()));
    classes()
        .that()
        .resideInAPackage("strickle.plan.audit..")
        .should()
        .onlyDependOnClassesThat(
            not(resideInAPackage("strickle.."))
                .or(
                    resideInAnyPackage(
                        "strickle.plan.audit..", "strickle.book..", "strickle.mix.."))
                .or(partOfThePlan))
        .allowEmptyShould(true)
        .check(HOUSE);
  }

  @ParameterizedTest
  @CsvSource({
    "tools.jackson.., json",
    "com.fasterxml.jackson.., json",
    "java.sql.., store",
    "com.github.kagkarlsson.., store",
    "picocli.., cli",
    "com.openhtmltopdf.., paper",
    "org.apache.pdfbox.., paper",
    "de.siegmar.fastcsv.., paper",
    "io.javalin.., api",
    "org.eclipse.jetty.., api",
    "org.bouncycastle.., api",
    "java.net.http.., api",
    "com.sun.net.httpserver.., api",
    "ai.timefold.., shop",
    "org.ojalgo.., price",
  })
  void aLibraryIsKnownInOneRoomOnly(String library, String room) {
    noClasses()
        .that()
        .resideOutsideOfPackage(room(room))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(HOUSE);
  }

  private static String room(String name) {
    return "strickle." + name + "..";
  }

  private static List<String> and(List<String> first, String... more) {
    return Stream.concat(first.stream(), Stream.of(more)).toList();
  }
}
