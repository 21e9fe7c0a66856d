package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.message;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;

/** Systems, places, coverings and sets as exporters relate them. */
class BelongingPatternTest {

  private static final String PIPE = "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);\n";

  @Test
  void pipeWhosePortsAloneAreInASystemIsInIt() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCDISTRIBUTIONPORT('2',$,$,$,$,$,$,.SOURCE.,$,$);
                #3=IFCRELNESTS('3',$,$,$,#1,(#2));
                #4=IFCDISTRIBUTIONSYSTEM('4',$,'Heating flow',$,$,$,'HEATING');
                #5=IFCRELASSIGNSTOGROUP('5',$,$,$,(#2),$,#4);
                """);

    assertThat(pipe.systems()).extracting(MepSystem::name).containsExactly("Heating flow");
    assertThat(pipe.systems().get(0).predefinedType()).isEqualTo("HEATING");
  }

  @Test
  void pipeInAZoneIsInItsSystemAlone() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCZONE('2',$,'Cooled offices',$,$,$);
                #3=IFCDISTRIBUTIONSYSTEM('3',$,'Heating flow',$,$,$,.HEATING.);
                #4=IFCRELASSIGNSTOGROUP('4',$,$,$,(#1),$,#2);
                #5=IFCRELASSIGNSTOGROUP('5',$,$,$,(#1),$,#3);
                """);

    assertThat(pipe.systems()).extracting(MepSystem::name).containsExactly("Heating flow");
  }

  /** A circuit may be a part of its system instead of a member, and systems may go in circles. */
  @Test
  void circuitThatIsAPartOfItsSystemLeadsToIt() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCDISTRIBUTIONCIRCUIT('2',$,'Circuit 1',$,$,$,$);
                #3=IFCDISTRIBUTIONSYSTEM('3',$,'Heating flow',$,$,$,.HEATING.);
                #4=IFCRELASSIGNSTOGROUP('4',$,$,$,(#1),$,#2);
                #5=IFCRELAGGREGATES('5',$,$,$,#3,(#2));
                #6=IFCRELAGGREGATES('6',$,$,$,#2,(#3));
                """);

    assertThat(pipe.systems())
        .extracting(MepSystem::name)
        .containsExactly("Circuit 1", "Heating flow");
  }

  @Test
  void pipeOfANestedAssemblyHasItsSystemAndStorey() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCELEMENTASSEMBLY('2',$,'Spool',$,$,$,$,$,$,$);
                #3=IFCELEMENTASSEMBLY('3',$,'Module',$,$,$,$,$,$,$);
                #4=IFCRELAGGREGATES('4',$,$,$,#2,(#1));
                #5=IFCRELAGGREGATES('5',$,$,$,#3,(#2));
                #6=IFCSYSTEM('6',$,'Chilled water',$,$);
                #7=IFCRELASSIGNSTOGROUP('7',$,$,$,(#3),$,#6);
                #8=IFCBUILDINGSTOREY('8',$,'Level 2',$,$,$,$,$,$,6000.);
                #9=IFCRELCONTAINEDINSPATIALSTRUCTURE('9',$,$,$,(#3),#8);
                """);

    assertThat(pipe.systems()).extracting(MepSystem::name).containsExactly("Chilled water");
    assertThat(pipe.place().storey()).isEqualTo("Level 2");
    assertThat(pipe.place().storeyElevationM()).isEqualTo(6);
  }

  @ParameterizedTest
  @CsvSource({
    "IFCRELCONTAINEDINSPATIALSTRUCTURE('9'|$|$|$|(#1)|#2)",
    "IFCRELAGGREGATES('9'|$|$|$|#2|(#1))"
  })
  void storeyIsFoundThroughASpaceThatIsAggregatedUnderIt(String relation) {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCSPACE('2',$,'0.12',$,$,$,$,'Plant room',$,$,$);
                #3=IFCBUILDINGSTOREY('3',$,'Ground floor',$,$,$,$,$,$,0.);
                #4=IFCRELAGGREGATES('4',$,$,$,#3,(#2));
                #9=%s;
                """
                    .formatted(relation.replace('|', ',')));

    assertThat(pipe.place().storey()).isEqualTo("Ground floor");
    assertThat(pipe.place().space()).isEqualTo("0.12 Plant room");
  }

  @Test
  void thicknessesThatContradictAreAFindingAndThePossibleOneIsTaken() {
    MepModel model =
        read(
            PIPE
                + properties(
                    "Insulation Thickness", "IFCLENGTHMEASURE(1000.)",
                    "Daemmdicke", "IFCTEXT('0')",
                    "InsulationThickness [mm]", "IFCTEXT('30')",
                    "Isolierdicke", "IFCTEXT('30 mm')"));

    ExistingInsulation existing = Objects.requireNonNull(element(model, 1).existingInsulation());
    assertThat(existing.thicknessM()).isEqualTo(0.03);
    assertThat(codes(model)).contains("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1000})
  void oneOfWhateverUnitAloneIsNoInsulation(double thicknessMm) {
    MepModel model =
        read(PIPE + properties("InsulationThickness", "IFCLENGTHMEASURE(" + thicknessMm + ")"));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(codes(model)).contains("INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"Weight (insulated and filled)", "InsulationStandardClass", "Lining Thickness"})
  void propertiesThatOnlySoundLikeInsulationAreNone(String name) {
    assertThat(first(PIPE + properties(name, "IFCTEXT('30')")).existingInsulation()).isNull();
  }

  @ParameterizedTest
  @CsvSource({"Duct Lining,false", "Duct Insulation,true"})
  void liningInsideADuctIsNotInsulationOutsideIt(String name, boolean insulated) {
    MepModel model =
        read(
            """
            #1=IFCDUCTSEGMENT('1',$,'Duct',$,$,$,$,$,$);
            #2=IFCCOVERING('2',$,'%s',$,$,$,$,$,.INSULATION.);
            #3=IFCRELCOVERSBLDGELEMENTS('3',$,$,$,#1,(#2));
            """
                .formatted(name));

    assertThat(element(model, 1).existingInsulation() != null).isEqualTo(insulated);
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST");
  }

  @Test
  void propertyThatStandsTwiceInASetIsReportedAndTheFirstIsTaken() {
    MepModel model =
        read(
            PIPE
                + properties(
                    "Length", "$",
                    "Length", "IFCLENGTHMEASURE(2000.)",
                    "LENGTH", "IFCLENGTHMEASURE(3000.)"));

    assertThat(element(model, 1).findProperty("Length").orElseThrow().number()).isEqualTo(2);
    assertThat(codes(model)).contains("DUPLICATE_PROPERTY");
  }

  @Test
  void longTextsOfAPropertyThatStandsTwiceAreToldInOneLineAndCutOff() {
    MepModel model =
        read(
            PIPE
                + properties(
                    "Note",
                    "IFCTEXT('one\\X\\0Atwo')",
                    "Note",
                    "IFCTEXT('%s')".formatted("n".repeat(90))));

    assertThat(message(model, "DUPLICATE_PROPERTY"))
        .contains("with one two and with " + "n".repeat(80) + " ..., in 1 sets");
  }

  @Test
  void portRelatedInBothWaysIsOnePort() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCDISTRIBUTIONPORT('2',$,$,$,$,$,$,.SOURCE.,$,$);
                #3=IFCRELNESTS('3',$,$,$,#1,(#2));
                #4=IFCRELCONNECTSPORTTOELEMENT('4',$,$,$,#2,#1);
                """);

    assertThat(pipe.ports()).hasSize(1);
  }

  @Test
  void portsOfATypeAreNoPortsOfItsOccurrences() {
    MepModel model =
        read(
            PIPE
                + """
                #2=IFCPIPESEGMENTTYPE('2',$,'Pipe',$,$,$,$,$,$,.RIGIDSEGMENT.);
                #3=IFCRELDEFINESBYTYPE('3',$,$,$,(#1),#2);
                #4=IFCDISTRIBUTIONPORT('4',$,$,$,$,$,$,.SOURCE.,$,$);
                #5=IFCRELNESTS('5',$,$,$,#2,(#4));
                """);

    assertThat(element(model, 1).ports()).isEmpty();
    assertThat(codes(model)).doesNotContain("PORT_WITHOUT_OWNER");
  }
}
