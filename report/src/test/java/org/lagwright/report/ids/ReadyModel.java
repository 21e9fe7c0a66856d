package org.lagwright.report.ids;

/**
 * A model that carries everything: two pipes, an elbow that takes over their size, and a duct.
 * Tests take something away.
 */
public final class ReadyModel {

  /** GlobalId of the first pipe. */
  public static final String PIPE = "0AlderQuay0Pipe0000001";

  private ReadyModel() {}

  /** The exchange file. */
  public static String text() {
    return """
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION((''),'2;1');
        FILE_NAME('ready.ifc','2026-01-01T00:00:00',(''),(''),'','Harbour drawing office','');
        FILE_SCHEMA(('IFC4'));
        ENDSEC;
        DATA;
        #1=IFCPROJECT('0AlderQuay0Project0001',$,'Alder Quay',$,$,$,$,(#2),#3);
        #2=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-05,#4,$);
        #3=IFCUNITASSIGNMENT((#5,#6,#8));
        #4=IFCAXIS2PLACEMENT3D(#7,$,$);
        #5=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
        #6=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
        #7=IFCCARTESIANPOINT((0.,0.,0.));
        #8=IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.);
        #10=IFCBUILDINGSTOREY('0AlderQuay0Storey00001',$,'Ground floor',$,$,#11,$,$,.ELEMENT.,0.);
        #11=IFCLOCALPLACEMENT($,#4);
        #12=IFCRELAGGREGATES('0AlderQuay0Parts000001',$,$,$,#1,(#10));
        #13=IFCDIRECTION((0.,0.,1.));
        #14=IFCDIRECTION((1.,0.,0.));
        #15=IFCDIRECTION((0.,1.,0.));
        #16=IFCCIRCLEPROFILEDEF(.AREA.,$,#17,30.15);
        #17=IFCAXIS2PLACEMENT2D(#18,$);
        #18=IFCCARTESIANPOINT((0.,0.));
        #19=IFCRECTANGLEPROFILEDEF(.AREA.,$,#17,400.,200.);
        #20=IFCPIPESEGMENT('0AlderQuay0Pipe0000001',$,'Pipe',$,$,#21,#22,$,.RIGIDSEGMENT.);
        #21=IFCLOCALPLACEMENT(#11,#23);
        #22=IFCPRODUCTDEFINITIONSHAPE($,$,(#27));
        #23=IFCAXIS2PLACEMENT3D(#24,#14,#15);
        #24=IFCCARTESIANPOINT((0.,0.,3000.));
        #27=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#28));
        #28=IFCEXTRUDEDAREASOLID(#16,#4,#13,1000.);
        #30=IFCPIPESEGMENT('0AlderQuay0Pipe0000002',$,'Pipe',$,$,#31,#32,$,.RIGIDSEGMENT.);
        #31=IFCLOCALPLACEMENT(#11,#33);
        #32=IFCPRODUCTDEFINITIONSHAPE($,$,(#37));
        #33=IFCAXIS2PLACEMENT3D(#34,#14,#15);
        #34=IFCCARTESIANPOINT((1000.,0.,3000.));
        #37=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#38));
        #38=IFCEXTRUDEDAREASOLID(#16,#4,#13,1000.);
        #40=IFCPIPEFITTING('0AlderQuay0Elbow000001',$,'Elbow',$,$,#41,#42,$,.BEND.);
        #41=IFCLOCALPLACEMENT(#11,#43);
        #42=IFCPRODUCTDEFINITIONSHAPE($,$,(#47));
        #43=IFCAXIS2PLACEMENT3D(#44,#14,#15);
        #44=IFCCARTESIANPOINT((2000.,0.,3000.));
        #45=IFCCARTESIANPOINT((90.,0.,0.));
        #46=IFCAXIS1PLACEMENT(#45,#15);
        #47=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#48));
        #48=IFCREVOLVEDAREASOLID(#16,#4,#46,1.5707963267949);
        #50=IFCDUCTSEGMENT('0AlderQuay0Duct0000001',$,'Duct',$,$,#51,#52,$,.RIGIDSEGMENT.);
        #51=IFCLOCALPLACEMENT(#11,#53);
        #52=IFCPRODUCTDEFINITIONSHAPE($,$,(#57));
        #53=IFCAXIS2PLACEMENT3D(#54,#14,#15);
        #54=IFCCARTESIANPOINT((0.,5000.,3000.));
        #57=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#58));
        #58=IFCEXTRUDEDAREASOLID(#19,#4,#13,1000.);
        #60=IFCDUCTSEGMENT('0AlderQuay0Duct0000002',$,'Duct',$,$,#61,#62,$,.RIGIDSEGMENT.);
        #61=IFCLOCALPLACEMENT(#11,#63);
        #62=IFCPRODUCTDEFINITIONSHAPE($,$,(#67));
        #63=IFCAXIS2PLACEMENT3D(#64,#14,#15);
        #64=IFCCARTESIANPOINT((1000.,5000.,3000.));
        #67=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#68));
        #68=IFCEXTRUDEDAREASOLID(#19,#4,#13,1000.);
        #70=IFCPROPERTYSET('0AlderQuay0Set00000001',$,'Pset_PipeSegmentTypeCommon',$,(#71));
        #71=IFCPROPERTYSINGLEVALUE('OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(60.3),$);
        #72=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000001',$,$,$,(#20,#30),#70);
        #73=IFCPROPERTYSET('0AlderQuay0Set00000002',$,'Alder Quay services',$,(#74));
        #74=IFCPROPERTYSINGLEVALUE('FluidTemperature',$,IFCTHERMODYNAMICTEMPERATUREMEASURE(343.15),$);
        #75=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000002',$,$,$,(#20,#30,#40),#73);
        #76=IFCELEMENTQUANTITY('0AlderQuay0Set00000003',$,'Qto_PipeSegmentBaseQuantities',$,$,(#77));
        #77=IFCQUANTITYLENGTH('Length',$,$,1000.,$);
        #78=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000003',$,$,$,(#20,#30),#76);
        #80=IFCPROPERTYSET('0AlderQuay0Set00000004',$,'Pset_DuctSegmentTypeCommon',$,(#81));
        #81=IFCPROPERTYSINGLEVALUE('NominalDiameterOrWidth',$,IFCPOSITIVELENGTHMEASURE(400.),$);
        #82=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000004',$,$,$,(#50,#60),#80);
        #86=IFCELEMENTQUANTITY('0AlderQuay0Set00000005',$,'Qto_DuctSegmentBaseQuantities',$,$,(#77));
        #88=IFCRELDEFINESBYPROPERTIES('0AlderQuay0Sets0000005',$,$,$,(#50,#60),#86);
        #90=IFCDISTRIBUTIONSYSTEM('0AlderQuay0System00001',$,'Heating flow',$,$,$,.HEATING.);
        #91=IFCRELASSIGNSTOGROUP('0AlderQuay0Group000001',$,$,$,(#20,#30,#40),$,#90);
        #92=IFCDISTRIBUTIONSYSTEM('0AlderQuay0System00002',$,'Supply air',$,$,$,.VENTILATION.);
        #93=IFCRELASSIGNSTOGROUP('0AlderQuay0Group000002',$,$,$,(#50,#60),$,#92);
        #94=IFCRELCONTAINEDINSPATIALSTRUCTURE('0AlderQuay0Contents001',$,$,$,(#20,#30,#40,#50,#60),#10);
        #100=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000001',$,$,$,$,#31,$,.SOURCE.,.PIPE.,.HEATING.);
        #101=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000002',$,$,$,$,#31,$,.SINK.,.PIPE.,.HEATING.);
        #102=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000003',$,$,$,$,#41,$,.SOURCE.,.PIPE.,.HEATING.);
        #103=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000004',$,$,$,$,#41,$,.SINK.,.PIPE.,.HEATING.);
        #104=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000005',$,$,$,$,#61,$,.SOURCE.,.DUCT.,.VENTILATION.);
        #105=IFCDISTRIBUTIONPORT('0AlderQuay0Port0000006',$,$,$,$,#61,$,.SINK.,.DUCT.,.VENTILATION.);
        #110=IFCRELNESTS('0AlderQuay0Nests000001',$,$,$,#20,(#100));
        #111=IFCRELNESTS('0AlderQuay0Nests000002',$,$,$,#30,(#101,#102));
        #112=IFCRELNESTS('0AlderQuay0Nests000003',$,$,$,#40,(#103));
        #113=IFCRELNESTS('0AlderQuay0Nests000004',$,$,$,#50,(#104));
        #114=IFCRELNESTS('0AlderQuay0Nests000005',$,$,$,#60,(#105));
        #120=IFCRELCONNECTSPORTS('0AlderQuay0Joint000001',$,$,$,#100,#101,$);
        #121=IFCRELCONNECTSPORTS('0AlderQuay0Joint000002',$,$,$,#102,#103,$);
        #122=IFCRELCONNECTSPORTS('0AlderQuay0Joint000003',$,$,$,#104,#105,$);
        ENDSEC;
        END-ISO-10303-21;
        """;
  }
}
