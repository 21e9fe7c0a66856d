package org.lagwright.takeoff.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Form;

class TubeOrderTest {

  @Test
  void straightsAndBendsOfOneSizeShareTheirTubes() {
    // 1.9 m, 1.9 m and a bend; the bend is cut from the rest of neither, two runs of 1.9 leave 0.1
    OrderList order =
        TestOrder.of(
            TestOrder.chilled(1, 60.3, 1.9),
            TestOrder.chilled(2, 60.3, 1.5),
            TestOrder.fitting(3, Form.BEND, 60.3).bend(90, 0.0762));

    OrderItem tube = TestOrder.only(order, Goods.TUBE);
    assertThat(tube.boreM()).isEqualTo(0.060);
    assertThat(tube.packs()).isEqualTo(2);
    assertThat(tube.elements()).hasSize(3);
    assertThat(tube.netQuantity()).isBetween(3.4 + 0.1, 3.4 + 0.2);
    assertThat(tube.netQuantity() + tube.wasteQuantity() + tube.allowanceQuantity())
        .isCloseTo(tube.grossQuantity(), within(1e-12));
    assertThat(tube.spareQuantity()).isCloseTo(4 - tube.grossQuantity(), within(1e-9));
  }

  @Test
  void piecesOfABendThatAlternateShareTheirCuts() {
    OrderList order = TestOrder.of(TestOrder.fitting(3, Form.BEND, 114.3).bend(90, 0.1524));

    CuttingPlan plan = order.tubePlans().get(0).plan();
    List<Cut> cuts = plan.pieces().get(0).cuts();
    assertThat(cuts).hasSize(1);
    assertThat(cuts.get(0).purpose()).contains("pieces in one length");
    int pieces = Integer.parseInt(cuts.get(0).purpose().split(" ", -1)[1]);
    // TRADE practice: tube used = 2 (n - 1) R tan(alpha), alpha = theta / (2 (n - 1))
    double alpha = Math.PI / 4 / (pieces - 1);
    assertThat(cuts.get(0).lengthM())
        .isCloseTo(2 * (pieces - 1) * 0.1524 * Math.tan(alpha), within(0.06));
  }

  @Test
  void runLongerThanATubeIsCutFromSeveral() {
    OrderList order = TestOrder.of(TestOrder.chilled(1, 60.3, 5.3));

    OrderItem tube = TestOrder.only(order, Goods.TUBE);
    assertThat(tube.netQuantity()).isCloseTo(5.3, within(1e-9));
    assertThat(tube.packs()).isEqualTo(3);
    assertThat(tube.wasteQuantity()).isZero();
    assertThat(tube.allowanceQuantity()).isCloseTo(0.053, within(1e-9));
  }

  @Test
  void allowanceIsTakenFromOffcutsBeforeAnotherTubeIsBought() {
    PackSize tube = new PackSize("tube of 2 m", 2);

    // 3 tubes, 5.5 m used, 0.3 m usable, 0.2 m not
    assertThat(Planned.of(3, tube, 5.5, 0.3, 0.1)).isEqualTo(new Planned(0.2, 3));
    Planned more = Planned.of(3, tube, 5.5, 0.3, 0.4);
    assertThat(more.packs()).isEqualTo(3);
    assertThat(more.wasteQuantity()).isCloseTo(0.1, within(1e-12));
    assertThat(Planned.of(3, tube, 5.5, 0.3, 0.6)).isEqualTo(new Planned(0, 4));
  }
}
