package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.lagwright.ifc.geometry.BodyFiguresTest.Case;

/** Bodies with closed forms, written with random sizes. */
final class BodyCases {

  private static final int PER_KIND = 4;

  /** Writes one body with the sizes a, b, c and d (metres, descending) into a setting. */
  private interface Kind {
    Body write(RandomSetting s, double a, double b, double c);
  }

  private record Body(String records, double volumeM3, double lateralM2) {}

  private BodyCases() {}

  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    add(cases, "extruded circle", BodyCases::circle);
    add(cases, "extruded tube", BodyCases::tube);
    add(cases, "extruded rectangle", BodyCases::rectangle);
    add(cases, "extruded hollow rectangle", BodyCases::hollowRectangle);
    add(cases, "extruded rounded rectangle", BodyCases::rounded);
    add(cases, "extruded flat oval with void", BodyCases::flatOval);
    add(cases, "extruded mirrored profile", BodyCases::mirrored);
    add(cases, "frustum", BodyCases::tapered);
    add(cases, "revolved bend", BodyCases::bend);
    add(cases, "revolved rectangular bend", BodyCases::rectangularBend);
    add(cases, "swept disk with mitre", BodyCases::mitred);
    add(cases, "swept disk with arc and bore", BodyCases::sweptBend);
    add(cases, "block", BodyCases::block);
    add(cases, "cylinder", BodyCases::cylinder);
    add(cases, "cone", BodyCases::cone);
    add(cases, "sphere", BodyCases::sphere);
    add(cases, "pyramid", BodyCases::pyramid);
    add(cases, "pipe cut by a half space", BodyCases::cut);
    add(cases, "pipe cut by a polygon", BodyCases::cutByPolygon);
    add(cases, "cylinder without its bore", BodyCases::drilled);
    add(cases, "two cylinders as one", BodyCases::joined);
    add(cases, "what two blocks share", BodyCases::shared);
    return cases;
  }

  private static void add(List<Case> into, String name, Kind kind) {
    for (int i = 0; i < PER_KIND; i++) {
      long seed = 31L * name.hashCode() + i;
      RandomSetting setting = new RandomSetting(seed);
      Random random = new Random(seed);
      double a = 0.5 + random.nextDouble();
      double b = 0.1 + 0.2 * random.nextDouble();
      double c = 0.02 + 0.05 * random.nextDouble();
      Body body = kind.write(setting, a, b, c);
      into.add(new Case(name, seed, setting, body.records, body.volumeM3, body.lateralM2));
    }
  }

  private static String extruded(RandomSetting s, double length) {
    return "#100=IFCEXTRUDEDAREASOLID(#101,#14,#13," + s.n(length) + ");\n";
  }

  private static Body circle(RandomSetting s, double a, double b, double c) {
    String profile = "#101=IFCCIRCLEPROFILEDEF(.AREA.,$,$," + s.n(b) + ");\n";
    return new Body(extruded(s, a) + profile, Math.PI * b * b * a, 2 * Math.PI * b * a);
  }

  private static Body tube(RandomSetting s, double a, double b, double c) {
    String profile =
        "#101=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#16," + s.n(b) + "," + s.n(c) + ");\n";
    double area = Math.PI * (b * b - (b - c) * (b - c));
    return new Body(extruded(s, a) + profile, area * a, 2 * Math.PI * b * a);
  }

  private static Body rectangle(RandomSetting s, double a, double b, double c) {
    String profile = "#101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$," + s.n(b) + "," + s.n(c) + ");\n";
    return new Body(extruded(s, a) + profile, a * b * c, 2 * (b + c) * a);
  }

  private static Body hollowRectangle(RandomSetting s, double a, double b, double c) {
    double wall = c / 10;
    String profile =
        "#101=IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s,%s,$,$);\n"
            .formatted(s.n(b), s.n(c), s.n(wall));
    double area = b * c - (b - 2 * wall) * (c - 2 * wall);
    return new Body(extruded(s, a) + profile, area * a, 2 * (b + c) * a);
  }

  private static Body rounded(RandomSetting s, double a, double b, double c) {
    double r = c / 4;
    String profile =
        "#101=IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s,%s);\n"
            .formatted(s.n(b), s.n(c), s.n(r));
    double area = b * c - (4 - Math.PI) * r * r;
    double perimeter = 2 * (b + c) - (8 - 2 * Math.PI) * r;
    return new Body(extruded(s, a) + profile, area * a, perimeter * a);
  }

  /** Two half circles of radius c with straight sides of length b, and a round void. */
  private static Body flatOval(RandomSetting s, double a, double b, double c) {
    double hole = c / 2;
    String profile =
        """
        #101=IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#102,(#110));
        #102=IFCINDEXEDPOLYCURVE(#103,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5)),IFCARCINDEX((5,6,1))),.F.);
        #103=IFCCARTESIANPOINTLIST2D((%s,%s,%s,%s,%s,%s),$);
        #110=IFCCIRCLE(#16,%s);
        """
            .formatted(
                s.at(-b / 2, -c),
                s.at(b / 2, -c),
                s.at(b / 2 + c, 0),
                s.at(b / 2, c),
                s.at(-b / 2, c),
                s.at(-b / 2 - c, 0),
                s.n(hole));
    double area = 2 * b * c + Math.PI * c * c - Math.PI * hole * hole;
    return new Body(extruded(s, a) + profile, area * a, (2 * b + 2 * Math.PI * c) * a);
  }

  private static Body mirrored(RandomSetting s, double a, double b, double c) {
    String profile =
        """
        #101=IFCMIRROREDPROFILEDEF(.AREA.,$,#102,*,$);
        #102=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#103);
        #103=IFCPOLYLINE((#104,#105,#106,#104));
        #104=IFCCARTESIANPOINT(%s);
        #105=IFCCARTESIANPOINT(%s);
        #106=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.at(0, 0), s.at(b, 0), s.at(0, c));
    double perimeter = b + c + Math.hypot(b, c);
    // a triangle is no section, so its ends are not known and count as outside
    return new Body(extruded(s, a) + profile, a * b * c / 2, perimeter * a + b * c);
  }

  private static Body tapered(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCEXTRUDEDAREASOLIDTAPERED(#101,#14,#13,%s,#102);
        #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        #102=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        """
            .formatted(s.n(a), s.n(b), s.n(c));
    double volume = Math.PI * a / 3 * (b * b + b * c + c * c);
    return new Body(records, volume, Math.PI * (b + c) * Math.hypot(a, b - c));
  }

  private static String revolved(RandomSetting s, double radius, double turn) {
    return """
        #100=IFCREVOLVEDAREASOLID(#101,#14,#103,%s);
        #103=IFCAXIS1PLACEMENT(#104,#12);
        #104=IFCCARTESIANPOINT(%s);
        """
        .formatted(s.angle(turn), s.at(radius, 0, 0));
  }

  private static Body bend(RandomSetting s, double a, double b, double c) {
    double turn = 2 * a;
    String profile =
        "#101=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$," + s.n(c) + "," + s.n(c / 8) + ");\n";
    double area = Math.PI * c * c * (1 - 49.0 / 64);
    return new Body(revolved(s, b, turn) + profile, area * b * turn, 2 * Math.PI * c * b * turn);
  }

  private static Body rectangularBend(RandomSetting s, double a, double b, double c) {
    double turn = Math.PI / 2;
    String profile = "#101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$," + s.n(c) + "," + s.n(b) + ");\n";
    return new Body(revolved(s, a, turn) + profile, c * b * a * turn, 2 * (b + c) * a * turn);
  }

  private static Body mitred(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCSWEPTDISKSOLID(#101,%s,$,$,$);
        #101=IFCPOLYLINE((#10,#102,#103));
        #102=IFCCARTESIANPOINT(%s);
        #103=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.n(c), s.at(a, 0, 0), s.at(a, b, a));
    double length = a + Math.hypot(a, b);
    return new Body(records, Math.PI * c * c * length, 2 * Math.PI * c * length);
  }

  /** Straight a, quarter turn of radius b, straight a. */
  private static Body sweptBend(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCSWEPTDISKSOLID(#101,%s,%s,$,$);
        #101=IFCINDEXEDPOLYCURVE(#102,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5))),.F.);
        #102=IFCCARTESIANPOINTLIST3D((%s,%s,%s,%s,%s),$);
        """
            .formatted(
                s.n(c),
                s.n(c / 2),
                s.at(0, 0, 0),
                s.at(a, 0, 0),
                s.at(a + b * Math.sqrt(0.5), b * (1 - Math.sqrt(0.5)), 0),
                s.at(a + b, b, 0),
                s.at(a + b, b + a, 0));
    double length = 2 * a + b * Math.PI / 2;
    return new Body(records, Math.PI * c * c * 0.75 * length, 2 * Math.PI * c * length);
  }

  private static Body block(RandomSetting s, double a, double b, double c) {
    String records = "#100=IFCBLOCK(#14,%s,%s,%s);\n".formatted(s.n(b), s.n(c), s.n(a));
    return new Body(records, a * b * c, 2 * (b + c) * a);
  }

  private static Body cylinder(RandomSetting s, double a, double b, double c) {
    String records = "#100=IFCRIGHTCIRCULARCYLINDER(#14,%s,%s);\n".formatted(s.n(a), s.n(b));
    return new Body(records, Math.PI * b * b * a, 2 * Math.PI * b * a);
  }

  private static Body cone(RandomSetting s, double a, double b, double c) {
    String records = "#100=IFCRIGHTCIRCULARCONE(#14,%s,%s);\n".formatted(s.n(a), s.n(b));
    return new Body(records, Math.PI * b * b * a / 3, Math.PI * b * (Math.hypot(a, b) + b));
  }

  private static Body sphere(RandomSetting s, double a, double b, double c) {
    String records = "#100=IFCSPHERE(#14," + s.n(b) + ");\n";
    return new Body(records, 4.0 / 3 * Math.PI * b * b * b, 4 * Math.PI * b * b);
  }

  private static Body pyramid(RandomSetting s, double a, double b, double c) {
    String records =
        "#100=IFCRECTANGULARPYRAMID(#14,%s,%s,%s);\n".formatted(s.n(b), s.n(c), s.n(a));
    double slopes = b * Math.hypot(a, c / 2) + c * Math.hypot(a, b / 2);
    return new Body(records, a * b * c / 3, slopes + b * c);
  }

  /** A plane at 45 degrees through the axis at half the length takes half the pipe away. */
  private static Body cut(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#110,#120);
        #110=IFCEXTRUDEDAREASOLID(#101,#14,#13,%s);
        #101=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        #120=IFCHALFSPACESOLID(#121,.F.);
        #121=IFCPLANE(#122);
        #122=IFCAXIS2PLACEMENT3D(#123,#124,$);
        #123=IFCCARTESIANPOINT(%s);
        #124=IFCDIRECTION((1.,0.,-1.));
        """
            .formatted(s.n(a), s.n(c), s.at(0, 0, a / 2));
    double volume = Math.PI * c * c * a / 2;
    return new Body(records, volume, Math.PI * c * a);
  }

  /** Half of a rectangular bar goes above a quarter of its length. */
  private static Body cutByPolygon(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#110,#120);
        #110=IFCEXTRUDEDAREASOLID(#101,#14,#13,%s);
        #101=IFCRECTANGLEPROFILEDEF(.AREA.,$,$,%s,%s);
        #120=IFCPOLYGONALBOUNDEDHALFSPACE(#121,.F.,#14,#130);
        #121=IFCPLANE(#122);
        #122=IFCAXIS2PLACEMENT3D(#123,$,$);
        #123=IFCCARTESIANPOINT(%s);
        #130=IFCPOLYLINE((#131,#132,#133,#134,#131));
        #131=IFCCARTESIANPOINT(%s);
        #132=IFCCARTESIANPOINT(%s);
        #133=IFCCARTESIANPOINT(%s);
        #134=IFCCARTESIANPOINT(%s);
        """
            .formatted(
                s.n(a),
                s.n(b),
                s.n(c),
                s.at(0, 0, a / 4),
                s.at(0, -1),
                s.at(1, -1),
                s.at(1, 1),
                s.at(0, 1));
    double left = a * b * c - b / 2 * c * a * 3 / 4;
    return new Body(records, left, Double.NaN);
  }

  private static Body drilled(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCCSGSOLID(#101);
        #101=IFCBOOLEANRESULT(.DIFFERENCE.,#102,#103);
        #102=IFCRIGHTCIRCULARCYLINDER(#14,%s,%s);
        #103=IFCRIGHTCIRCULARCYLINDER(#104,%s,%s);
        #104=IFCAXIS2PLACEMENT3D(#105,$,$);
        #105=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.n(a), s.n(b), s.n(a + 0.2), s.n(c), s.at(0, 0, -0.1));
    return new Body(records, Math.PI * (b * b - c * c) * a, 2 * Math.PI * b * a);
  }

  /** Two cylinders on one axis that overlap by c. */
  private static Body joined(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCBOOLEANRESULT(.UNION.,#102,#103);
        #102=IFCRIGHTCIRCULARCYLINDER(#14,%s,%s);
        #103=IFCRIGHTCIRCULARCYLINDER(#104,%s,%s);
        #104=IFCAXIS2PLACEMENT3D(#105,$,$);
        #105=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.n(a), s.n(b), s.n(a), s.n(c), s.at(0, 0, a - c));
    double volume = Math.PI * b * b * a + Math.PI * c * c * (a - c);
    return new Body(records, volume, Double.NaN);
  }

  private static Body shared(RandomSetting s, double a, double b, double c) {
    String records =
        """
        #100=IFCBOOLEANRESULT(.INTERSECTION.,#102,#103);
        #102=IFCBLOCK(#14,%s,%s,%s);
        #103=IFCBLOCK(#104,%s,%s,%s);
        #104=IFCAXIS2PLACEMENT3D(#105,$,$);
        #105=IFCCARTESIANPOINT(%s);
        """
            .formatted(s.n(b), s.n(c), s.n(a), s.n(b), s.n(c), s.n(a), s.at(-b / 2, -c / 2, a / 4));
    double length = a * 3 / 4;
    return new Body(records, b / 2 * c / 2 * length, Double.NaN);
  }
}
