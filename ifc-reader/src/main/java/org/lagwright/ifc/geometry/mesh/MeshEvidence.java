package org.lagwright.ifc.geometry.mesh;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.lagwright.ifc.geometry.mesh.EndFinder.Found;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;

/**
 * Where the figures of a mesh come from.
 *
 * @param step the record that findings point to
 * @param what what the faces belong to
 */
record MeshEvidence(Mesh mesh, long step, String what, How how) {

  Evidence loops(List<Found> ends) {
    Set<Integer> vertices = new LinkedHashSet<>();
    for (Found end : ends) {
      vertices.add(end.loop().size());
    }
    return new Evidence(step, what + " end loops", "loops of " + vertices + " vertices");
  }

  Evidence distances() {
    return new Evidence(step, what + " ends", mesh.faces().size() + " faces");
  }

  Evidence walls() {
    return new Evidence(step, what + " walls", mesh.faces().size() + " faces");
  }

  Evidence walls(BendWalls.Bend bend) {
    String spread =
        String.format(
            Locale.ROOT,
            "%d of %d faces on an arc, normals spread over %.1f degrees",
            bend.faces(),
            mesh.faces().size(),
            Math.toDegrees(bend.spreadRad()));
    return new Evidence(step, what + " walls of a bend", spread);
  }
}
