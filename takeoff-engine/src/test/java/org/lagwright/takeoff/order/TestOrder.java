package org.lagwright.takeoff.order;

import java.util.List;
import java.util.stream.Stream;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Orders for a few elements of the system CHWS. */
final class TestOrder {

  private TestOrder() {}

  static TestElement chilled(long step, double outsideMm, double lengthM) {
    return TestElement.pipe(step, outsideMm, lengthM).inSystem("CHWS");
  }

  static TestElement fitting(long step, Form form, double outsideMm) {
    return TestElement.fitting(step, form, outsideMm).inSystem("CHWS");
  }

  static OrderList of(TestElement... elements) {
    return of(SettingsReader.defaults(), elements);
  }

  static OrderList of(Settings settings, TestElement... elements) {
    return takeoff(settings, elements).order();
  }

  static Takeoff takeoff(Settings settings, TestElement... elements) {
    return Takeoff.of(
        List.of(TestElement.model(Stream.of(elements).map(TestElement::build).toList())), settings);
  }

  static OrderItem only(OrderList order, Goods goods) {
    List<OrderItem> items = order.items().stream().filter(i -> i.goods() == goods).toList();
    if (items.size() != 1) {
      throw new AssertionError(items.size() + " items of " + goods + ": " + order.items());
    }
    return items.get(0);
  }
}
