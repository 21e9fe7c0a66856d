package org.lagwright.report;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The directions of DEVELOPERS.md, checked on the compiled classes of all modules. */
@AnalyzeClasses(packages = "org.lagwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule readerKnowsNeitherEngineNorReport =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.ifc..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.lagwright.takeoff..", "org.lagwright.report..");

  @ArchTest
  static final ArchRule engineDoesNotKnowReport =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.takeoff..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.lagwright.report..");

  @ArchTest
  static final ArchRule engineSeesOnlyTheModelOfTheReader =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.takeoff..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.lagwright.ifc.step..",
              "org.lagwright.ifc.schema..",
              "org.lagwright.ifc.geometry..",
              "org.lagwright.ifc.extract..",
              "org.lagwright.ifc.source..",
              "org.lagwright.ifc.append..",
              "org.lagwright.ifc.packed..",
              "org.lagwright.ifc.threads..");

  @ArchTest
  static final ArchRule theModelKnowsNothingOfHowItWasRead =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.ifc.model..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.lagwright.ifc.step..",
              "org.lagwright.ifc.schema..",
              "org.lagwright.ifc.geometry..",
              "org.lagwright.ifc.extract..",
              "org.lagwright.ifc.source..",
              "org.lagwright.ifc.append..",
              "org.lagwright.ifc.packed..",
              "org.lagwright.ifc.threads..");

  @ArchTest
  static final ArchRule stepKnowsNothingOfIfc =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.ifc.step..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.lagwright.ifc.schema..",
              "org.lagwright.ifc.geometry..",
              "org.lagwright.ifc.model..",
              "org.lagwright.ifc.extract..");

  @ArchTest
  static final ArchRule testModelsKnowNothingOfTheProduct =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.testmodels..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.lagwright.ifc..", "org.lagwright.takeoff..", "org.lagwright.report..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule theReadersPackagesFormNoCycle =
      slices().matching("org.lagwright.ifc.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule noPackageOfTheReaderIsInACycle =
      slices().matching("org.lagwright.ifc.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule outputsKnowNeitherTheUseCaseNorTheCommandLine =
      noClasses()
          .that()
          .resideInAnyPackage(
              "org.lagwright.report.workbook..",
              "org.lagwright.report.json..",
              "org.lagwright.report.bcf..",
              "org.lagwright.report.ids..",
              "org.lagwright.report.bimserver..",
              "org.lagwright.report.enrich..",
              "org.lagwright.report.templates..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.lagwright.report.app..", "org.lagwright.report.cli..");

  @ArchTest
  static final ArchRule theUseCaseDoesNotKnowTheCommandLine =
      noClasses()
          .that()
          .resideInAPackage("org.lagwright.report.app..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.lagwright.report.cli..");
}
