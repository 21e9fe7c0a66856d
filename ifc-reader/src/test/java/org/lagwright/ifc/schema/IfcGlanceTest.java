package org.lagwright.ifc.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/** A glance tells of a record what decoding it tells. */
class IfcGlanceTest {

  private static IfcFile file(String records) {
    String text =
        "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n"
            + records
            + "\nENDSEC;\nEND-ISO-10303-21;\n";
    return IfcFile.open(
        StepBytes.of(text.getBytes(StandardCharsets.UTF_8)), StepLimits.DEFAULT, bytes -> {});
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "IFCPROPERTYSINGLEVALUE('Length',$,IFCREAL(5.),$)",
        "IFCPROPERTYSINGLEVALUE('it''s (a, b); \\X\\E4',$,IFCREAL(5.),$)",
        "IFCPROPERTYSINGLEVALUE('',$,$,$)",
        "IFCPROPERTYSINGLEVALUE('only')",
        "IFCPROPERTYSINGLEVALUE($,$,$,$)",
        "IFCPROPERTYSINGLEVALUE(IFCIDENTIFIER('Typed'),$,$,$)",
        "IFCPROPERTYSINGLEVALUE( 'Spaced' , $,$,$)",
        "IFCPROPERTYSINGLEVALUE(/* remark */'Behind a remark',$,$,$)",
        "IFCPROPERTYSINGLEVALUE('Junk' behind,$,$,$)",
        "IFCPROPERTYSINGLEVALUE(42,$,$,$)",
        "IFCPROPERTYSINGLEVALUE()",
        "ifcpropertysinglevalue ('Small letters',$,$,$)",
        "IFCCOMPLEXPROPERTY('Whole',$,'u',())",
        "IFCPIPESEGMENT('guid',$,'Name stands third',$,$,$,$,$,$)",
        "IFCNOSUCHENTITY('of no schema')"
      })
  void nameAndKindAreThoseOfTheDecodedRecord(String record) {
    IfcFile file = file("#7 = " + record + ";");
    IfcRecord decoded = Objects.requireNonNull(file.find(7));
    IfcGlance glance = file.glance();

    assertThat(glance.at(7)).isTrue();
    assertThat(glance.name()).isEqualTo(decoded.label("Name"));
    for (String entity : new String[] {"IfcProperty", "IfcComplexProperty", "IfcProduct"}) {
      assertThat(glance.is(entity)).as(entity).isEqualTo(decoded.is(entity));
    }
  }

  @Test
  void recordThatIsMissingHasNoName() {
    IfcGlance glance = file("#7=IFCPROPERTYSINGLEVALUE('Length',$,$,$);").glance();

    assertThat(glance.at(7)).isTrue();
    assertThat(glance.at(8)).isFalse();
    assertThat(glance.name()).isNull();
    assertThat(glance.is("IfcProperty")).isFalse();
  }
}
