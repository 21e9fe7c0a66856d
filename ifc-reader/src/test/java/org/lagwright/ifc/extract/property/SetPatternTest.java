package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.schema.IfcFile;

/** Sets that look like one before are read as if each were the only one. */
class SetPatternTest {

  private static final int ELEMENTS = 60;

  /** Mostly one way to write a member, now and then another. */
  private static final List<String> WAYS =
      List.of(
          "IFCPROPERTYSINGLEVALUE('%s',$,IFCREAL(5.),$)",
          "IFCPROPERTYSINGLEVALUE('%s',$,$,$)",
          "IFCPROPERTYSINGLEVALUE('%s',$,*,$)",
          "IFCPROPERTYSINGLEVALUE('%s','said, ''so''; (twice)',IFCLABEL('a'),#2)",
          "IFCPROPERTYSINGLEVALUE('%s','',IFCLABEL(''),$)",
          "IFCPROPERTYSINGLEVALUE( '%s',$,IFCREAL(7.),$)",
          "IFCPROPERTYSINGLEVALUE('%s' ,$,IFCREAL(7.),$)",
          "IFCPROPERTYSINGLEVALUE('%s', $ , IFCREAL(7.) ,$)",
          "IFCPROPERTYSINGLEVALUE('%s',/* none */$,IFCREAL(7.),$)",
          "IFCPROPERTYSINGLEVALUE('%s',$,(),$)",
          "IFCPROPERTYSINGLEVALUE('%s')",
          "ifcpropertysinglevalue('%s',$,IFCREAL(8.),$)",
          "IFCPROPERTYSINGLEVALUE('%s and more',$,IFCREAL(8.),$)",
          "IFCPROPERTYSINGLEVALUE('Remark 1',$,IFCLABEL('once more'),$)",
          "IFCPROPERTYENUMERATEDVALUE('%s',$,(IFCLABEL('a')),$)",
          "IFCCOMPLEXPROPERTY('%s',$,'use',())");

  private static final List<String> NAMES =
      List.of("Remark 1", "Length", "Remark 2", "Outside Diameter", "it''s");

  /** As many, and some of the same, as fittings have beside pipes. */
  private static final List<String> OTHER_NAMES =
      List.of("Remark 1", "Angle", "Remark 2", "Bend Radius", "Length");

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 20261126})
  void everySetIsReadAsIfItWereTheOnlyOne(long seed) {
    for (int i = 0; i < 20; i++) {
      long modelSeed = seed * 1000 + i;
      IfcFile file = file(new Random(modelSeed));
      PropertyReader one = InlineModel.propertyReader(file);
      for (int element = 1; element <= ELEMENTS; element++) {
        assertThat(one.wantedOf(1000 * element))
            .as("seed " + modelSeed + ", element " + element)
            .isEqualTo(InlineModel.propertyReader(file).wantedOf(1000 * element));
      }
    }
  }

  /** Elements with a set each; the sets have the same name and mostly the same members. */
  private static IfcFile file(Random random) {
    StringBuilder records = new StringBuilder(InlineModel.MILLIMETRES);
    boolean varied = random.nextBoolean();
    boolean mixed = random.nextBoolean();
    for (int element = 1; element <= ELEMENTS; element++) {
      int id = 1000 * element;
      records.append("#%d=IFCPIPESEGMENT('%d',$,'Pipe',$,$,$,$,$,$);\n".formatted(id, id));
      StringBuilder members = new StringBuilder();
      List<String> names = mixed && random.nextBoolean() ? OTHER_NAMES : NAMES;
      for (int i = 0; i < names.size(); i++) {
        int member = id + 10 + i;
        boolean usual = random.nextInt(varied ? 10 : 40) > 0;
        int way = usual ? random.nextInt(2) : random.nextInt(WAYS.size());
        members.append(i == 0 ? "#" : ",#").append(member);
        if (random.nextInt(200) > 0) {
          records.append("#%d=%s;\n".formatted(member, WAYS.get(way).formatted(names.get(i))));
        }
      }
      records.append("#%d=IFCPROPERTYSET('s',$,'Set',$,(%s));\n".formatted(id + 1, members));
      records.append(
          "#%d=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#%d),#%d);\n".formatted(id + 2, id, id + 1));
    }
    return InlineModel.file("IFC4", records.toString());
  }
}
