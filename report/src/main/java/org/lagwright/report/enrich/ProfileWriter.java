package org.lagwright.report.enrich;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.IfcAppender.NewRecord;
import org.lagwright.ifc.append.StepValue;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.body.Outline;
import org.lagwright.takeoff.body.Ring;

/** Writes cross-sections of insulation, equal ones once. */
final class ProfileWriter {

  /** Walls that differ by less are one: rounding. */
  private static final double SAME_M = 1e-7;

  private final IfcAppender to;
  private final SharedRecords shared;
  private final double unitM;
  private final Map<Ring, Long> written = new HashMap<>();

  ProfileWriter(IfcAppender to, SharedRecords shared, double unitM) {
    this.to = to;
    this.shared = shared;
    this.unitM = unitM;
  }

  /** Instance number of a profile with its width along x. */
  long profile(Ring ring) {
    Long known = written.get(ring);
    if (known == null) {
      known = write(ring);
      written.put(ring, known);
    }
    return known;
  }

  private long write(Ring ring) {
    Section inner = ring.inner();
    if (ring.outer() instanceof Section.Round outer) {
      if (inner == null) {
        return parameterized("IfcCircleProfileDef", outer).add();
      }
      if (inner instanceof Section.Round) {
        double wallM = (outer.outsideDiameterM() - inner.largestSideM()) / 2;
        return parameterized("IfcCircleHollowProfileDef", outer)
            .real("WallThickness", length(wallM))
            .add();
      }
    }
    if (ring.outer() instanceof Section.Rectangular outer) {
      if (inner == null) {
        return parameterized("IfcRectangleProfileDef", outer).add();
      }
      if (inner instanceof Section.Rectangular r
          && Math.abs(outer.widthM() - r.widthM() - outer.heightM() + r.heightM()) < SAME_M) {
        return parameterized("IfcRectangleHollowProfileDef", outer)
            .real("WallThickness", length((outer.widthM() - r.widthM()) / 2))
            .add();
      }
    }
    return arbitrary(ring);
  }

  private NewRecord parameterized(String entity, Section outer) {
    NewRecord profile = area(entity).ref("Position", shared.planeOrigin());
    return outer instanceof Section.Rectangular r
        ? profile.real("XDim", length(r.widthM())).real("YDim", length(r.heightM()))
        : profile.real("Radius", length(outer.largestSideM() / 2));
  }

  private NewRecord area(String entity) {
    return to.record(entity).set("ProfileType", StepValue.enumeration("AREA"));
  }

  private long arbitrary(Ring ring) {
    Section inner = ring.inner();
    long outer = curve(ring.outer());
    return inner == null
        ? area("IfcArbitraryClosedProfileDef").ref("OuterCurve", outer).add()
        : area("IfcArbitraryProfileDefWithVoids")
            .ref("OuterCurve", outer)
            .refs("InnerCurves", List.of(curve(inner)))
            .add();
  }

  private long curve(Section section) {
    if (section instanceof Section.Round round) {
      return to.record("IfcCircle")
          .ref("Position", shared.planeOrigin())
          .real("Radius", length(round.outsideDiameterM() / 2))
          .add();
    }
    List<Long> points = new ArrayList<>();
    for (Outline.Corner corner : Outline.of(section).corners()) {
      points.add(shared.point(unitM, corner.uM(), corner.vM()));
    }
    points.add(points.get(0));
    return to.record("IfcPolyline").refs("Points", points).add();
  }

  private double length(double lengthM) {
    return SharedRecords.length(lengthM, unitM);
  }
}
