package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.report.ids.ReadyModel;

/**
 * {@code lagwright verify} from coverings and thickness properties of an IFC file to the exit code:
 * two pipes, an elbow and two ducts of 1 m with one status each, and a pipe of no known service.
 */
class VerifyTest {

  private static final String RECORDS =
      """
      #300=IFCPROPERTYSET('0AlderQuay0Set00000010',$,'Lagging',$,(#301));
      #301=IFCPROPERTYSINGLEVALUE('InsulationThickness',$,IFCPOSITIVELENGTHMEASURE(40.),$);
      #302=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000010',$,$,$,(#20),#300);
      #310=IFCCOVERING('0AlderQuay0Cover000001',$,'Lagging',$,$,#31,#312,$,.INSULATION.);
      #312=IFCPRODUCTDEFINITIONSHAPE($,$,(#317));
      #317=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#318));
      #318=IFCEXTRUDEDAREASOLID(#319,#4,#13,1000.);
      #319=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,#17,50.15,20.);
      #320=IFCRELCOVERSBLDGELEMENTS('0AlderQuay0Covers00001',$,$,$,#30,(#310));
      #330=IFCPROPERTYSET('0AlderQuay0Set00000011',$,'Lagging',$,(#331));
      #331=IFCPROPERTYSINGLEVALUE('InsulationThickness',$,IFCPOSITIVELENGTHMEASURE(100.),$);
      #332=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000011',$,$,$,(#50),#330);
      #340=IFCPROPERTYSET('0AlderQuay0Set00000012',$,'Lagging',$,(#341,#342));
      #341=IFCPROPERTYSINGLEVALUE('InsulationThickness',$,IFCPOSITIVELENGTHMEASURE(30.),$);
      #342=IFCPROPERTYSINGLEVALUE('InsulationMaterial',$,IFCLABEL('mineral wool'),$);
      #343=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000012',$,$,$,(#60),#340);
      #350=IFCPIPESEGMENT('0AlderQuay0Pipe0000009',$,'Pipe',$,$,#351,#352,$,.RIGIDSEGMENT.);
      #351=IFCLOCALPLACEMENT(#11,#353);
      #352=IFCPRODUCTDEFINITIONSHAPE($,$,(#357));
      #353=IFCAXIS2PLACEMENT3D(#354,#14,#15);
      #354=IFCCARTESIANPOINT((0.,-9000.,3000.));
      #357=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#358));
      #358=IFCEXTRUDEDAREASOLID(#16,#4,#13,1000.);
      ENDSEC;
      END-ISO""";

  @TempDir Path folder;

  private RealRun verify(String... more) throws IOException {
    Path model = folder.resolve("model.ifc");
    Files.writeString(model, ReadyModel.text().replace("ENDSEC;\nEND-ISO", RECORDS));
    String[] args = new String[more.length + 2];
    args[0] = "verify";
    args[1] = model.toString();
    System.arraycopy(more, 0, args, 2, more.length);
    return RealRun.of(args);
  }

  /** Cells of the first line that begins so, behind the label. */
  private static List<String> row(String out, String label) {
    String line =
        out.lines().filter(l -> l.startsWith("  " + label + " ")).findFirst().orElseThrow();
    return List.of(line.strip().substring(label.length()).strip().split("\\s+", -1));
  }

  @Test
  void eachStatusHasItsCountLengthAndAreaAndTheirPerCent() throws IOException {
    String out = verify().out();

    assertThat(row(out, "covered"))
        .containsExactly("1", "16.7", "1.00", "20.0", "0.44", percent(out, "covered"));
    assertThat(row(out, "too thin").subList(0, 4)).containsExactly("1", "16.7", "1.00", "20.0");
    assertThat(row(out, "too thick").subList(0, 4)).containsExactly("1", "16.7", "1.00", "20.0");
    assertThat(row(out, "wrong material").subList(0, 4))
        .containsExactly("1", "16.7", "1.00", "20.0");
    assertThat(row(out, "bare").subList(0, 4)).containsExactly("1", "16.7", "0.00", "0.0");
    assertThat(row(out, "unknown"))
        .containsExactly("1", "16.7", "1.00", "20.0", "not", "known", "-");
    assertThat(row(out, "all").subList(0, 4)).containsExactly("6", "100.0", "5.00", "100.0");
    assertThat(out).contains("The outer area of 1 elements is not known");
  }

  /** Per cent of the outer area, reckoned from the square metres shown. */
  private static String percent(String out, String label) {
    double part = Double.parseDouble(row(out, label).get(4));
    double whole = Double.parseDouble(row(out, "all").get(4));
    double shown = Double.parseDouble(row(out, label).get(5));
    assertThat(shown).isCloseTo(100 * part / whole, within(0.2));
    return row(out, label).get(5);
  }

  @Test
  void theSameIsToldByServiceLocationStoreyAndSize() throws IOException {
    String out = verify().out();

    assertThat(out)
        .contains("Elements by service", "Elements by location", "Elements by storey")
        .contains("Elements by size");
    // covered, too thin, too thick, wrong material, bare, unknown
    assertThat(row(out, "heating flow").subList(0, 6))
        .containsExactly("1", "1", "-", "-", "1", "-");
    assertThat(row(out, "supply air").subList(0, 6)).containsExactly("-", "-", "1", "1", "-", "-");
    assertThat(row(out, "Ground floor").subList(0, 5)).containsExactly("1", "1", "1", "1", "1");
    assertThat(row(out, "400 x 200 mm").subList(0, 4)).containsExactly("-", "-", "1", "1");
  }

  @Test
  void theWorstAreListedFromTheLargestMissingSurfaceOn() throws IOException {
    String worst = verify().out().split("Where most is missing", -1)[1];
    List<String> ids =
        worst
            .lines()
            .filter(l -> l.contains("0AlderQuay0"))
            .map(l -> l.strip().split("\\s+", -1)[1])
            .toList();
    List<Double> missing =
        worst
            .lines()
            .filter(l -> l.contains("0AlderQuay0"))
            .map(l -> Double.valueOf(l.strip().split("\\s+", -1)[0]))
            .toList();

    // half of the surface of the pipe, all of that of the elbow
    assertThat(ids).containsExactly("0AlderQuay0Pipe0000002", "0AlderQuay0Elbow000001");
    assertThat(missing).isSortedAccordingTo(Comparator.reverseOrder());
  }

  @ParameterizedTest
  @CsvSource({"33.4, 1", "33.3, 0", "0, 0", "100, 1"})
  void exitCodeHoldsTheSmallerShareAgainstTheLeast(String least, int code) throws IOException {
    // covered or thicker: 2 of 6 elements, and more than that of the surface
    RealRun run = verify("--least", least);

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(code);
  }
}
