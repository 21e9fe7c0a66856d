package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/**
 * Writes lines. Elements have lower numbers than their shapes and stand after them in the file;
 * relations follow for many lines together, as in files of authoring programs.
 */
final class RunWriter {

  private final IfcWriter ifc;
  private final ShapeWriter shapes;
  private final MepWriter mep;
  private final BuildingWriter building;
  private final PropertyWriter properties;
  private final PartProperties sets;
  private final LargeTypes types;
  private final LargeStoreys storeys;
  private final List<Runnable> relations = new ArrayList<>();

  RunWriter(IfcWriter ifc, LargeTypes types, LargeStoreys storeys) {
    this.ifc = ifc;
    this.types = types;
    this.storeys = storeys;
    shapes = new ShapeWriter(ifc);
    mep = new MepWriter(ifc);
    building = new BuildingWriter(ifc);
    properties = new PropertyWriter(ifc);
    sets = new PartProperties(properties);
  }

  /** Writes everything but the relations. */
  void write(Run run) {
    var numbers = ifc.step().reserve(run.parts().size());
    List<Ref> placements = new ArrayList<>();
    List<Ref> bodies = new ArrayList<>();
    for (Part part : run.parts()) {
      placements.add(shapes.placement(storeys.placement(run.storey()), local(run, part.start())));
      bodies.add(shapes.shape(part.bodies()));
    }
    List<List<Ref>> ports = new ArrayList<>();
    for (int i = 0; i < run.parts().size(); i++) {
      ports.add(ports(run, run.parts().get(i), placements.get(i)));
    }
    List<Ref> elements = new ArrayList<>();
    ifc.step()
        .within(
            numbers,
            () -> {
              for (int i = 0; i < run.parts().size(); i++) {
                elements.add(element(run.parts().get(i), placements.get(i), bodies.get(i)));
              }
            });
    for (int i = 0; i < run.parts().size(); i++) {
      Part part = run.parts().get(i);
      Ref element = elements.get(i);
      List<Ref> itsSets = sets.write(run, part);
      List<Ref> itsPorts = ports.get(i);
      relations.add(() -> bind(part, element, itsSets, itsPorts));
    }
    relations.add(() -> relate(run, elements, ports));
  }

  /** Writes the relations of all lines since the last call. */
  void writeRelations() {
    relations.forEach(Runnable::run);
    relations.clear();
  }

  private static Frame local(Run run, Frame frame) {
    return frame.within(Frame.at(new Vec(0, 0, Run.elevationMm(run.storey()))));
  }

  private Ref element(Part part, Ref placement, Ref shape) {
    String tag = Long.toString(part.mark());
    return mep.element(
        part.what(),
        new MepWriter.Label("part " + tag, part.typeName() + ":" + tag, part.typeName(), tag),
        placement,
        shape,
        null);
  }

  private List<Ref> ports(Run run, Part part, Ref placement) {
    List<Ref> ports = new ArrayList<>();
    for (Part.Port port : part.ports()) {
      Vec along = port.source() ? port.out() : port.out().times(-1);
      Frame frame = new Frame(port.at(), along, Vec.UP).within(part.start());
      ports.add(
          mep.port(
              part.mark() + "." + (ports.size() + 1),
              shapes.placement(placement, frame),
              port.source() ? "SOURCE" : "SINK",
              part.air() ? "DUCT" : "PIPE",
              run.service().predefined));
    }
    return ports;
  }

  private void bind(Part part, Ref element, List<Ref> itsSets, List<Ref> itsPorts) {
    String key = "part " + part.mark();
    for (int i = 0; i < itsSets.size(); i++) {
      properties.bind(key + " " + i, List.of(element), itsSets.get(i));
    }
    mep.ownPorts(key, element, itsPorts);
  }

  private void relate(Run run, List<Ref> elements, List<List<Ref>> ports) {
    String key = "line " + (run.index() + 1);
    for (int i = 1; i < elements.size(); i++) {
      mep.connect(key + " " + i, ports.get(i - 1).get(1), ports.get(i).get(0));
    }
    Map<Ref, List<Ref>> typed = new LinkedHashMap<>();
    for (int i = 0; i < elements.size(); i++) {
      typed
          .computeIfAbsent(types.of(run.parts().get(i)), t -> new ArrayList<>())
          .add(elements.get(i));
    }
    typed.forEach((type, members) -> mep.assignType(key + " " + type.id(), members, type));
    Ref system = mep.system(key, run.systemName(), null, run.service().predefined);
    mep.group(key, elements, system);
    building.contain(key, elements, storeys.storey(run.storey()));
  }
}
