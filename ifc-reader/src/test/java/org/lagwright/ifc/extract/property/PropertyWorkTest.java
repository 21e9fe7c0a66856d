package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;

/**
 * What reading properties costs, counted in bytes that the thread asks for: those that answer no
 * question are most of any file and must not be decoded.
 */
class PropertyWorkTest {

  private static final int PER_SET = 40;

  /** A decoded record alone takes more: arguments, their places, the record and its wrapping. */
  private static final long BYTES_PER_PROPERTY = 110;

  @Test
  void propertiesThatAnswerNothingAreNotDecoded() {
    long few = bytes(10, "Remark");
    long many = bytes(40, "Remark");

    assertThat((many - few) / (30 * PER_SET)).isLessThan(BYTES_PER_PROPERTY);
  }

  @Test
  void workGrowsWithTheNumberOfRelatedPropertiesAndNotFaster() {
    long few = bytes(20, "Length");
    long many = bytes(80, "Length");

    assertThat(bytes(20, "Remark")).isLessThan(few);
    assertThat((double) many / few).isLessThan(4.4);
  }

  /** Sets of 40 properties each on one pipe; the first of each set has the name. */
  private static long bytes(int sets, String name) {
    StringBuilder records = new StringBuilder("#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);\n");
    for (int set = 0; set < sets; set++) {
      int id = 1000 * (set + 1);
      StringBuilder members = new StringBuilder();
      for (int i = 1; i <= PER_SET; i++) {
        members.append(i == 1 ? "#" : ",#").append(id + i);
        records.append(
            "#%d=IFCPROPERTYSINGLEVALUE('%s',$,IFCREAL(5.),$);\n"
                .formatted(id + i, i == 1 ? name : "Remark " + i));
      }
      records.append("#%d=IFCPROPERTYSET('s',$,'Set %d',$,(%s));\n".formatted(id, set, members));
      records.append("#%d=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#%d);\n".formatted(id - 1, id));
    }
    PropertyReader properties =
        InlineModel.propertyReader(InlineModel.file("IFC4", InlineModel.MILLIMETRES + records));
    properties.wantedOf(1);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    properties.wantedOf(1);
    return threads.getCurrentThreadAllocatedBytes() - before;
  }
}
