package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepModel;

/**
 * Records that refer a hundred times to the next, which refers a hundred times to the one after it:
 * followed blindly, a file of a few lines would take longer than anyone waits.
 */
class FanOutTest {

  private static final int LEVELS = 15;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mapped items|IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(@))|IFCEXTRUDEDAREASOLID($,$,$,1.)",
        "profiles|IFCCOMPOSITEPROFILEDEF(.AREA.,$,(@),$)|IFCCIRCLEPROFILEDEF(.AREA.,$,$,10.)",
        "curves|IFCCOMPOSITECURVE((@),.F.)|IFCPOLYLINE((#91,#92))",
        "properties|IFCCOMPLEXPROPERTY('p',$,'u',(@))|IFCPROPERTYSINGLEVALUE('Length',$,IFCREAL(5.),$)",
        "materials|IFCMATERIALLIST((@))|IFCMATERIAL('Steel',$,$)"
      })
  void recordsThatRepeatEachOtherEndInAModel(String what, String inner, String leaf) {
    StringBuilder records = new StringBuilder(START);
    for (int level = 0; level < LEVELS; level++) {
      int id = 1000 + 10 * level;
      String next = "#" + (level + 1 < LEVELS ? id + 10 : 2000);
      String mapped = link(records, what, id, next);
      records.append(
          "#%d=%s;\n"
              .formatted(
                  id, inner.replace("@", String.join(",", Collections.nCopies(100, mapped)))));
    }
    records.append("#2000=").append(leaf).append(";\n");
    MepModel model = InlineModel.read(records + end(what));

    assertThat(model.elements()).as(what).hasSize(1);
  }

  /** What stands between a record and the next, if it may not refer to it directly. */
  private static String link(StringBuilder records, String what, int id, String next) {
    if (what.equals("mapped items")) {
      records.append(
          "#%d=IFCMAPPEDITEM(#%d,#94);\n#%d=IFCREPRESENTATIONMAP(#95,%s);\n"
              .formatted(id + 1, id + 2, id + 2, next));
      return "#" + (id + 1);
    }
    if (what.equals("curves")) {
      records.append(
          "#%d=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,%s);\n".formatted(id + 1, next));
      return "#" + (id + 1);
    }
    return next;
  }

  private static final String START =
      """
      #1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,#2,$,$);
      #91=IFCCARTESIANPOINT((0.,0.,0.));
      #92=IFCCARTESIANPOINT((0.,0.,9.));
      #94=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#91,$,$);
      #95=IFCAXIS2PLACEMENT3D(#91,$,$);
      #96=IFCDIRECTION((0.,0.,1.));
      """;

  /** Leads from the element to the first of the records. */
  private static String end(String what) {
    String body = "#2=IFCPRODUCTDEFINITIONSHAPE($,$,(#3));\n";
    String solid = body + "#3=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#4));\n";
    return switch (what) {
      case "mapped items" -> body.replace("#3", "#1000");
      case "profiles" -> solid + "#4=IFCEXTRUDEDAREASOLID(#1000,$,#96,9.);\n";
      case "curves" -> solid + "#4=IFCSWEPTDISKSOLID(#1000,5.,$,$,$);\n";
      case "properties" ->
          "#3=IFCPROPERTYSET('3',$,'S',$,(#1000));\n#4=IFCRELDEFINESBYPROPERTIES('4',$,$,$,(#1),#3);\n";
      default -> "#3=IFCRELASSOCIATESMATERIAL('3',$,$,$,(#1),#1000);\n";
    };
  }
}
