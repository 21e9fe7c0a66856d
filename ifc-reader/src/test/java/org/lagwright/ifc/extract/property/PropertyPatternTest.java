package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Property;

/** Where properties stand and in which units. */
class PropertyPatternTest {

  private static final String LENGTH = "IFCPOSITIVELENGTHMEASURE(%s)";
  private static final String PIPE = "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);\n";

  @Test
  void overridingPropertyWinsOverTheSetThatItOverrides() {
    MepElement pipe =
        element(
            read(
                "IFC2X3",
                InlineModel.MILLIMETRES
                    + """
                    #1=IFCFLOWSEGMENT('1',$,'Pipe',$,$,$,$,$);
                    #2=IFCPIPESEGMENTTYPE('2',$,'Pipe',$,$,(#3),$,$,$,.RIGIDSEGMENT.);
                    #3=IFCPROPERTYSET('3',$,'Sizes',$,(#4,#5));
                    #4=IFCPROPERTYSINGLEVALUE('OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(60.3),$);
                    #5=IFCPROPERTYSINGLEVALUE('Length',$,IFCPOSITIVELENGTHMEASURE(2000.),$);
                    #6=IFCRELDEFINESBYTYPE('6',$,$,$,(#1),#2);
                    #7=IFCPROPERTYSINGLEVALUE('OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(88.9),$);
                    #8=IFCRELOVERRIDESPROPERTIES('8',$,$,$,(#1),#3,(#7));
                    """),
            1);

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(88.9);
    assertThat(value(pipe.lengthM())).isCloseTo(2, within(1e-9));
  }

  /** Of properties of one name the part's own wins, then the declaring part's, then the type's. */
  @Test
  void partThatReflectsAnotherHasThePropertiesOfThatOne() {
    MepModel model =
        read(
            PIPE
                + """
                #2=IFCPIPESEGMENT('2',$,'Declaring',$,$,$,$,$,$);
                #3=IFCRELDEFINESBYOBJECT('3',$,$,$,(#1),#2);
                #4=IFCPIPESEGMENTTYPE('4',$,'Pipe',$,$,(#5),$,$,$,.RIGIDSEGMENT.);
                #5=IFCPROPERTYSET('5',$,'Sizes',$,(#6,#7));
                #6=IFCPROPERTYSINGLEVALUE('OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(88.9),$);
                #7=IFCPROPERTYSINGLEVALUE('Colour',$,IFCLABEL('red'),$);
                #8=IFCRELDEFINESBYTYPE('8',$,$,$,(#1),#4);
                """
                + properties(500, 1, "Sizes", "Length", LENGTH.formatted("2000."))
                + properties(
                    600,
                    2,
                    "Sizes",
                    "Length",
                    LENGTH.formatted("9000."),
                    "OuterDiameter",
                    LENGTH.formatted("60.3"),
                    "Medium",
                    "IFCLABEL('steam')"));
    MepElement pipe = element(model, 1);

    assertThat(value(pipe.lengthM())).isCloseTo(2, within(1e-9));
    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(60.3);
    assertThat(pipe.findProperty("Medium").orElseThrow().text()).isEqualTo("steam");
    assertThat(pipe.properties())
        .extracting(Property::name)
        .containsExactly("Length", "OuterDiameter", "Medium", "Colour");
    assertThat(element(model, 2).properties()).hasSize(3);
  }

  @Test
  void partOfATypeThatPartsOfOccurrencesReflectIsNotCounted() {
    String parts =
        PIPE
            + """
            #2=IFCPIPESEGMENT('2',$,'Declaring',$,$,$,$,$,$);
            #3=IFCRELDEFINESBYOBJECT('3',$,$,$,(#1),#2);
            #4=IFCUNITARYEQUIPMENTTYPE('4',$,'Unit',$,$,$,$,$,$,.AIRHANDLER.);
            """;

    assertThat(read(parts).elements()).hasSize(2);
    assertThat(read(parts + "#5=IFCRELAGGREGATES('5',$,$,$,#4,(#2));\n").elements())
        .extracting(MepElement::name)
        .containsExactly("Pipe");
  }

  @Test
  void propertySetRelatedToTheTypeAppliesToItsOccurrences() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCPIPESEGMENTTYPE('2',$,'Pipe',$,$,$,$,$,$,.RIGIDSEGMENT.);
                #3=IFCPROPERTYSET('3',$,'Sizes',$,(#4));
                #4=IFCPROPERTYSINGLEVALUE('OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(60.3),$);
                #6=IFCRELDEFINESBYTYPE('6',$,$,$,(#1),#2);
                #7=IFCRELDEFINESBYPROPERTIES('7',$,$,$,(#2),#3);
                """);

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(60.3);
    assertThat(pipe.findProperty("OuterDiameter").orElseThrow().fromType()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IFCLENGTHMEASURE(2.)",
        "IFCREAL(2.)",
        "IFCRATIOMEASURE(2.)",
        "IFCLABEL('2')",
        "IFCTEXT('2 m')",
      })
  void ownLengthUnitOfAPropertyHoldsWhateverItsMeasure(String written) {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCPROPERTYSINGLEVALUE('Length',$,%s,#3);
                #3=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                #4=IFCPROPERTYSET('4',$,'Set',$,(#2));
                #5=IFCRELDEFINESBYPROPERTIES('5',$,$,$,(#1),#4);
                """
                    .formatted(written));

    assertThat(value(pipe.lengthM())).isCloseTo(2, within(1e-9));
  }

  @Test
  void ownUnitOfATemperatureHolds() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCPROPERTYSINGLEVALUE('Medium',$,IFCTHERMODYNAMICTEMPERATUREMEASURE(343.15),#3);
                #3=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.);
                #4=IFCPROPERTYSET('4',$,'Set',$,(#2));
                #5=IFCRELDEFINESBYPROPERTIES('5',$,$,$,(#1),#4);
                """);

    assertThat(pipe.findProperty("Medium").orElseThrow().number()).isEqualTo(70, within(1e-9));
  }

  @Test
  void decimetreCubedIsALitreAndOwnUnitsOfQuantitiesHold() {
    MepElement pipe =
        first(
            PIPE
                + """
                #2=IFCQUANTITYVOLUME('NetVolume',$,#3,5.);
                #3=IFCSIUNIT(*,.VOLUMEUNIT.,.DECI.,.CUBIC_METRE.);
                #4=IFCQUANTITYLENGTH('Length',$,#5,300.);
                #5=IFCSIUNIT(*,.LENGTHUNIT.,.CENTI.,.METRE.);
                #6=IFCELEMENTQUANTITY('6',$,'Qto',$,$,(#2,#4));
                #7=IFCRELDEFINESBYPROPERTIES('7',$,$,$,(#1),#6);
                """);

    assertThat(pipe.findProperty("NetVolume").orElseThrow().number())
        .isEqualTo(0.005, within(1e-12));
    assertThat(value(pipe.lengthM())).isCloseTo(3, within(1e-9));
  }

  private static final String IN_A_COMPLEX_QUANTITY =
      PIPE
          + """
          #2=IFCQUANTITYLENGTH('Outer Diameter',$,$,60.3);
          #3=IFCQUANTITYLENGTH('Length',$,$,2000.);
          #4=IFCPHYSICALCOMPLEXQUANTITY('Straight part',$,(#3),'part',$,$);
          #5=IFCPHYSICALCOMPLEXQUANTITY('Sizes',$,(#2,%s),'%s',$,$);
          #6=IFCELEMENTQUANTITY('6',$,'Qto',$,$,(#5));
          #7=IFCRELDEFINESBYPROPERTIES('7',$,$,$,(#1),#6);
          """;

  @Test
  void quantitiesWithinComplexQuantitiesAreRead() {
    MepElement pipe = first(IN_A_COMPLEX_QUANTITY.formatted("#4", "sizes"));

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(60.3);
    assertThat(value(pipe.lengthM())).isCloseTo(2, within(1e-9));
    assertThat(pipe.findProperty("Length").orElseThrow().set())
        .isEqualTo("Qto.Sizes.Straight part");
  }

  @Test
  void complexQuantityThatHoldsItselfIsFollowedOnce() {
    MepElement pipe = first(IN_A_COMPLEX_QUANTITY.formatted("#5", "sizes"));

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(60.3);
    assertThat(pipe.properties()).hasSize(1);
  }

  @Test
  void quantitiesOfALayerAreNotThoseOfTheElement() {
    MepElement pipe = first(IN_A_COMPLEX_QUANTITY.formatted("#4", "Layer"));

    assertThat(pipe.properties()).isEmpty();
  }

  @Test
  void aLengthUnitThatIsNoNumberIsLeftOutAndMetresAssumed() {
    assertThat(
            InlineModel.codes(
                read(
                    "IFC4",
                    PIPE
                        + """
                        #900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);
                        #901=IFCUNITASSIGNMENT((#902));
                        #902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#903);
                        #903=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(1.E999),#904);
                        #904=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                        """)))
        .contains("UNITS_ASSUMED");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9.15|0.00915",
        "165,1|0.1651",
        "25 mm|0.025",
        "2.5 cm|0.025",
        "1.5 m|1.5",
        "3/4\"|0.01905",
        "1 1/2\"|0.0381",
        "3/4|",
        "about 5|",
      })
  void textsThatAreLengthsAreRead(String text, Double expectedM) {
    Property property =
        first(PIPE + properties("Wandstaerke", "IFCTEXT('" + text + "')")).properties().get(0);

    Optional<Double> lengthM = PropertyLengths.lengthM(property, 0.001);
    assertThat(lengthM.map(m -> Math.round(m * 1e9) / 1e9))
        .isEqualTo(Optional.ofNullable(expectedM));
  }

  @Test
  void russianPropertyNamesAreKnownAlthoughFoldingTakesTheirAccents() {
    MepElement pipe =
        first(
            PIPE
                + properties(
                    "Наружный диаметр", "IFCLENGTHMEASURE(57.)", "Длина", "IFCREAL(3000.)"));

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(57);
    assertThat(value(pipe.lengthM())).isCloseTo(3, within(1e-9));
  }
}
