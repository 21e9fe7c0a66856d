package org.lagwright.takeoff.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.pack.SourceStatus;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

class SuppliesTest {

  @TempDir Path folder;

  static java.util.List<ReferenceRows.Row> checks() {
    return ReferenceRows.read(SuppliesTest.class, "consumption.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void consumptionAgreesWithTheFigureDerivedApart(ReferenceRows.Row row) {
    double expected = row.number("expected");
    double a = row.number("a");
    double b = row.number("b");
    double found =
        switch (row.text("quantity")) {
          case "adhesive-l" -> Consumption.adhesiveL(a, b);
          case "lap-factor" -> Consumption.lapFactor(Math.PI * a, b, row.number("c"));
          case "tape-ring-m" -> Consumption.tapeRingM(a, b);
          case "bead-ml-per-m" -> Consumption.beadM3PerM(a) * 1e6;
          default -> throw new IllegalArgumentException(row.line());
        };

    assertThat(found).isCloseTo(expected, within(row.tolerance(expected)));
  }

  @Test
  void adhesiveOfARunIsThatOfItsSeamsAndButtJoints() throws IOException {
    // pipe of 114.3 mm is slit and glued; 100 m in 2 m tubes: 50 pieces with two coated ends each
    Settings settings = settings("thicknessesMm: {chilled-water-flow: 25}\nenergyRule: none\n");
    OrderList order = TestOrder.of(settings, TestOrder.chilled(1, 114.3, 100));

    OrderItem tube = TestOrder.only(order, Goods.TUBE);
    double s = tube.thicknessM();
    double ringM2 = Math.PI * s * (0.1143 + s);
    OrderItem adhesive = TestOrder.only(order, Goods.ADHESIVE);
    assertThat(adhesive.netQuantity())
        .isCloseTo((100 * 2 * s + 50 * 2 * ringM2) / 2.5, within(1e-6));
    assertThat(adhesive.allowanceQuantity()).isCloseTo(adhesive.netQuantity() * 0.1, within(1e-9));
    assertThat(adhesive.packs()).isEqualTo((int) Math.ceil(adhesive.grossQuantity() / 2.5));
    assertThat(adhesive.status()).isEqualTo(SourceStatus.COMMON_PRACTICE);
    assertThat(adhesive.status().shown()).startsWith("unverified");
    assertThat(TestOrder.only(order, Goods.CLEANER).netQuantity())
        .isCloseTo(adhesive.netQuantity() * 0.1, within(1e-9));
    double ringM = Consumption.tapeRingM(0.1143 + 2 * s, 0.05);
    assertThat(TestOrder.only(order, Goods.TAPE).netQuantity())
        .isCloseTo(50 * ringM + 103, within(1e-6));
  }

  @Test
  void tubePushedOnHasNoSeamToGlue() {
    OrderList order = TestOrder.of(TestOrder.chilled(1, 21.3, 2));

    double s = TestOrder.only(order, Goods.TUBE).thicknessM();
    assertThat(TestOrder.only(order, Goods.ADHESIVE).netQuantity())
        .isCloseTo(2 * Math.PI * s * (0.0213 + s) / 2.5, within(1e-6));
    assertThat(TestOrder.only(order, Goods.TAPE).netQuantity())
        .isCloseTo(Consumption.tapeRingM(0.0213 + 2 * s, 0.05), within(1e-6));
  }

  @Test
  void endsOfColdPipesThatMeetNothingInsulatedAreSealed() {
    OrderList order =
        TestOrder.of(
            TestOrder.chilled(1, 60.3, 2).joinedTo(2).freePort(),
            TestOrder.chilled(2, 60.3, 2).joinedTo(1, 3),
            TestElement.of(3, Kind.EQUIPMENT, Form.APPARATUS).named("Chiller 1").joinedTo(2));

    // two rings of 60.3 mm with a bead of 6 mm: 28.3 ml each metre
    assertThat(TestOrder.only(order, Goods.SEALANT).netQuantity())
        .isCloseTo(2 * Math.PI * 0.0603 * 0.0283, within(1e-4));
  }

  @Test
  void rigidSectionsAreWiredAndNotGlued() {
    OrderList order = TestOrder.of(TestElement.pipe(1, 60.3, 2.25).inSystem("Heating flow"));

    OrderItem section = TestOrder.only(order, Goods.SECTION);
    double outerM = 0.0603 + 2 * section.thicknessM();
    assertThat(TestOrder.only(order, Goods.WIRE).netQuantity())
        .isCloseTo(10 * (Math.PI * outerM + 0.1), within(1e-6));
    assertThat(order.items()).noneMatch(item -> item.goods() == Goods.ADHESIVE);
  }

  @Test
  void panelsOfDuctsAreNestedAndTheirJointsGlued() {
    OrderList order = TestOrder.of(TestElement.duct(1, 600, 300, 2).inSystem("Supply air 1"));

    OrderItem sheet = TestOrder.only(order, Goods.SHEET);
    double s = sheet.thicknessM();
    assertThat(sheet.netQuantity()).isCloseTo(2 * 2 * (0.6 + 0.3 + 2 * s), within(1e-9));
    assertThat(order.sheetPlans()).hasSize(1);
    assertThat(order.sheetPlans().get(0).itemId()).isEqualTo(sheet.id());
    assertThat(sheet.wasteQuantity() + sheet.netQuantity())
        .isLessThanOrEqualTo(order.sheetPlans().get(0).plan().boughtAreaM2() + 1e-9);
    assertThat(TestOrder.only(order, Goods.ADHESIVE).rule()).contains("glued areas");
  }

  @Test
  void jacketStandsWhereTheSettingsAskForIt() throws IOException {
    Settings settings =
        settings(
            """
            order:
              jackets:
                - {jacket: none, service: chilled-water-return}
                - {jacket: metal, location: indoor}
            """);
    OrderList order =
        TestOrder.of(
            settings, TestOrder.chilled(1, 60.3, 3), TestElement.pipe(2, 60.3, 3).inSystem("CHWR"));

    OrderItem tube = TestOrder.only(order, Goods.TUBE);
    double girthM = Math.PI * (0.0603 + 2 * tube.thicknessM());
    OrderItem jacket = TestOrder.only(order, Goods.JACKET);
    assertThat(jacket.elements()).containsExactly(TestElement.key(1));
    assertThat(jacket.netQuantity())
        .isCloseTo(girthM * 3 * Consumption.lapFactor(girthM, 0.05, 1), within(1e-9));
    assertThat(jacket.allowanceQuantity()).isCloseTo(jacket.netQuantity() * 0.12, within(1e-9));
    assertThat(TestOrder.only(order, Goods.BAND).netQuantity())
        .isCloseTo(11 * (girthM + 0.1), within(1e-9));
  }

  @Test
  void fixingsSitOnSeamsAndJointsOfTheSheetsFromTheirDiameterOn() throws IOException {
    Settings plastic = settings("order: {jackets: [{jacket: plastic}]}\n");
    OrderList thin = TestOrder.of(plastic, TestOrder.chilled(1, 60.3, 3));
    double girthM = Math.PI * (0.0603 + 2 * TestOrder.only(thin, Goods.TUBE).thicknessM());
    double courseM = OrderPack.bundled().jacket("plastic").courseM();
    // 3 m of seam by 150 mm, and round each joint of two sheets
    double joints = Math.ceil(3 / courseM - 1e-9);

    OrderItem fixing = TestOrder.only(thin, Goods.FIXING);
    assertThat(fixing.netQuantity()).isEqualTo(20 + joints * Math.ceil(girthM / 0.15));
    assertThat(fixing.allowanceQuantity()).isCloseTo(fixing.netQuantity() * 0.05, within(1e-9));
    assertThat(fixing.rule()).isEqualTo("one each 150 mm of seams and of joints of sheets");

    Settings metal = settings("order: {jackets: [{jacket: metal}]}\n");
    assertThat(TestOrder.of(metal, TestOrder.chilled(1, 60.3, 3)).items())
        .noneMatch(item -> item.goods() == Goods.FIXING);
    OrderList wide = TestOrder.of(metal, TestOrder.chilled(1, 813, 3));
    assertThat(TestOrder.only(wide, Goods.FIXING).netQuantity()).isGreaterThan(20);
  }

  @Test
  void pinsHoldFibrousSheetOnSidesWiderThanTheLimitOnly() throws IOException {
    Settings fibrous = settings("materials: {air: duct_wrap}\n");
    OrderList order =
        TestOrder.of(fibrous, TestElement.duct(1, 600, 300, 2).inSystem("Supply air"));
    double s = TestOrder.only(order, Goods.SHEET).thicknessM();
    double outerM2 = 2 * 2 * (0.6 + 0.3 + 4 * s);

    OrderItem pin = TestOrder.only(order, Goods.PIN);
    assertThat(pin.netQuantity()).isEqualTo(Math.ceil(outerM2 * 0.6 / 0.9 * 12));
    assertThat(pin.unit()).isEqualTo("pcs");
    assertThat(pin.status().shown()).startsWith("unverified");
    assertThat(
            TestOrder.of(fibrous, TestElement.duct(1, 450, 300, 2).inSystem("Supply air")).items())
        .noneMatch(item -> item.goods() == Goods.PIN);
    assertThat(TestOrder.of(TestElement.duct(1, 600, 300, 2).inSystem("Supply air")).items())
        .noneMatch(item -> item.goods() == Goods.PIN);
  }

  @Test
  void withoutRulesThereIsNoJacket() {
    assertThat(TestOrder.of(TestOrder.chilled(1, 60.3, 3)).items())
        .noneMatch(item -> item.goods() == Goods.JACKET || item.goods() == Goods.BAND);
  }

  private Settings settings(String text) throws IOException {
    return SettingsReader.read(Files.writeString(folder.resolve("settings.yaml"), text));
  }
}
