package org.lagwright.ifc.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.SharedModels;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** How many pipes and ducts of each public model are measured, and by what. */
class MeasuredShareTest {

  private static final Set<Kind> COUNTED =
      EnumSet.of(Kind.PIPE_SEGMENT, Kind.PIPE_FITTING, Kind.DUCT_SEGMENT, Kind.DUCT_FITTING);

  private static final Set<How> BY_GEOMETRY =
      EnumSet.of(How.SOLID, How.MESH, How.PORTS, How.NEIGHBOUR);

  @Test
  void nearlyAllPipesAndDuctsOfEachModelAreMeasuredFromGeometryOrPorts() throws IOException {
    try (Stream<Path> files = Files.walk(SharedModels.folder())) {
      for (Path file : files.filter(f -> f.toString().endsWith(".ifc")).sorted().toList()) {
        check(file);
      }
    }
  }

  private static void check(Path file) {
    MepModel model;
    try {
      model = ModelReader.read(file, 0, ProgressListener.SILENT);
    } catch (ModelException e) {
      return;
    }
    List<MepElement> counted =
        model.elements().stream().filter(e -> COUNTED.contains(e.kind())).toList();
    List<MepElement> other = counted.stream().filter(e -> !byGeometry(e)).toList();
    if (counted.isEmpty()) {
      return;
    }
    System.out.printf(
        "%-60s %4d %4d%n", file.getFileName(), counted.size(), counted.size() - other.size());
    other.forEach(
        e ->
            System.out.println(
                "    "
                    + e.key()
                    + " "
                    + e.ifcClass()
                    + " "
                    + e.name()
                    + " "
                    + e.form()
                    + " "
                    + e.section()
                    + " "
                    + e.lengthM()));
  }

  private static boolean byGeometry(MepElement element) {
    boolean segment = element.kind() == Kind.PIPE_SEGMENT || element.kind() == Kind.DUCT_SEGMENT;
    return by(element.section()) && (!segment || by(element.lengthM()));
  }

  private static boolean by(@Nullable Measured<?> figure) {
    return figure != null && BY_GEOMETRY.contains(figure.how());
  }
}
