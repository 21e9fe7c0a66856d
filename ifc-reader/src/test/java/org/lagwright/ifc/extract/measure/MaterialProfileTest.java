package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.first;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;

/** Sizes of what is not drawn, by the profiles of its material. */
class MaterialProfileTest {

  private static final String PIPE = "#1=IFCPIPESEGMENT('1',$,'Rohr',$,$,$,$,$,$);\n";

  /** A pipe of 60.3 mm and what lies around it, 120.3 mm wide, whose name nothing says. */
  private static String around(String material) {
    return """
        #60=IFCRELASSOCIATESMATERIAL('60',$,$,$,(#1),#61);
        #61=IFCMATERIALPROFILESETUSAGE(#62,5,$);
        #62=IFCMATERIALPROFILESET('Set',$,(#63,#64),$);
        #63=IFCMATERIALPROFILE($,$,#65,#67,$,$);
        #64=IFCMATERIALPROFILE($,$,#66,#68,$,$);
        #65=IFCMATERIAL('Steel',$,$);
        #66=IFCMATERIAL(%s);
        #67=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,30.15,2.9);
        #68=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,60.15,30.);
        """
        .formatted(material);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'Mineralwolle',$,$|60.3",
        "'MW 035',$,'Insulation'|60.3",
        "'Concrete',$,$|120.3",
      })
  void profileOfAMaterialThatInsulatesIsNotThePipe(String material, double outsideMm) {
    assertThat(diameterMm(first(PIPE + around(material)))).isEqualTo(outsideMm);
  }

  /** From 88.9 mm to 60.3 mm, and from 500 x 300 mm to a diameter of 250 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PIPE|CIRCLEPROFILEDEF(.AREA.,$,$,44.45)|CIRCLEPROFILEDEF(.AREA.,$,$,30.15)|88.9 mm, 60.3 mm",
        "PIPE|CIRCLEPROFILEDEF(.AREA.,$,$,30.15)|CIRCLEPROFILEDEF(.AREA.,$,$,44.45)|60.3 mm, 88.9 mm",
        "DUCT|RECTANGLEPROFILEDEF(.AREA.,$,$,500.,300.)|CIRCLEPROFILEDEF(.AREA.,$,$,125.)"
            + "|500.0 x 300.0 mm, 250.0 mm",
      })
  void materialThatTapersTellsBothEnds(String line, String start, String end, String ends) {
    MepElement reducer = first(tapering(line, start, end));

    assertThat(reducer.ends().stream().map(InWords::section).collect(Collectors.joining(", ")))
        .isEqualTo(ends);
  }

  @Test
  void sizeOfWhatTapersIsThatOfItsLargerEnd() {
    String small = "CIRCLEPROFILEDEF(.AREA.,$,$,30.15)";
    String large = "CIRCLEPROFILEDEF(.AREA.,$,$,44.45)";

    assertThat(diameterMm(first(tapering("PIPE", small, large)))).isEqualTo(88.9);
  }

  private static String tapering(String line, String start, String end) {
    return """
        #1=IFC%sFITTING('1',$,'Reducer',$,$,$,$,$,.TRANSITION.);
        #60=IFCRELASSOCIATESMATERIAL('60',$,$,$,(#1),#61);
        #61=IFCMATERIALPROFILESETUSAGETAPERING(#62,5,$,#63,5);
        #62=IFCMATERIALPROFILESET('Start',$,(#64),$);
        #63=IFCMATERIALPROFILESET('End',$,(#65),$);
        #64=IFCMATERIALPROFILE($,$,#66,#67,$,$);
        #65=IFCMATERIALPROFILE($,$,#66,#68,$,$);
        #66=IFCMATERIAL('Steel',$,$);
        #67=IFC%s;
        #68=IFC%s;
        """
        .formatted(line, start, end);
  }
}
