package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/** Bends of rectangular ducts that turn a riser. */
class BendSidesTest {

  /**
   * A bend that leaves the direction of its first end towards an axis at right angles to that.
   *
   * @param alongFirst direction of the first end
   * @param towards where the bend turns to
   * @param inPlaneMm side of the duct in the plane of the bend
   */
  private static MepElement bend(
      String alongFirst, String towards, double inPlaneMm, double acrossMm, double turnDeg) {
    return new Network()
        .record(
            """
            #2000=IFCDUCTFITTING('2',$,'Part',$,$,#2004,#2001,$,.BEND.);
            #2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));
            #2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#2003));
            #2003=IFCREVOLVEDAREASOLID(#2008,$,#2009,%s);
            #2004=IFCLOCALPLACEMENT($,#2005);
            #2005=IFCAXIS2PLACEMENT3D(#2006,#2007,#2012);
            #2006=IFCCARTESIANPOINT((0.,0.,0.));
            #2007=IFCDIRECTION((%s));
            #2008=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s);
            #2009=IFCAXIS1PLACEMENT(#2010,#2011);
            #2010=IFCCARTESIANPOINT((600.,0.,0.));
            #2011=IFCDIRECTION((0.,-1.,0.));
            #2012=IFCDIRECTION((%s));"""
                .formatted(Math.toRadians(turnDeg), alongFirst, inPlaneMm, acrossMm, towards))
        .element(2);
  }

  @ParameterizedTest
  @CsvSource({
    "'1.,0.,0.', '0.,0.,1.', 450, 300, 90, 300, 450",
    "'0.,0.,1.', '1.,0.,0.', 450, 300, 90, 300, 450",
    "'0.,0.,1.', '1.,0.,0.', 450, 300, 30, 300, 450",
    "'0.,0.,1.', '1.,0.,0.', 300, 450, 30, 450, 300",
    "'1.,0.,0.', '0.,0.,1.', 300, 450, 90, 450, 300",
    "'1.,0.,0.', '0.,1.,0.', 450, 300, 90, 450, 300"
  })
  void bendHasOneSizeWhicheverSideOfARiserItTurns(
      String alongFirst,
      String towards,
      double inPlaneMm,
      double acrossMm,
      double turnDeg,
      double widthMm,
      double heightMm) {
    MepElement bend = bend(alongFirst, towards, inPlaneMm, acrossMm, turnDeg);
    Section size = new Section.Rectangular(widthMm / 1000, heightMm / 1000);

    assertThat(value(bend.section())).isEqualTo(size);
    assertThat(bend.ends()).isEqualTo(List.of(size, size));
  }
}
