package org.lagwright.ifc.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepException;
import org.lagwright.ifc.step.StepLimits;

/** Facts from the EXPRESS schemas IFC2X3 TC1, IFC4 ADD2 TC1 and IFC4X3 ADD2 by buildingSMART. */
class IfcSchemaTest {

  @ParameterizedTest
  @CsvSource({
    "IFC2X3,IFCFLOWSEGMENT,8",
    "IFC4,IFCPIPESEGMENT,9",
    "IFC4X3,IFCPIPESEGMENT,9",
    "IFC2X3,IFCDISTRIBUTIONPORT,8",
    "IFC4,IFCDISTRIBUTIONPORT,10",
    "IFC2X3,IFCSYSTEM,5",
    "IFC4,IFCDISTRIBUTIONSYSTEM,7",
    "IFC4X3,IFCEXTRUDEDAREASOLID,4",
    "IFC4,IFCRELDEFINESBYPROPERTIES,6"
  })
  void entitiesHaveThePublishedNumberOfAttributes(IfcSchema schema, String keyword, int count) {
    assertThat(schema.entity(keyword).attributes()).hasSize(count);
  }

  @ParameterizedTest
  @CsvSource({
    "IFC2X3,IFCFLOWSEGMENT,ObjectPlacement,5",
    "IFC4,IFCPIPEFITTING,PredefinedType,8",
    "IFC4,IFCDISTRIBUTIONPORT,SystemType,9",
    "IFC4,IFCDISTRIBUTIONSYSTEM,PredefinedType,6",
    "IFC4,IFCBUILDINGSYSTEM,PredefinedType,5",
    "IFC4,IFCPROPERTYBOUNDEDVALUE,UpperBoundValue,2",
    "IFC2X3,IFCPIPESEGMENTTYPE,PredefinedType,9"
  })
  void attributesStandWhereTheSchemaPutsThem(
      IfcSchema schema, String keyword, String attribute, int position) {
    assertThat(schema.entity(keyword).position(attribute)).isEqualTo(position);
  }

  @Test
  void kindsFollowTheTreeOfTheSchema() {
    assertThat(IfcSchema.IFC4.isA("IFCPIPESEGMENT", "IfcDistributionElement")).isTrue();
    assertThat(IfcSchema.IFC4.isA("IFCWALL", "IfcDistributionElement")).isFalse();
    assertThat(IfcSchema.IFC2X3.isA("IFCFOO", "IfcProduct")).isFalse();
    assertThat(IfcSchema.IFC2X3.knows("IFCFOO")).isFalse();
  }

  @Test
  void anEntityOfAnotherSchemaIsReadTheWayThatOneWritesIt() {
    assertThat(IfcSchema.IFC2X3.isA("IFCPIPESEGMENT", "IfcFlowSegment")).isTrue();
    assertThat(IfcSchema.IFC2X3.entity("IFCPIPESEGMENT").position("PredefinedType")).isEqualTo(8);
  }

  @ParameterizedTest
  @CsvSource({
    "IFC2X3,IFC2X3",
    "IFC2X3_TC1,IFC2X3",
    "IFC4,IFC4",
    "IFC4X3_ADD2,IFC4X3",
    "IFC4X3_RC3,IFC4X3"
  })
  void schemaIdentifiersAreUnderstood(String identifier, IfcSchema expected) {
    assertThat(IfcSchema.forIdentifier(identifier)).contains(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "IFC2X3,true",
    "IFC2X3_TC1,true",
    "IFC4,true",
    "IFC4_ADD1,true",
    "IFC4_ADD2,true",
    "IFC4_ADD2_TC1,true",
    "ifc4x3_add2,true",
    "IFC4X3_TC1,true",
    "IFC4X3_ADD1,true",
    "IFC4X1,false",
    "IFC4X2,false",
    "IFC4X3_RC4,false",
    "IFC4X4,false"
  })
  void addendaAndCorrigendaAreReleasedAndDraftsAreNot(String identifier, boolean released) {
    assertThat(IfcSchema.isReleased(identifier)).isEqualTo(released);
  }

  @Test
  void anUnsupportedSchemaIsRefusedWithAdvice() {
    String text =
        "ISO-10303-21;HEADER;FILE_SCHEMA(('IFC2X2_FINAL'));ENDSEC;DATA;ENDSEC;END-ISO-10303-21;";
    StepBytes bytes = StepBytes.of(text.getBytes(StandardCharsets.US_ASCII));

    assertThatThrownBy(() -> IfcFile.open(bytes, StepLimits.DEFAULT, read -> {}))
        .isInstanceOf(StepException.class)
        .hasMessageContaining("IFC2X2_FINAL")
        .hasMessageContaining("Export as IFC2X3, IFC4 or IFC4X3");
  }
}
