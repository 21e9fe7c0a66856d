package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.join.ModelJoiner;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.ifc.threads.Workers;

/** Models written out in the test. */
public final class InlineModel {

  /** Project #900 in millimetres, radians and degrees Celsius. */
  public static final String MILLIMETRES =
      """
      #900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);
      #901=IFCUNITASSIGNMENT((#902,#903));
      #902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
      #903=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
      """;

  private InlineModel() {}

  public static MepModel read(String schema, String records) {
    return read(0, schema, records);
  }

  /** An IFC4 model in millimetres at a position among several. */
  public static MepModel read(int index, String records) {
    return read(index, "IFC4", MILLIMETRES + records);
  }

  public static MepModel read(int index, String schema, String records) {
    ModelFile source = new ModelFile(index, "inline.ifc", "", schema);
    return ModelExtractor.extract(file(schema, records), source, done -> {});
  }

  /** The records, not yet measured. */
  public static IfcFile file(String schema, String records) {
    String text =
        "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('%s'));\nENDSEC;\nDATA;\n%sENDSEC;\nEND-ISO-10303-21;\n"
            .formatted(schema, records);
    return IfcFile.open(
        StepBytes.of(text.getBytes(StandardCharsets.UTF_8)), StepLimits.DEFAULT, bytes -> {});
  }

  /** What reads the properties of a file. */
  public static PropertyReader propertyReader(IfcFile file) {
    try (Workers workers = new Workers(1)) {
      return new PropertyReader(file, new Relations(file, workers), new Units(file, 0));
    }
  }

  /** An IFC4 model in millimetres. */
  public static MepModel read(String records) {
    return read("IFC4", MILLIMETRES + records);
  }

  /** IFC4 models in millimetres, read as one. */
  public static List<MepModel> join(String... records) {
    List<MepModel> models = new ArrayList<>();
    for (String each : records) {
      models.add(read(models.size(), each));
    }
    return ModelJoiner.join(models, ReadOptions.DEFAULT.joinToleranceM());
  }

  /** The element #1 of an IFC4 model in millimetres. */
  public static MepElement first(String records) {
    return element(read(records), 1);
  }

  public static MepElement element(MepModel model, long step) {
    return model.elements().stream().filter(e -> e.key().step() == step).findFirst().orElseThrow();
  }

  /** Properties of #1 in one set: name and value as they stand in the file. */
  public static String properties(String... namesAndValues) {
    return properties(500, 1, "Set", namesAndValues);
  }

  /**
   * Properties of an element in one set: name and value as they stand in the file.
   *
   * @param id of the set; the relation is the next one, the properties begin ten later
   */
  public static String properties(int id, long element, String set, String... namesAndValues) {
    StringBuilder records = new StringBuilder();
    StringBuilder ids = new StringBuilder();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      int member = id + 10 + i;
      ids.append(ids.isEmpty() ? "" : ",").append('#').append(member);
      records.append(
          "#%d=IFCPROPERTYSINGLEVALUE('%s',$,%s,$);\n"
              .formatted(member, namesAndValues[i], namesAndValues[i + 1]));
    }
    return records
        + "#%d=IFCPROPERTYSET('s%d',$,'%s',$,(%s));\n".formatted(id, id, set, ids)
        + "#%d=IFCRELDEFINESBYPROPERTIES('r%d',$,$,$,(#%d),#%d);\n"
            .formatted(id + 1, id, element, id);
  }

  /** A placement at a point in millimetres, with the next two records. */
  public static String placed(int id, double xMm, double yMm, double zMm) {
    return """
        #%d=IFCLOCALPLACEMENT($,#%d);
        #%d=IFCAXIS2PLACEMENT3D(#%d,$,$);
        #%d=IFCCARTESIANPOINT((%s,%s,%s));
        """
        .formatted(id, id + 1, id + 1, id + 2, id + 2, xMm, yMm, zMm);
  }

  /** A straight body for #1 (its shape is #10) of a profile #20, 2.5 m long. */
  public static String body(String profile) {
    return """
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#12));
        #12=IFCEXTRUDEDAREASOLID(#20,$,#13,2500.);
        #13=IFCDIRECTION((0.,0.,1.));
        #14=IFCLOCALPLACEMENT($,#15);
        #15=IFCAXIS2PLACEMENT3D(#16,$,$);
        #16=IFCCARTESIANPOINT((0.,0.,0.));
        #20=%s;
        """
        .formatted(profile);
  }

  public static double diameterMm(MepElement element) {
    Section section = value(element.section());
    return Math.round(((Section.Round) section).outsideDiameterM() * 1e6) / 1e3;
  }

  public static <T> T value(@Nullable Measured<T> measured) {
    return Objects.requireNonNull(measured).value();
  }

  public static List<String> codes(MepModel model) {
    return model.findings().stream().map(Finding::code).map(c -> c.name()).toList();
  }

  /** What the only finding of a code says. */
  public static String message(MepModel model, String code) {
    List<Finding> found =
        model.findings().stream().filter(finding -> finding.code().name().equals(code)).toList();
    assertThat(found).hasSize(1);
    return found.get(0).message();
  }
}
