package org.lagwright.ifc.extract.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Point;

/** A valve that stands at zero is placed by its body, also by one that is cut with curved ones. */
class CutBodyPlaceTest {

  /** Turned about an axis upwards through zero: cones, a ball, rings around a vertical pipe. */
  private static final String BODIES =
      """
      #20=IFCREVOLVEDAREASOLID(#30,$,#50,6.283185307179586);
      #21=IFCREVOLVEDAREASOLID(#31,$,#50,6.283185307179586);
      #22=IFCREVOLVEDAREASOLID(#32,$,#50,3.141592653589793);
      #23=IFCREVOLVEDAREASOLID(#33,$,#50,6.283185307179586);
      #24=IFCREVOLVEDAREASOLID(#34,$,#50,6.283185307179586);
      #30=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#35);
      #31=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#36);
      #32=IFCCIRCLEPROFILEDEF(.AREA.,$,#40,40.);
      #33=IFCCIRCLEPROFILEDEF(.AREA.,$,#41,20.);
      #34=IFCCIRCLEPROFILEDEF(.AREA.,$,#41,18.);
      #35=IFCPOLYLINE((#42,#43,#44,#42));
      #36=IFCPOLYLINE((#42,#45,#46,#42));
      #40=IFCAXIS2PLACEMENT2D(#44,$);
      #41=IFCAXIS2PLACEMENT2D(#47,$);
      #42=IFCCARTESIANPOINT((0.,0.));
      #43=IFCCARTESIANPOINT((30.,0.));
      #44=IFCCARTESIANPOINT((0.,70.));
      #45=IFCCARTESIANPOINT((27.,0.));
      #46=IFCCARTESIANPOINT((0.,64.));
      #47=IFCCARTESIANPOINT((80.,70.));
      #50=IFCAXIS1PLACEMENT(#51,#52);
      #51=IFCCARTESIANPOINT((0.,0.,0.));
      #52=IFCDIRECTION((0.,1.,0.));
      """;

  /** Without limits the two cones take all memory, and the others minutes. */
  @ParameterizedTest
  @CsvSource({
    "DIFFERENCE,20,21,35",
    "UNION,20,22,55",
    "DIFFERENCE,23,24,70",
    "INTERSECTION,22,23,70"
  })
  void middleIsFoundInTime(String operator, int first, int second, double yMm) {
    String valve =
        """
        #1=IFCVALVE('v',$,'Valve',$,$,#2,#10,$,$);
        #2=IFCLOCALPLACEMENT($,#3);
        #3=IFCAXIS2PLACEMENT3D(#51,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','CSG',(#12));
        #12=IFCBOOLEANRESULT(.%s.,#%d,#%d);
        """
            .formatted(operator, first, second);

    Point middle =
        assertTimeoutPreemptively(
            Duration.ofMinutes(2),
            () -> Objects.requireNonNull(InlineModel.first(valve + BODIES).place().positionM()));

    assertThat(middle.distanceM(new Point(0, yMm / 1000, 0))).isLessThan(0.001);
  }
}
