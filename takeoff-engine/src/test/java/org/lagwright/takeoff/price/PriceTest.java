package org.lagwright.takeoff.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Finding;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.order.Goods;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.settings.SettingsReader;

/** Prices through the takeoff as a whole. */
class PriceTest {

  private static final double TINY = 1e-9;
  private static final String TERMS = "list: prices.csv, currency: EUR, labourRatePerH: 40";

  @TempDir Path folder;

  @Test
  void withoutPriceListThereIsNoPrice() {
    Takeoff takeoff =
        Takeoff.of(List.of(TestElement.model(chilled(1, 5))), SettingsReader.defaults());

    assertThat(takeoff.price()).isNull();
    assertThat(takeoff.labour().hours()).isPositive();
    assertThat(takeoff.order().items()).isNotEmpty();
  }

  @Test
  void whatIsBoughtIsPaidByTheRowOfItsMaterialBoreAndThickness() throws IOException {
    Takeoff takeoff =
        takeoff(
            TERMS,
            "goods,material,boreMm,thicknessMm,unit,price",
            "tube,fef_nbr,60,25,m,11",
            "tube,fef_nbr,60,32,m,7.50",
            "tube,fef_nbr,76,32,m,9",
            "tube,fef_epdm,60,32,m,8");
    OrderItem tube = item(takeoff, Goods.TUBE);
    PricedItem priced = priced(takeoff, tube);

    assertThat(tube.thicknessM()).isEqualTo(0.032);
    assertThat(Objects.requireNonNull(priced.row()).place()).isEqualTo("prices.csv, row 3");
    assertThat(priced.amount()).isCloseTo(tube.boughtQuantity() * 7.5, within(TINY));
    assertThat(priced.net() + priced.beyondNet()).isCloseTo(priced.amount(), within(TINY));
    assertThat(priced.beyondNet()).isPositive();
  }

  @Test
  void aPriceOfAPackCountsPacks() throws IOException {
    Takeoff takeoff = takeoff(TERMS, "goods,unit,price", "tube,pack,15");
    OrderItem tube = item(takeoff, Goods.TUBE);

    assertThat(priced(takeoff, tube).amount()).isCloseTo(tube.packs() * 15.0, within(TINY));
  }

  @Test
  void whatHasNoPriceIsAFindingAndStaysInThePriceAsAnItem() throws IOException {
    Takeoff takeoff =
        takeoff(TERMS, "goods,material,boreMm,thicknessMm,unit,price", "tube,fef_nbr,114,32,m,7.5");
    OrderItem tube = item(takeoff, Goods.TUBE);
    Price price = price(takeoff);

    assertThat(price.withoutPrice()).contains(tube);
    assertThat(price.items()).hasSameSizeAs(takeoff.order().items());
    assertThat(takeoff.findings())
        .filteredOn(f -> f.code() == TakeoffFinding.PRICE_MISSING)
        .hasSize(price.withoutPrice().size())
        .extracting(Finding::message)
        .anyMatch(message -> message.contains(tube.id() + ", " + tube.description()));
    assertThat(price.buildUp().materials()).isZero();
  }

  @Test
  void aPriceInAnotherUnitIsNone() throws IOException {
    Takeoff takeoff = takeoff(TERMS, "goods,unit,price", "tube,pcs,15");

    assertThat(price(takeoff).withoutPrice()).contains(item(takeoff, Goods.TUBE));
  }

  @Test
  void labourOverheadProfitAndTaxComeOnTop() throws IOException {
    String terms = TERMS + ", toolsPct: 5, overheadPct: 10, marginPct: 20, taxPct: 19";
    Takeoff takeoff = takeoff(terms, "goods,unit,price", "tube,m,10");
    BuildUp up = price(takeoff).buildUp();
    double hours = takeoff.labour().hours();
    double cost = (item(takeoff, Goods.TUBE).boughtQuantity() * 10 + hours * 40 * 1.05) * 1.10;

    assertThat(up.labour()).isCloseTo(hours * 40, within(TINY));
    assertThat(up.cost()).isCloseTo(cost, within(TINY));
    assertThat(up.beforeTax()).isCloseTo(cost / 0.8, within(TINY));
    assertThat(up.profit()).isCloseTo(0.2 * up.beforeTax(), within(TINY));
    assertThat(up.total()).isCloseTo(cost / 0.8 * 1.19, within(TINY));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "goods,unit,price;tubes,m,1 | prices.csv:2:1: 'tubes' is no goods. Known: ",
        "goods,unit,price;tube,yd,1 | prices.csv:2:2: 'yd' is no unit. Known: l, m, m2, pack, pcs.",
        "goods,unit,price;tube,m,cheap | prices.csv:2:3: 'cheap' is no number.",
        "goods,unit,price;tube,m,-1 | prices.csv:2:3: a price must not be below 0.",
        "goods,unit,price;tube,m, | prices.csv:2:3: 'price' is empty.",
        "goods,unit,price,material;tube,m,1,hay | prices.csv:2:4: 'hay' is no material. Known: ",
        "goods,unit,price,boreMm;tube,m,1,0 | prices.csv:2:4: it must be above 0 mm.",
        "goods,unit,price;tube,m,1;tube,m,2 | prices.csv:3:3: the same goods have a price in ",
        "goods,price;tube,1 | prices.csv:1: the column 'unit' is missing.",
        "goods,unit,price,rebate;tube,m,1,2 | prices.csv:1:4: unknown column 'rebate'."
      })
  void aWrongPriceIsNamedWithFileLineAndColumn(String table, String message) throws IOException {
    Path settings = settings(TERMS, table.split(";"));

    assertThatThrownBy(() -> SettingsReader.read(settings))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "list: none.csv, currency: EUR, labourRatePerH: 40 | none.csv: no such file.",
        "list: prices.csv, currency: EUR | settings.yaml:1:1: 'labourRatePerH' is missing here.",
        "list: prices.csv, labourRatePerH: 40 | settings.yaml:1:1: 'currency' is missing here.",
        "list: prices.csv, currency: EUR, labourRatePerH: -1 | labourRatePerH must be 0 or more.",
        "list: prices.csv, currency: EUR, labourRatePerH: 1, marginPct: 100 | marginPct must lie",
        "list: prices.csv, currency: EUR, labourRatePerH: 1, marginPct: 5, markupPct: 5 | exclude",
        "list: prices.csv, currency: EUR, labourRatePerH: 1, taxPct: 101 | taxPct must lie between",
        "list: prices.csv, rebate: 5 | settings.yaml:1:27: unknown key 'rebate'."
      })
  void aWrongSettingOfThePriceIsNamedWithItsPlace(String terms, String message) throws IOException {
    Path settings = settings(terms, "goods,unit,price", "tube,m,1");

    assertThatThrownBy(() -> SettingsReader.read(settings))
        .isInstanceOf(PackException.class)
        .hasMessageContaining(message);
  }

  private static TestElement chilled(long step, double lengthM) {
    return TestElement.pipe(step, 60.3, lengthM).inSystem("CHWS");
  }

  private static OrderItem item(Takeoff takeoff, Goods goods) {
    return takeoff.order().items().stream()
        .filter(item -> item.goods() == goods)
        .findFirst()
        .orElseThrow();
  }

  private static Price price(Takeoff takeoff) {
    return Objects.requireNonNull(takeoff.price());
  }

  private static PricedItem priced(Takeoff takeoff, OrderItem item) {
    return price(takeoff).items().stream()
        .filter(priced -> priced.item().equals(item))
        .findFirst()
        .orElseThrow();
  }

  private Path settings(String terms, String... table) throws IOException {
    Files.writeString(folder.resolve("prices.csv"), String.join("\n", table) + "\n");
    return Files.writeString(folder.resolve("settings.yaml"), "price: {" + terms + "}\n");
  }

  private Takeoff takeoff(String terms, String... table) throws IOException {
    return Takeoff.of(
        List.of(TestElement.model(chilled(1, 5))), SettingsReader.read(settings(terms, table)));
  }
}
