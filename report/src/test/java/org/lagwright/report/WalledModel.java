package org.lagwright.report;

import org.lagwright.report.ids.ReadyModel;

/**
 * Pipes of 60.3 mm along x at height 3, from 0 to 2 m: one wall across the first of them at 0.5 m
 * without an opening, one across the second at 1.5 m with an opening, and a return too close beside
 * the first.
 */
public final class WalledModel {

  /** GlobalId of the wall without an opening. */
  public static final String WALL = "0AlderQuay0Wall0000001";

  /** GlobalId of the wall with an opening. */
  public static final String OPEN_WALL = "0AlderQuay0Wall0000002";

  /** GlobalId of another wall without an opening. */
  public static final String SECOND_WALL = "0AlderQuay0Wall0000003";

  /** GlobalId of the return. */
  public static final String RETURN = "0AlderQuay0Pipe0000003";

  private WalledModel() {}

  /** The exchange file. */
  public static String text() {
    return ReadyModel.text()
        .replace(
            "ENDSEC;\nEND-ISO",
            """
            #200=IFCWALL('0AlderQuay0Wall0000001',$,'Quay wall',$,$,#201,#202,$,.NOTDEFINED.);
            #201=IFCLOCALPLACEMENT($,#203);
            #202=IFCPRODUCTDEFINITIONSHAPE($,$,(#207));
            #203=IFCAXIS2PLACEMENT3D(#204,$,$);
            #204=IFCCARTESIANPOINT((500.,0.,2000.));
            #207=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#208));
            #208=IFCEXTRUDEDAREASOLID(#209,#4,#13,2000.);
            #209=IFCRECTANGLEPROFILEDEF(.AREA.,$,#17,100.,2000.);
            #210=IFCWALL('0AlderQuay0Wall0000002',$,'Store wall',$,$,#211,#212,$,.NOTDEFINED.);
            #211=IFCLOCALPLACEMENT($,#213);
            #212=IFCPRODUCTDEFINITIONSHAPE($,$,(#217));
            #213=IFCAXIS2PLACEMENT3D(#214,$,$);
            #214=IFCCARTESIANPOINT((1500.,0.,2000.));
            #217=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#208));
            #220=IFCOPENINGELEMENT('0AlderQuay0Opening0001',$,'',$,$,#221,#222,$,.OPENING.);
            #221=IFCLOCALPLACEMENT(#211,#223);
            #222=IFCPRODUCTDEFINITIONSHAPE($,$,(#227));
            #223=IFCAXIS2PLACEMENT3D(#224,$,$);
            #224=IFCCARTESIANPOINT((0.,0.,850.));
            #227=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#228));
            #228=IFCEXTRUDEDAREASOLID(#229,#4,#13,300.);
            #229=IFCRECTANGLEPROFILEDEF(.AREA.,$,#17,200.,300.);
            #230=IFCRELVOIDSELEMENT('0AlderQuay0Voids000001',$,$,$,#210,#220);
            #240=IFCPIPESEGMENT('0AlderQuay0Pipe0000003',$,'Pipe',$,$,#241,#242,$,.RIGIDSEGMENT.);
            #241=IFCLOCALPLACEMENT(#11,#243);
            #242=IFCPRODUCTDEFINITIONSHAPE($,$,(#247));
            #243=IFCAXIS2PLACEMENT3D(#244,#14,#15);
            #244=IFCCARTESIANPOINT((600.,100.,3000.));
            #247=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#248));
            #248=IFCEXTRUDEDAREASOLID(#16,#4,#13,300.);
            #249=IFCDISTRIBUTIONSYSTEM('0AlderQuay0System00003',$,'Heating return',$,$,$,.HEATING.);
            #250=IFCRELASSIGNSTOGROUP('0AlderQuay0Group000003',$,$,$,(#240),$,#249);
            ENDSEC;
            END-ISO""");
  }

  /** With another wall across the first pipe, at 0.2 m. */
  public static String withSecondWall() {
    return text()
        .replace(
            "ENDSEC;\nEND-ISO",
            """
            #260=IFCWALL('0AlderQuay0Wall0000003',$,'',$,$,#261,#262,$,.NOTDEFINED.);
            #261=IFCLOCALPLACEMENT($,#263);
            #262=IFCPRODUCTDEFINITIONSHAPE($,$,(#267));
            #263=IFCAXIS2PLACEMENT3D(#264,$,$);
            #264=IFCCARTESIANPOINT((200.,0.,2000.));
            #267=IFCSHAPEREPRESENTATION(#2,'Body','SweptSolid',(#208));
            ENDSEC;
            END-ISO""");
  }
}
