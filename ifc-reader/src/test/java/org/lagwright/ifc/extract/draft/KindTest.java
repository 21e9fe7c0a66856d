package org.lagwright.ifc.extract.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.ModelExtractor;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/** What an element is, from class, type and words alone. */
class KindTest {

  @ParameterizedTest
  @CsvSource({
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Standard,PIPE_SEGMENT,STRAIGHT",
    "IFCFLOWSEGMENT,IFCDUCTSEGMENTTYPE,Standard,DUCT_SEGMENT,STRAIGHT",
    "IFCFLOWSEGMENT,IFCCABLESEGMENTTYPE,Standard,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,IFCCABLECARRIERSEGMENTTYPE,Standard,OTHER,UNKNOWN",
    "IFCFLOWFITTING,IFCCABLECARRIERFITTINGTYPE,Elbow,OTHER,UNKNOWN",
    "IFCFLOWFITTING,IFCJUNCTIONBOXTYPE,Box,OTHER,UNKNOWN",
    "IFCFLOWFITTING,IFCPIPEFITTINGTYPE,Elbow - Generic,PIPE_FITTING,BEND",
    "IFCFLOWFITTING,IFCPIPEFITTINGTYPE,Reduzierstück 80/50,PIPE_FITTING,REDUCER",
    "IFCFLOWFITTING,IFCDUCTFITTINGTYPE,Kanalbogen 90,DUCT_FITTING,BEND",
    "IFCFLOWFITTING,IFCDUCTFITTINGTYPE,Rohrbogen,DUCT_FITTING,BEND",
    "IFCFLOWCONTROLLER,IFCVALVETYPE,Ball valve,VALVE,VALVE_BODY",
    "IFCFLOWCONTROLLER,IFCVALVETYPE,Schmutzfänger,INLINE,STRAINER",
    "IFCFLOWCONTROLLER,IFCDAMPERTYPE,Fire damper,INLINE,DAMPER",
    "IFCFLOWMOVINGDEVICE,IFCPUMPTYPE,Pump,INLINE,PUMP",
    "IFCFLOWMOVINGDEVICE,IFCFANTYPE,Fan,EQUIPMENT,APPARATUS",
    "IFCFLOWTERMINAL,IFCAIRTERMINALTYPE,Diffuser,TERMINAL,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCBOILERTYPE,Boiler,EQUIPMENT,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCSPACEHEATERTYPE,Radiator,TERMINAL,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCHEATEXCHANGERTYPE,Radiator,TERMINAL,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCHEATEXCHANGERTYPE,Plate heat exchanger,EQUIPMENT,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCHEATEXCHANGERTYPE,Verteiler Radiatoren,EQUIPMENT,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCBOILERTYPE,Boiler for radiators,EQUIPMENT,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Konvektor 120,TERMINAL,APPARATUS",
    "IFCUNITARYEQUIPMENT,IFCUNITARYEQUIPMENTTYPE,Plattenheizkörper 22,TERMINAL,APPARATUS",
    "IFCENERGYCONVERSIONDEVICE,IFCCOOLEDBEAMTYPE,Beam,TERMINAL,APPARATUS",
    "IFCFLOWMOVINGDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Umwälzpumpe DN50,INLINE,PUMP",
    "IFCFLOWMOVINGDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Wärmepumpe,EQUIPMENT,APPARATUS",
    "IFCFLOWMOVINGDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Pumpengruppe,EQUIPMENT,APPARATUS",
    "IFCFLOWMOVINGDEVICE,IFCFANTYPE,Pump room fan,EQUIPMENT,APPARATUS",
    "IFCFLOWTREATMENTDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Schmutzfänger DN50,INLINE,STRAINER",
    "IFCFLOWTREATMENTDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Schalldämpfer,INLINE,SILENCER",
    "IFCFLOWTREATMENTDEVICE,IFCDISTRIBUTIONELEMENTTYPE,Water softener,EQUIPMENT,APPARATUS",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Heizkreisverteiler,EQUIPMENT,APPARATUS",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Vorschweissflansch,PIPE_FITTING,FLANGE",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Ventilgehäuse,VALVE,VALVE_BODY",
    "IFCJUNCTIONBOX,IFCJUNCTIONBOXTYPE,Box,OTHER,UNKNOWN",
    "IFCCABLECARRIERFITTING,IFCCABLECARRIERFITTINGTYPE,Bend,OTHER,UNKNOWN",
    "IFCDISTRIBUTIONCHAMBERELEMENT,IFCDISTRIBUTIONCHAMBERELEMENTTYPE,Manhole,OTHER,UNKNOWN",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Conduite acier DN50,PIPE_SEGMENT,STRAIGHT",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Edelstahlrohr mit Heizkabel,PIPE_SEGMENT,STRAIGHT",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Electrical heat traced pipe,PIPE_SEGMENT,STRAIGHT",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Kabelrinne 200,OTHER,UNKNOWN",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Conduit 25,OTHER,UNKNOWN",
    "IFCDUCTSEGMENT,IFCDUCTSEGMENTTYPE,Conduit galva,DUCT_SEGMENT,STRAIGHT",
    "IFCDUCTSEGMENT,IFCDUCTSEGMENTTYPE,Kabelkanal,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Kabelrinne Bogen,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Manhole,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Pipe hanger,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Steel pipe with pipe hangers,PIPE_SEGMENT,STRAIGHT",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Duct bank,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Handlauf Rohr 42.4,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Dachrinne DN100,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Rohrschelle DN50,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Anbohrschelle,PIPE_FITTING,TEE",
    "IFCFLOWFITTING,IFCPIPEFITTINGTYPE,Manometer DN50,OTHER,UNKNOWN",
    "IFCFLOWFITTING,IFCDISTRIBUTIONELEMENTTYPE,Pressure gauge DN15,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Tauchhülse DN15,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Schnellentlüfter DN15,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Brandschutzmanschette DN50,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Термометр,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,T-Stück mit Thermometer,PIPE_FITTING,TEE",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Manometerventil DN15,VALVE,VALVE_BODY",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Tauchhülsenmuffe DN50,PIPE_FITTING,COUPLING",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Air vent pipe DN50,PIPE_FITTING,UNKNOWN",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Entlüfter DN15,PIPE_SEGMENT,STRAIGHT",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Schalldämpfer,INLINE,SILENCER",
    "IFCFLOWSEGMENT,IFCDISTRIBUTIONELEMENTTYPE,Brandschutzklappe,INLINE,DAMPER",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Fire protection flap DN200,INLINE,DAMPER",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Rauchschutzklappe 400x300,INLINE,DAMPER",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,VAV 200,INLINE,DAMPER",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Kältezähler DN50,INLINE,METER",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Systemtrenner DN50,VALVE,VALVE_BODY",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Thermometer,OTHER,UNKNOWN",
    "IFCFLOWCONTROLLER,IFCDISTRIBUTIONELEMENTTYPE,Automatic air vent,OTHER,UNKNOWN",
    "IFCVALVE,IFCVALVETYPE,Manometer,OTHER,UNKNOWN",
    "IFCVALVE,IFCVALVETYPE,Entlüftungsventil,VALVE,VALVE_BODY",
    "IFCFLOWTREATMENTDEVICE,IFCFLOWTREATMENTDEVICETYPE,Wasserfilter DN32,INLINE,STRAINER",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Schlammabscheider DN50,INLINE,STRAINER",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Bogen am Filteranschluss,PIPE_FITTING,BEND",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Dreiwegemischer DN25,VALVE,VALVE_BODY",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Bogen Mischerkreis,PIPE_FITTING,BEND",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Pressure reducer DN25,VALVE,VALVE_BODY",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Hydraulische Weiche,EQUIPMENT,APPARATUS",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Kompensator DN50,PIPE_FITTING,COUPLING",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Festpunkt DN50,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Rohrlager DN50,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Temperature sensor,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Durchflusssensor DN25,INLINE,METER",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Futterrohr 114x3,OTHER,UNKNOWN",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Wall sleeve,OTHER,UNKNOWN",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Rohr in Wanddurchführung,PIPE_SEGMENT,STRAIGHT",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Dachablauf DN100,OTHER,UNKNOWN",
    "IFCPIPEFITTING,IFCPIPEFITTINGTYPE,Bogen 90 Dachablauf,PIPE_FITTING,BEND",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Dachablaufleitung,PIPE_SEGMENT,STRAIGHT",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Regenhaube,OTHER,UNKNOWN",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Plenum box,EQUIPMENT,APPARATUS",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Revisionsdeckel 300x200,OTHER,UNKNOWN",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Access door,OTHER,UNKNOWN",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Drosselklappe 200,INLINE,DAMPER",
    "IFCDUCTFITTING,IFCDUCTFITTINGTYPE,Stop end,DUCT_FITTING,CAP",
    "IFCPIPESEGMENT,IFCPIPESEGMENTTYPE,Steel pipe at fixed point,PIPE_SEGMENT,STRAIGHT",
    "IFCBUILDINGELEMENTPROXY,IFCBUILDINGELEMENTPROXYTYPE,Pipe,OTHER,UNKNOWN"
  })
  void classAndTypeTellTheKind(
      String keyword, String typeKeyword, String typeName, Kind kind, Form form) {
    MepElement element = read(keyword, typeKeyword, typeName);

    assertThat(element.kind()).isEqualTo(kind);
    assertThat(element.form()).isEqualTo(form);
  }

  @ParameterizedTest
  @CsvSource({
    "IFCFLOWMETERTYPE,ELECTRICMETER,OTHER,UNKNOWN",
    "IFCFLOWMETERTYPE,WATERMETER,INLINE,METER",
    "IFCSWITCHINGDEVICETYPE,CONTACTOR,OTHER,UNKNOWN",
    "IFCPROTECTIVEDEVICETYPE,CIRCUITBREAKER,OTHER,UNKNOWN",
    "IFCELECTRICTIMECONTROLTYPE,TIMECLOCK,OTHER,UNKNOWN",
    "IFCFLOWCONTROLLERTYPE,NOTDEFINED,VALVE,VALVE_BODY",
    "IFCVALVETYPE,ISOLATING,VALVE,VALVE_BODY"
  })
  void electricalControllerIsNoValve(String typeKeyword, String predefined, Kind kind, Form form) {
    MepElement element = read("IFC2X3", "IFCFLOWCONTROLLER", typeKeyword, "K1", predefined);

    assertThat(element.kind()).isEqualTo(kind);
    assertThat(element.form()).isEqualTo(form);
  }

  @ParameterizedTest
  @CsvSource({
    "Nozzle 3,,true",
    "Nozzle 3,IFCFLOWCONTROLLERTYPE,true",
    "Nozzle 3,IFCVALVETYPE,false",
    "Ball valve,,false",
  })
  void controllerThatNothingNamesIsToldToBeAssumedAValve(
      String name, @Nullable String typeKeyword, boolean told) {
    MepModel model =
        InlineModel.read(
            "IFC2X3",
            InlineModel.MILLIMETRES
                + "#1=IFCFLOWCONTROLLER('1',$,'%s',$,$,$,$,$);\n".formatted(name)
                + (typeKeyword == null
                    ? ""
                    : "#2=%s('2',$,'T',$,$,$,$,$,$,.NOTDEFINED.);\n".formatted(typeKeyword)
                        + "#3=IFCRELDEFINESBYTYPE('3',$,$,$,(#1),#2);\n"));

    assertThat(InlineModel.element(model, 1).kind()).isEqualTo(Kind.VALVE);
    assertThat(InlineModel.codes(model).contains("KIND_ASSUMED")).isEqualTo(told);
  }

  /** A tap or drain cock ends its line and gets no box, whoever says so: type or occurrence. */
  @ParameterizedTest
  @CsvSource({
    "FAUCET,TERMINAL,APPARATUS",
    "DRAWOFFCOCK,TERMINAL,APPARATUS",
    "FLUSHING,TERMINAL,APPARATUS",
    "GASTAP,TERMINAL,APPARATUS",
    "GASCOCK,VALVE,VALVE_BODY",
    "MIXING,VALVE,VALVE_BODY"
  })
  void tapIsATerminalAndNoValve(String predefined, Kind kind, Form form) {
    MepElement ofOldType = read("IFC2X3", "IFCFLOWCONTROLLER", "IFCVALVETYPE", "Tap", predefined);
    MepElement ofType = read("IFC4", "IFCVALVE", "IFCVALVETYPE", "Hahn", predefined);
    MepElement own =
        InlineModel.first("#1=IFCVALVE('1',$,'T',$,$,$,$,$,.%s.);\n".formatted(predefined));

    assertThat(List.of(ofOldType, ofType, own)).extracting(MepElement::kind).containsOnly(kind);
    assertThat(List.of(ofOldType, ofType, own)).extracting(MepElement::form).containsOnly(form);
  }

  /** A general class without a type: an IFC class as object type tells, or else the description. */
  @ParameterizedTest
  @CsvSource({
    "IFCFLOWSEGMENT,,IfcCableSegment.BUNDLE,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,,IfcDuctSegment.RIGIDSEGMENT,DUCT_SEGMENT,STRAIGHT",
    "IFCFLOWFITTING,,IfcPipeFitting.BEND,PIPE_FITTING,BEND",
    "IFCFLOWSEGMENT,,Tubo sin uniones:Conduit:171383,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,,Conduit circulaire:Conduit:12,DUCT_SEGMENT,STRAIGHT",
    "IFCFLOWSEGMENT,Cables/E,,OTHER,UNKNOWN",
    "IFCFLOWSEGMENT,Cables/E,Steel pipe,PIPE_SEGMENT,STRAIGHT",
  })
  void objectTypeAndThenTheDescriptionTellWhatAGeneralClassIs(
      String keyword, String description, String objectType, Kind kind, Form form) {
    MepElement element =
        InlineModel.first(
            "#1=%s('1',$,'',%s,%s,$,$,$);\n"
                .formatted(keyword, written(description), written(objectType)));

    assertThat(element.kind()).isEqualTo(kind);
    assertThat(element.form()).isEqualTo(form);
  }

  private static String written(@Nullable String text) {
    return text == null ? "$" : "'" + text + "'";
  }

  private static MepElement read(String keyword, String typeKeyword, String typeName) {
    return read("IFC4", keyword, typeKeyword, typeName, "NOTDEFINED");
  }

  /** The type of an apparatus tells what its family does not; pipes and IFC4 need none. */
  @ParameterizedTest
  @CsvSource({
    "IFC2X3,IFCENERGYCONVERSIONDEVICE,IFCSPACEHEATERTYPE,IfcSpaceHeaterType",
    "IFC2X3,IFCFLOWTERMINAL,IFCWASTETERMINALTYPE,IfcWasteTerminalType",
    "IFC2X3,IFCFLOWSEGMENT,IFCPIPESEGMENTTYPE,",
    "IFC4,IFCSPACEHEATER,IFCSPACEHEATERTYPE,"
  })
  void classOfTheTypeIsHandedOnWhereItSaysMore(
      String schema, String keyword, String typeKeyword, String typeClass) {
    assertThat(read(schema, keyword, typeKeyword, "D", "NOTDEFINED").typeClass())
        .isEqualTo(typeClass);
  }

  private static MepElement read(
      String schema, String keyword, String typeKeyword, String typeName, String predefined) {
    String text =
        """
        ISO-10303-21;HEADER;FILE_SCHEMA(('%s'));ENDSEC;DATA;
        #1=%s('1',$,'',$,$,$,$,$);
        #2=%s('2',$,'%s',$,$,$,$,$,$,.%s.);
        #3=IFCRELDEFINESBYTYPE('3',$,$,$,(#1),#2);
        ENDSEC;END-ISO-10303-21;
        """
            .formatted(schema, keyword, typeKeyword, typeName, predefined);
    IfcFile file =
        IfcFile.open(
            StepBytes.of(text.getBytes(StandardCharsets.UTF_8)), StepLimits.DEFAULT, bytes -> {});
    return ModelExtractor.extract(file, new ModelFile(0, "kind.ifc", "", schema), done -> {})
        .elements()
        .get(0);
  }
}
