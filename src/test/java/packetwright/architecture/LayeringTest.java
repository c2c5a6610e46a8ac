package packetwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The package order is the architecture; this test is where it is written down. */
class LayeringTest {
  private static final String ROOT = "packetwright.";

  /** Each stage may name only the stages above it. */
  private static final List<String> PIPELINE =
      List.of(
          "text.source",
          "text.document",
          "text.measure",
          "text.words",
          "text.formula",
          "definition.shop",
          "definition.project",
          "definition.procedure",
          "definition.size",
          "wood.part",
          "wood.assembly",
          "wood.blank",
          "wood.workpiece",
          "wood.setup",
          "wood.operation",
          "wood.caution",
          "plan.lesson",
          "drawing.lettering",
          "drawing.view",
          "drawing.sheet",
          "drawing.part",
          "drawing.template",
          "drawing.setup",
          "drawing.figure",
          "drawing.svg",
          "paper.quiz",
          "paper.packet",
          "paper.html",
          "paper.pdf",
          "paper.publish",
          "cli");

  /** The one stage that may touch an outside library, by the library's root package. */
  private static final Map<String, String> LIBRARIES =
      Map.of(
          "org.snakeyaml..", "text.document",
          "dev.harrel..", "text.document",
          "org.apache.commons.numbers..", "text.measure",
          "org.commonmark..", "definition.procedure",
          "org.locationtech.jts..", "drawing.view",
          "org.apache.batik..", "drawing.svg",
          "freemarker..", "paper.html",
          "com.openhtmltopdf..", "paper.pdf",
          "org.apache.pdfbox..", "paper.pdf",
          "picocli..", "cli");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("packetwright");

  @TestFactory
  Stream<DynamicTest> eachStageUsesOnlyEarlierOnes() {
    return IntStream.range(0, PIPELINE.size() - 1)
        .mapToObj(
            i ->
                DynamicTest.dynamicTest(
                    PIPELINE.get(i),
                    () ->
                        noClasses()
                            .that()
                            .resideInAPackage(ROOT + PIPELINE.get(i) + "..")
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(
                                PIPELINE.subList(i + 1, PIPELINE.size()).stream()
                                    .map(p -> ROOT + p + "..")
                                    .toArray(String[]::new))
                            .allowEmptyShould(true)
                            .check(CLASSES)));
  }

  @Test
  void everyPackageIsListedAndNullMarked() {
    List<JavaPackage> packages =
        CLASSES.getPackage("packetwright").getSubpackagesInTree().stream()
            .filter(p -> !p.getClasses().isEmpty())
            .toList();
    assertThat(packages)
        .extracting(p -> p.getName().substring(ROOT.length()))
        .containsExactlyInAnyOrderElementsOf(PIPELINE);
    assertThat(packages).allMatch(p -> p.isAnnotatedWith(NullMarked.class));
  }

  @Test
  void noCycles() {
    slices().matching(ROOT + "(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @TestFactory
  Stream<DynamicTest> eachLibraryIsTouchedByOneStage() {
    return LIBRARIES.entrySet().stream()
        .map(
            library ->
                DynamicTest.dynamicTest(
                    library.getKey(),
                    () ->
                        noClasses()
                            .that()
                            .resideOutsideOfPackage(ROOT + library.getValue())
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(library.getKey())
                            .check(CLASSES)));
  }

  @Test
  void standardStreamsOnlyInCliAndNoGenericExceptions() {
    assertThat(CLASSES).as("classes seen").hasSizeGreaterThan(50);
    GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(
        CLASSES.that(DescribedPredicate.not(JavaClass.Predicates.resideInAPackage(ROOT + "cli"))));
    GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS.check(CLASSES);
  }

  @Test
  void sourceTextNamesOnlyEarlierStages() throws IOException {
    Path main = Path.of("src/main/java/packetwright");
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < PIPELINE.size() - 1; i++) {
      Pattern later =
          Pattern.compile(
              Pattern.quote(ROOT)
                  + "("
                  + String.join("|", PIPELINE.subList(i + 1, PIPELINE.size())).replace(".", "\\.")
                  + ")\\b");
      try (Stream<Path> files = Files.walk(main.resolve(PIPELINE.get(i).replace('.', '/')))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          later
              .matcher(Files.readString(file))
              .results()
              .forEach(r -> wrong.add(file + " names " + r.group()));
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void testsSitBesideWhatTheyTest() {
    GeneralCodingRules.testClassesShouldResideInTheSamePackageAsImplementation()
        .check(new ClassFileImporter().importPackages("packetwright"));
  }
}
