package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;

/** In which unit the figures of a map conversion are, and whether those of two files agree. */
class MapConversionTest {

  private static final String METRE = "#910=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";
  private static final String MILLIMETRE = "#910=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n";

  /** 0.3048 m by definition. */
  private static final String FOOT =
      """
      #910=IFCCONVERSIONBASEDUNIT(#911,.LENGTHUNIT.,'FOOT',#912);
      #911=IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0);
      #912=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#913);
      #913=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
      """;

  /**
   * A file without elements.
   *
   * @param fileUnit MM or M
   * @param mapUnit MM, M, FT or none
   */
  private static MepModel model(int index, String fileUnit, String mapUnit, String figures) {
    String unit =
        switch (mapUnit) {
          case "M" -> METRE;
          case "MM" -> MILLIMETRE;
          case "FT" -> FOOT;
          default -> "";
        };
    String project = InlineModel.MILLIMETRES;
    return InlineModel.read(
        index,
        "IFC4",
        (fileUnit.equals("MM") ? project : project.replace(".MILLI.", "$"))
            + "#920=IFCMAPCONVERSION(#921,#922,%s,1.,0.,$);\n".formatted(figures)
            + "#921=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,$,$,$);\n"
            + "#922=IFCPROJECTEDCRS('EPSG:25832',$,$,$,$,$,%s);\n"
                .formatted(unit.isEmpty() ? "$" : "#910")
            + unit);
  }

  private static List<Finding> findings(MepModel one, MepModel other) {
    return ModelJoiner.join(List.of(one, other), 0.002).get(1).findings().stream()
        .filter(f -> f.code() == ReadFinding.MAP_CONVERSIONS_DIFFER)
        .toList();
  }

  /** 565 km east, 5930 km north, 10 m up, in files of millimetres and of metres. */
  @ParameterizedTest
  @CsvSource({
    "MM, MM, '565000000.,5930000000.,10000.', true",
    "MM, MM, '565000000.4,5930000000.,10000.', true",
    "MM, MM, '565000002.,5930000000.,10000.', false",
    "M, MM, '565000000.,5930000000.,10000.', true",
    "MM, FT, '1853674.5406824147,19455380.577427821,32.80839895013123', true",
    "MM, M, '565100.,5930000.,10.', false",
    "MM, none, '565000.,5930000.,10.', true",
    "MM, none, '565000000.,5930000000.,10000.', true",
    "M, none, '565000000.,5930000000.,10000.', false",
    "M, none, '565000.,5930000.,10.', true",
    "MM, none, '565100.,5930000.,10.', false"
  })
  void figuresAreInTheUnitOfTheMap(String file, String map, String figures, boolean agree) {
    MepModel metres = model(0, "MM", "M", "565000.,5930000.,10.");

    assertThat(findings(metres, model(1, file, map, figures)).isEmpty()).isEqualTo(agree);
    MepModel first = model(0, file, map, figures);
    assertThat(findings(first, model(1, "MM", "M", "565000.,5930000.,10.")).isEmpty())
        .isEqualTo(agree);
  }

  /** The standard takes the unit of the file; many files in millimetres write metres. */
  @ParameterizedTest
  @CsvSource({
    "MM, '565000000.,5930000000.,10000.', M, '565000.,5930000.,10.', true",
    "MM, '565000.,5930000.,10.', M, '565000.,5930000.,10.', true",
    "MM, '565000.,5930000.,10.', MM, '565000.,5930000.,10.', true",
    "MM, '565000.,5930000.,10.', MM, '565000.5,5930000.,10.', false",
    "M, '565000.,5930000.,10.', M, '565100.,5930000.,10.', false"
  })
  void figuresInNoUnitAreInThatOfTheFileOrInMetres(
      String file, String figures, String otherFile, String otherFigures, boolean agree) {
    MepModel one = model(0, file, "none", figures);

    assertThat(findings(one, model(1, otherFile, "none", otherFigures)).isEmpty()).isEqualTo(agree);
  }

  @Test
  void findingTellsMetresWhereTheUnitIsTold() {
    MepModel one = model(0, "MM", "M", "565000.,5930000.,10.");
    MepModel other = model(1, "MM", "MM", "565100000.,5930000000.,10000.");
    MepModel untold = model(1, "MM", "none", "565200.,5930000.,10.");

    assertThat(findings(one, other))
        .singleElement()
        .extracting(Finding::message)
        .asString()
        .contains("E 565100.000 N 5930000.000 H 10.000 m, turned", "E 565000.000 N");
    assertThat(findings(one, untold).get(0).message())
        .contains("(E 565200.000 N 5930000.000 H 10.000 without a unit");
    assertThat(Objects.requireNonNull(other.georeference().conversion()).unitM()).isEqualTo(0.001);
  }
}
