package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.extract.join.ModelJoiner;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.testmodels.tiny.TinyModels;

/** One test per tiny model; the name of the model is the rule. */
class TinyModelTest {

  static List<String> models() {
    return TinyModels.list();
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyTinyModelIsReadAndHasAnElement(String name) {
    assertThat(read(name).elements()).isNotEmpty();
  }

  @Test
  void extrudedCircleGivesDiameterAndLength() {
    MepElement pipe = only("extruded-circle-gives-diameter-and-length");

    assertRound(pipe, 0.0603, How.SOLID);
    assertLength(pipe, 2.5, How.SOLID);
  }

  @Test
  void hollowCircleDiameterIsTheOuterOne() {
    assertRound(only("hollow-circle-diameter-is-the-outer-one"), 0.0603, How.SOLID);
  }

  @Test
  void polygonOf24PointsIsACircle() {
    assertRound(only("polygon-of-24-points-is-a-circle"), 0.0889, How.SOLID);
  }

  @Test
  void verticalExtrusionOfADuctIsNotItsLength() {
    MepElement duct = only("vertical-extrusion-of-a-duct-is-not-its-length");

    assertThat(value(duct.section())).isEqualTo(new Section.Rectangular(0.4, 0.3));
    assertLength(duct, 2.5, How.SOLID);
  }

  @Test
  void fourCornersOnACircleAreARectangle() {
    MepElement duct = only("four-corners-on-a-circle-are-a-rectangle");

    assertThat(value(duct.section())).isEqualTo(new Section.Rectangular(0.4, 0.3));
    assertLength(duct, 1.5, How.SOLID);
  }

  @Test
  void scaleOfAMappedItemMultipliesItsLengths() {
    MepElement pipe = only("scale-of-a-mapped-item-multiplies-its-lengths");

    assertRound(pipe, 0.06, How.SOLID);
    assertLength(pipe, 2.0, How.SOLID);
  }

  @Test
  void sweptDiskLengthIsItsDirectrix() {
    MepElement pipe = only("swept-disk-length-is-its-directrix");

    assertRound(pipe, 0.028, How.SOLID);
    assertLength(pipe, 7.0, How.SOLID);
  }

  @Test
  void taperedExtrusionIsAReducer() {
    MepElement reducer = only("tapered-extrusion-is-a-reducer");

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends()).hasSize(2);
    assertThat(reducer.ends().get(0)).isNotEqualTo(reducer.ends().get(1));
  }

  @Test
  void bendWithoutPredefinedTypeIsKnownByItsRevolvedSolid() {
    MepElement bend = only("bend-without-predefined-type-is-known-by-its-revolved-solid");

    assertThat(bend.form()).isEqualTo(Form.BEND);
    assertThat(value(bend.angleDeg())).isCloseTo(90, within(1e-6));
  }

  @Test
  void bendAngleInDegreesThroughConversionUnit() {
    MepElement bend = only("bend-angle-in-degrees-through-conversion-unit");

    assertThat(value(bend.angleDeg())).isBetween(10.0, 90.0);
    assertThat(bend.bendRadiusM()).isNotNull();
  }

  @Test
  void mappedFittingTakesItsFormFromItsTypeName() {
    assertThat(only("mapped-fitting-takes-its-form-from-its-type-name").form()).isEqualTo(Form.TEE);
  }

  @Test
  void cableTrayTypedFlowSegmentIsNoPipe() {
    assertThat(only("cable-tray-typed-flow-segment-is-no-pipe").kind()).isEqualTo(Kind.OTHER);
  }

  @Test
  void lengthInFeetThroughConversionUnit() {
    assertLength(only("length-in-feet-through-conversion-unit"), 3.048, How.SOLID);
  }

  @Test
  void pipeWithoutGeometryIsMeasuredFromPropertiesAndSaysSoOnce() {
    MepModel model = read("pipe-without-geometry-is-measured-from-properties");
    MepElement pipe = model.elements().get(0);

    assertRound(pipe, 0.0424, How.PROPERTY);
    assertLength(pipe, 1.75, How.PROPERTY);
    assertThat(codes(model)).containsExactly("NO_GEOMETRY");
  }

  @Test
  void occurrencePropertyWinsOverTypePropertyOfTheSameSet() {
    MepElement pipe = only("occurrence-property-wins-over-type-property-of-the-same-set");

    assertRound(pipe, 0.057, How.PROPERTY);
    assertThat(pipe.findProperty("OuterDiameter").orElseThrow().fromType()).isFalse();
    assertThat(pipe.nominalSize()).isEqualTo("DN50");
    assertThat(pipe.findProperty("NominalDiameter").orElseThrow().fromType()).isTrue();
  }

  @Test
  void sizesOfAnIfc2x3TypeAreListValues() {
    assertRound(only("sizes-of-an-ifc2x3-type-are-list-values"), 0.0603, How.PROPERTY);
  }

  @Test
  void propertySetsMayComeAsAnInlineList() {
    assertRound(only("property-sets-may-come-as-an-inline-list"), 0.0424, How.PROPERTY);
  }

  @Test
  void samePlaceholderLengthOnEveryElementLosesAgainstGeometry() {
    MepModel model = read("same-placeholder-length-on-every-element-loses-against-geometry");

    assertThat(model.elements())
        .allSatisfy(
            pipe -> {
              assertThat(value(pipe.lengthM())).isLessThan(3);
              assertThat(lost(pipe.lengthM())).contains("placeholder");
            });
    assertThat(codes(model)).containsExactly("PLACEHOLDER_VALUES");
  }

  @Test
  void kelvinUnitWithAValueOf70MeansCelsius() {
    List<Property> properties = only("kelvin-unit-with-a-value-of-70-means-celsius").properties();

    assertThat(properties)
        .filteredOn(p -> "IFCTHERMODYNAMICTEMPERATUREMEASURE".equals(p.measure()))
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.number()).isEqualTo(70));
  }

  @Test
  void portInIfc4FileConnectedTheIfc2x3Way() {
    MepModel model = read("port-in-ifc4-file-connected-the-ifc2x3-way");
    ElementKey first = model.elements().get(0).key();
    ElementKey second = model.elements().get(1).key();

    assertThat(model.elements().get(0).ports()).anyMatch(p -> second.equals(p.connectedTo()));
    assertThat(model.elements().get(1).ports()).anyMatch(p -> first.equals(p.connectedTo()));
  }

  @Test
  void systemGroupContainsPortsToo() {
    MepElement pipe = only("system-group-contains-ports-too");

    assertThat(pipe.systems()).extracting(s -> s.name()).containsExactly("Chilled water flow");
  }

  @Test
  void systemNamedChilledButTypedHeatingIsAContradictionThatTheReaderPassesOn() {
    MepElement pipe = only("system-named-chilled-but-typed-heating-is-a-contradiction");

    assertThat(pipe.systems().get(0).name()).isEqualTo("Chilled water flow");
    assertThat(pipe.systems().get(0).predefinedType()).isEqualTo("HEATING");
  }

  @Test
  void coveringRelatedToPipeIsExistingInsulation() {
    assertCovered("covering-related-to-pipe-is-existing-insulation");
  }

  @Test
  void coveringThatIsPartOfAPipeIsExistingInsulation() {
    assertCovered("covering-that-is-part-of-a-pipe-is-existing-insulation");
  }

  @Test
  void spaceOutdoorsMakesItsPipesOutdoors() {
    assertThat(only("space-outdoors-makes-its-pipes-outdoors").place().external()).isTrue();
  }

  @Test
  void duplicateGlobalIdsStayTwoElements() {
    MepModel model = read("duplicate-global-ids-stay-two-elements");

    assertThat(model.elements()).hasSize(2);
    assertThat(model.elementsByKey()).hasSize(2);
    assertThat(codes(model)).containsExactly(ReadFinding.DUPLICATE_GLOBAL_ID.name());
  }

  @Test
  void idsBeyond2ToThe31() {
    MepElement pipe = only("ids-beyond-2-to-the-31");

    assertThat(pipe.key().step()).isGreaterThan(1L << 31);
    assertLength(pipe, 2.5, How.SOLID);
  }

  @Test
  void stringsWithAllEscapes() {
    List<Property> properties = only("strings-with-all-escapes").properties();

    assertThat(properties)
        .extracting(Property::text)
        .contains("it's", "a\\b", "Kälte", "\u00D8\u00B2 60");
  }

  @Test
  void wordsTellTheFormOfAFitting() {
    assertThat(only("words-tell-the-form-of-a-fitting").form()).isEqualTo(Form.CAP);
  }

  @Test
  void endsThatTouchAreJoinedWithoutPorts() {
    MepModel model = read("ends-that-touch-are-joined-without-ports");
    MepElement first = named(model, "Pipe 1");

    assertThat(first.ports().stream().map(Port::connectedTo).filter(Objects::nonNull))
        .containsExactly(named(model, "Pipe 2").key());
    assertThat(codes(model)).contains("ENDS_JOINED");
  }

  @Test
  void reducerWhoseAxesAreShiftedIsEccentric() {
    MepElement part = named(read("reducer-whose-axes-are-shifted-is-eccentric"), "Part 9");

    assertThat(part.form()).isEqualTo(Form.REDUCER);
    assertThat(value(part.eccentricityM())).isCloseTo(0.0143, within(1e-6));
    assertThat(part.ends())
        .containsExactlyInAnyOrder(new Section.Round(0.0889), new Section.Round(0.0603));
  }

  @Test
  void teeWithASlantedBranchIsALateral() {
    MepElement part = named(read("tee-with-a-slanted-branch-is-a-lateral"), "Part 4");

    assertThat(part.form()).isEqualTo(Form.LATERAL);
    assertThat(value(part.angleDeg())).isCloseTo(45, within(0.01));
    assertThat(part.ends())
        .containsExactly(
            new Section.Round(0.0603), new Section.Round(0.0603), new Section.Round(0.0337));
  }

  @Test
  void valveThickerThanItsPipeHasTheSizeOfThePipe() {
    MepModel model = read("valve-thicker-than-its-pipe-has-the-size-of-the-pipe");
    MepElement valve = named(model, "V 17");

    assertRound(valve, 0.0603, How.NEIGHBOUR);
    assertThat(Objects.requireNonNull(valve.section()).lost())
        .extracting(Candidate::value)
        .containsExactly(new Section.Round(0.0844));
  }

  @Test
  void coveringWithoutRelationBelongsToThePipeOnItsAxis() {
    assertCovered("covering-without-relation-belongs-to-the-pipe-on-its-axis");
  }

  @Test
  void insulationDrawnIntoTheBodyIsTakenOffTheSize() {
    MepModel model = read("insulation-drawn-into-the-body-is-taken-off-the-size");
    MepElement pipe = named(model, "Pipe");

    assertRound(pipe, 0.0603, How.SOLID);
    assertThat(Objects.requireNonNull(pipe.existingInsulation()).thicknessM()).isEqualTo(0.03);
    assertThat(codes(model)).contains("INSULATION_IN_BODY");
  }

  @Test
  void proxyNamedLikeAPipeIsNoPipe() {
    MepModel model = read("proxy-named-like-a-pipe-is-no-pipe");

    assertThat(named(model, "Steel pipe 48.3").kind()).isEqualTo(Kind.OTHER);
    assertThat(codes(model)).containsOnlyOnce("PROXY_LOOKS_LIKE_SERVICE");
  }

  @Test
  void spaceIsFoundByItsGeometry() {
    assertThat(only("space-is-found-by-its-geometry").place().space()).isEqualTo("0.12 Plant room");
  }

  @Test
  void externalSpaceMakesItsPipesOutdoors() {
    assertThat(only("external-space-makes-its-pipes-outdoors").place().external()).isTrue();
  }

  @Test
  void elementDrawnTwiceIsReportedAndCountsTwice() {
    MepModel model = read("element-drawn-twice-is-reported-and-counts-twice");
    MepModel joined = ModelJoiner.join(List.of(model), 0.002).get(0);

    assertThat(joined.elements()).hasSize(2);
    assertThat(codes(joined)).containsOnlyOnce("DRAWN_TWICE");
  }

  @Test
  void placementsInACircleAreAFinding() {
    MepModel model = read("placements-in-a-circle-are-a-finding");

    assertRound(named(model, "Pipe"), 0.0603, How.SOLID);
    assertThat(named(model, "Pipe").place().positionM()).isNull();
    assertThat(codes(model)).containsOnlyOnce("CIRCULAR_REFERENCES");
  }

  private static MepElement named(MepModel model, String name) {
    return model.elements().stream().filter(e -> e.name().equals(name)).findFirst().orElseThrow();
  }

  private static void assertCovered(String name) {
    MepModel model = read(name);
    MepElement pipe =
        model.elements().stream()
            .filter(e -> e.kind() == Kind.PIPE_SEGMENT)
            .findFirst()
            .orElseThrow();
    ExistingInsulation existing = Objects.requireNonNull(pipe.existingInsulation());
    assertThat(existing.coverings()).hasSize(1);
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST");
  }

  private static void assertRound(MepElement element, double diameterM, How how) {
    Measured<Section> section = Objects.requireNonNull(element.section());
    assertThat(section.value()).isEqualTo(new Section.Round(diameterM));
    assertThat(section.how()).isEqualTo(how);
  }

  private static void assertLength(MepElement element, double lengthM, How how) {
    Measured<Double> length = Objects.requireNonNull(element.lengthM());
    assertThat(length.value()).isCloseTo(lengthM, within(1e-7));
    assertThat(length.how()).isEqualTo(how);
  }

  private static <T> T value(@Nullable Measured<T> measured) {
    return Objects.requireNonNull(measured).value();
  }

  private static List<String> lost(@Nullable Measured<Double> measured) {
    return Objects.requireNonNull(measured).lost().stream().map(c -> c.why()).toList();
  }

  private static List<String> codes(MepModel model) {
    return model.findings().stream().map(Finding::code).map(c -> c.name()).toList();
  }

  private static MepElement only(String name) {
    MepModel model = read(name);
    assertThat(model.elements()).hasSize(1);
    return model.elements().get(0);
  }

  private static MepModel read(String name) {
    IfcFile file =
        IfcFile.open(StepBytes.of(TinyModels.read(name)), StepLimits.DEFAULT, bytes -> {});
    ModelFile source = new ModelFile(0, name, "", file.step().schema());
    return ModelExtractor.extract(file, source, done -> {});
  }

  @Test
  void everyTinyModelHasATestOfItsName() {
    List<String> tests =
        Arrays.stream(TinyModelTest.class.getDeclaredMethods())
            .map(m -> m.getName().toLowerCase(Locale.ROOT))
            .toList();

    assertThat(TinyModels.list())
        .allSatisfy(
            name -> assertThat(tests).anyMatch(test -> test.startsWith(name.replace("-", ""))));
  }
}
