package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/** Site, building and storeys. */
final class LargeStoreys {

  private final List<Ref> placements = new ArrayList<>();
  private final List<Ref> storeys = new ArrayList<>();

  LargeStoreys(IfcWriter ifc) {
    ShapeWriter shapes = new ShapeWriter(ifc);
    BuildingWriter building = new BuildingWriter(ifc);
    Ref ground = shapes.placement(null, Frame.WORLD);
    Ref site = building.site("Site", ground);
    Ref house = building.building("Building", ground);
    for (int i = 0; i < Run.STOREYS; i++) {
      double elevationMm = Run.elevationMm(i);
      placements.add(shapes.placement(ground, Frame.at(new Vec(0, 0, elevationMm))));
      storeys.add(building.storey("Level " + i, placements.get(i), elevationMm));
    }
    building.aggregate("project", ifc.project(), List.of(site));
    building.aggregate("site", site, List.of(house));
    building.aggregate("building", house, storeys);
  }

  Ref placement(int storey) {
    return placements.get(storey);
  }

  Ref storey(int storey) {
    return storeys.get(storey);
  }
}
