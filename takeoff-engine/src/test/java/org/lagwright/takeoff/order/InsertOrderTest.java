package org.lagwright.takeoff.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.order.HangerPack.SpacingTable;
import org.lagwright.takeoff.pack.SourceStatus;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

class InsertOrderTest {

  @Test
  void withoutHangersInTheModelTheSpacingTableCounts() {
    // MSS SP-69: 2 in steel with water each 10 ft; 9 m over 3.048 m are 3, and one more
    OrderList order =
        TestOrder.of(
            TestOrder.chilled(1, 60.3, 4).joinedTo(2), TestOrder.chilled(2, 60.3, 5).joinedTo(1));

    OrderItem insert = TestOrder.only(order, Goods.INSERT);
    assertThat(insert.netQuantity()).isCloseTo(4, within(1e-9));
    assertThat(insert.packs()).isEqualTo(4);
    assertThat(insert.elements()).hasSize(2);
    assertThat(insert.rule()).contains("3.05 m");
    assertThat(insert.status()).isEqualTo(SourceStatus.MEMORY);
  }

  @Test
  void hangersOfTheModelCountWhereTheyReachThePipe() {
    OrderList order =
        TestOrder.of(
            TestOrder.chilled(1, 60.3, 6).end(0, 0, -1, 0).end(6, 0, 1, 0),
            hanger(11, "Hanger 1", 1, 0.1),
            hanger(12, "Rohrschelle DN50", 3, -0.2),
            hanger(13, "Hanger 3", 5, 3),
            hanger(14, "Cable ladder", 2, 0));

    OrderItem insert = TestOrder.only(order, Goods.INSERT);
    assertThat(insert.netQuantity()).isEqualTo(2);
    assertThat(insert.rule()).isEqualTo("2 hangers that the model shows");
  }

  @Test
  void settingsMayCountNoneWhereTheModelShowsNone(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("settings.yaml"), "order: {hangers: none}\n");
    Settings none = SettingsReader.read(file);
    TestElement pipe = TestOrder.chilled(1, 60.3, 6).end(0, 0, -1, 0).end(6, 0, 1, 0);

    assertThat(TestOrder.of(none, pipe).items()).noneMatch(item -> item.goods() == Goods.INSERT);
    OrderList shown = TestOrder.of(none, pipe, hanger(11, "Hanger 1", 1, 0.1));
    assertThat(TestOrder.only(shown, Goods.INSERT).netQuantity()).isEqualTo(1);
  }

  @Test
  void hotPipesAndDuctsNeedNone() {
    OrderList order =
        TestOrder.of(
            TestElement.pipe(1, 60.3, 6).inSystem("Heating flow"),
            TestElement.duct(2, 600, 300, 6).inSystem("Supply air 1"));

    assertThat(order.items()).noneMatch(item -> item.goods() == Goods.INSERT);
  }

  @Test
  void spacingIsThatOfTheLargestListedSizeThatIsNotLarger() {
    SpacingTable table = HangerPack.bundled().findTable("us-steel-water").orElseThrow();

    assertThat(table.spanM(0.0603)).isCloseTo(10 * 0.3048, within(1e-9));
    assertThat(table.spanM(0.0424)).isCloseTo(7 * 0.3048, within(1e-9));
    assertThat(table.spanM(0.010)).isCloseTo(7 * 0.3048, within(1e-9));
    assertThat(table.spanM(1.0)).isCloseTo(32 * 0.3048, within(1e-9));
  }

  @Test
  void tablesThatNobodyReadAreShownAsUnverified() {
    List<SpacingTable> tables = HangerPack.bundled().tables();

    assertThat(tables).hasSizeGreaterThan(5);
    assertThat(tables)
        .filteredOn(table -> table.source().contains("from memory") && table.id().startsWith("de"))
        .isNotEmpty()
        .allSatisfy(table -> assertThat(table.status().shown()).startsWith("unverified"));
  }

  private static TestElement hanger(long step, String name, double x, double y) {
    return TestElement.ofClass(step, "IFCDISCRETEACCESSORY", Kind.OTHER, Form.APPARATUS)
        .named(name)
        .middle(x, y);
  }
}
