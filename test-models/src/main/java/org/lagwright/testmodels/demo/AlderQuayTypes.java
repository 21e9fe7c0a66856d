package org.lagwright.testmodels.demo;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/** Type objects with the standard property sets of their class. */
final class AlderQuayTypes {

  private final IfcWriter ifc;
  private final PropertyWriter properties;
  private final MepWriter mep;

  AlderQuayTypes(IfcWriter ifc, PropertyWriter properties, MepWriter mep) {
    this.ifc = ifc;
    this.properties = properties;
    this.mep = mep;
  }

  /** The type of a piece, with its representation maps. */
  Ref write(String key, Piece piece, List<Ref> maps) {
    Piece.What what = piece.what();
    String elementType = what.predefined().equals("USERDEFINED") ? "CAP" : null;
    return mep.type(
        what.ifcClass(),
        new MepWriter.Label("type " + key, what.name(), elementType, null),
        what.predefined(),
        sets(key, piece),
        maps);
  }

  private List<Ref> sets(String key, Piece piece) {
    List<Ref> sets = new ArrayList<>();
    Size section = piece.section();
    if (section instanceof Size.Pipe pipe && piece.kind().equals("pipe-segment")) {
      sets.add(pipeSet(key, pipe));
    } else if (section != null && piece.kind().equals("duct-segment")) {
      sets.add(ductSet(key, section));
    } else if (section instanceof Size.Pipe pipe && piece.kind().equals("valve")) {
      Ref size = properties.length("Size", pipe.nominal());
      sets.add(properties.set(key, "Pset_ValveTypeCommon", List.of(size)));
    } else if (piece.what().form().equals("bend") && !ifc.schema().isOld() && !isDuct(piece)) {
      sets.add(bendSet(key, piece.measure()));
    }
    return sets;
  }

  private Ref pipeSet(String key, Size.Pipe pipe) {
    return properties.set(
        key,
        "Pset_PipeSegmentTypeCommon",
        List.of(
            properties.typeSize("NominalDiameter", pipe.nominal()),
            properties.typeSize("OuterDiameter", pipe.diameter())));
  }

  private Ref ductSet(String key, Size section) {
    String shape = ifc.schema() == Schema.IFC4X3 ? "CrossSectionShape" : "Shape";
    List<Ref> values = new ArrayList<>();
    if (section instanceof Size.Rectangular duct) {
      values.add(properties.choice(shape, "RECTANGULAR"));
      values.add(properties.typeSize("NominalDiameterOrWidth", duct.width()));
      values.add(properties.typeSize("NominalHeight", duct.height()));
    } else {
      values.add(properties.choice(shape, "ROUND"));
      values.add(properties.typeSize("NominalDiameterOrWidth", section.largest()));
    }
    return properties.set(key, "Pset_DuctSegmentTypeCommon", values);
  }

  private Ref bendSet(String key, Piece.Measure measure) {
    double angle = ifc.units().angle(measure.degrees());
    String name = ifc.schema() == Schema.IFC4X3 ? "Pset_FittingBend" : "Pset_PipeFittingTypeBend";
    return properties.set(
        key,
        name,
        List.of(
            properties.single("BendAngle", Value.typed("IfcPositivePlaneAngleMeasure", angle)),
            properties.length("BendRadius", measure.bendRadiusMm())));
  }

  private static boolean isDuct(Piece piece) {
    return piece.kind().startsWith("duct");
  }
}
