package org.lagwright.testmodels.large;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.step.Ref;

/** One type object for each form and size, written when it is first asked for. */
final class LargeTypes {

  private final MepWriter mep;
  private final Map<String, Ref> types = new HashMap<>();

  LargeTypes(IfcWriter ifc) {
    mep = new MepWriter(ifc);
  }

  Ref of(Part part) {
    return types.computeIfAbsent(
        part.typeName(),
        name ->
            mep.type(
                part.what(),
                new MepWriter.Label("type " + name, name, null, null),
                part.predefined(),
                List.of(),
                List.of()));
  }
}
