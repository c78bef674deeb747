package underhold.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The house: packages and the arrows allowed between them. */
@AnalyzeClasses(packages = "underhold", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  /** The compiled rules stand in packages of their own below {@code rules}. */
  @ArchTest
  static final ArchRule arrows_point_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("underhold..")
          .withOptionalLayers(true)
          .layer("threads")
          .definedBy("underhold.threads..")
          .layer("quantity")
          .definedBy("underhold.quantity..")
          .layer("mechanics")
          .definedBy("underhold.mechanics..")
          .layer("site")
          .definedBy("underhold.site..")
          .layer("sizing")
          .definedBy("underhold.sizing..")
          .layer("advice")
          .definedBy("underhold.advice..")
          .layer("consult")
          .definedBy("underhold.consult..")
          .layer("review")
          .definedBy("underhold.review..")
          .layer("classroom")
          .definedBy("underhold.classroom..")
          .layer("report")
          .definedBy("underhold.report..")
          .layer("shell")
          .definedBy("underhold.shell..")
          .whereLayer("threads")
          .mayNotAccessAnyLayer()
          .whereLayer("quantity")
          .mayNotAccessAnyLayer()
          .whereLayer("mechanics")
          .mayNotAccessAnyLayer()
          .whereLayer("site")
          .mayOnlyAccessLayers("quantity")
          .whereLayer("sizing")
          .mayOnlyAccessLayers("site", "mechanics", "quantity")
          .whereLayer("advice")
          .mayOnlyAccessLayers("site", "quantity")
          .whereLayer("consult")
          .mayOnlyAccessLayers("advice", "sizing", "site", "quantity", "threads")
          .whereLayer("review")
          .mayOnlyAccessLayers("consult", "advice", "sizing", "site", "quantity", "threads")
          .whereLayer("classroom")
          .mayOnlyAccessLayers("review", "consult", "advice", "sizing", "site", "quantity")
          .whereLayer("report")
          .mayOnlyAccessLayers(
              "review", "classroom", "consult", "advice", "sizing", "site", "quantity", "threads");

  @ArchTest
  static final ArchRule a_class_shares_only_the_form_of_files_with_a_review =
      noClasses()
          .that()
          .resideInAPackage("underhold.classroom..")
          .should()
          .dependOnClassesThat(
              JavaClass.Predicates.resideInAPackage("underhold.review..")
                  .and(JavaClass.Predicates.resideOutsideOfPackage("underhold.review.file..")));

  @ArchTest
  static final ArchRule no_cycles = slices().matching("underhold.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule only_advice_knows_the_rule_engine =
      noClasses()
          .that()
          .resideOutsideOfPackages("underhold.advice..", "rules..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.kie..", "org.drools..");

  @ArchTest
  static final ArchRule only_the_shell_knows_spring_and_the_terminal =
      noClasses()
          .that()
          .resideOutsideOfPackage("underhold.shell..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.springframework..", "org.jline..");

  @ArchTest
  static void enough_classes_were_read_for_the_rules_to_mean_something(JavaClasses classes) {
    assertThat(classes.size()).isGreaterThan(150);
  }
}
