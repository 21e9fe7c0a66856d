package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.Network.at;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Run;

/** Branches of one file on the side of a main of another are joined as they are within a file. */
class CrossTapsTest {

  private static final double TOLERANCE_M = ReadOptions.DEFAULT.joinToleranceM();
  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  private static List<MepModel> join(Network... files) {
    return ModelJoiner.join(
        IntStream.range(0, files.length).mapToObj(i -> files[i].read(i)).toList(), TOLERANCE_M);
  }

  private static Network main(double diameterMm) {
    return new Network().pipe(1, at(0, 0, 0), EAST, 2000, diameterMm);
  }

  private static Network branch(double yMm) {
    return new Network().pipe(2, at(700, yMm, 0), NORTH, 500, 33.7);
  }

  private static List<Port> taps(MepElement element) {
    return element.ports().stream().filter(Port::tap).toList();
  }

  private static List<String> codes(List<MepModel> models) {
    return models.stream().flatMap(m -> InlineModel.codes(m).stream()).toList();
  }

  @ParameterizedTest
  @CsvSource({"57.15,true", "59.1,true", "59.2,false", "0,true", "-10,false"})
  void endAtTheSideOfAMainOfAnotherFileIsJoined(double yMm, boolean joined) {
    for (boolean mainFirst : new boolean[] {true, false}) {
      List<MepModel> models =
          mainFirst ? join(main(114.3), branch(yMm)) : join(branch(yMm), main(114.3));
      int withMain = mainFirst ? 0 : 1;
      MepElement main = element(models.get(withMain), 1000);
      MepElement branch = element(models.get(1 - withMain), 2000);

      assertThat(taps(main)).hasSize(joined ? 1 : 0);
      assertThat(taps(branch)).hasSize(joined ? 1 : 0);
      if (joined) {
        assertThat(taps(main).get(0).connectedTo()).isEqualTo(branch.key());
        assertThat(taps(branch).get(0).connectedTo()).isEqualTo(main.key());
        assertThat(codes(models)).containsOnlyOnce("FILES_CONNECTED");
      } else {
        assertThat(codes(models)).doesNotContain("FILES_CONNECTED");
      }
    }
  }

  /** Main and branch both have their ports, and the file of neither connects them. */
  @Test
  void endAtAPortAtTheSideOfAMainOfAnotherFileIsATap() {
    Network mains =
        main(114.3)
            .port(1, 1, at(0, 0, 0), at(-1, 0, 0))
            .port(1, 2, at(2000, 0, 0), EAST)
            .port(1, 3, at(700, 57.15, 0), NORTH);
    Network branches =
        branch(57.15)
            .port(2, 1, at(700, 57.15, 0), at(0, -1, 0))
            .port(2, 2, at(700, 557.15, 0), NORTH);
    List<MepModel> models = join(mains, branches);

    assertThat(taps(element(models.get(0), 1000)))
        .extracting(Port::connectedTo)
        .containsExactly(element(models.get(1), 2000).key());
    assertThat(taps(element(models.get(1), 2000)))
        .extracting(Port::connectedTo)
        .containsExactly(element(models.get(0), 1000).key());
  }

  @Test
  void runOfTheMainGoesThroughAndThatOfTheBranchIsItsOwn() {
    Network mains = main(114.3).pipe(3, at(2000, 0, 0), EAST, 1000, 114.3);
    List<MepModel> models = join(mains, branch(57.15));
    List<MepElement> elements = models.stream().flatMap(m -> m.elements().stream()).toList();

    assertThat(Run.of(elements))
        .extracting(run -> Math.round(run.lengthM() * 1000))
        .containsExactlyInAnyOrder(3000L, 500L);
  }

  @Test
  void endThatMeetsAnEndOfAnotherFileIsNotJoinedToASideToo() {
    Network onwards = new Network().pipe(6, at(700, 557.15, 0), NORTH, 500, 33.7);
    Network around = new Network().pipe(5, at(0, 557.15, 0), EAST, 2000, 114.3);
    List<MepModel> models = join(branch(57.15), onwards, around);

    MepElement branch = element(models.get(0), 2000);
    assertThat(branch.ports().stream().filter(p -> p.connectedTo() != null))
        .extracting(Port::connectedTo)
        .containsExactly(new ElementKey(1, 6000));
    assertThat(taps(branch)).isEmpty();
  }

  @Test
  void pipeIsNotJoinedToTheSideOfADuctOfAnotherFile() {
    Network duct = new Network().straight(1, "IFCDUCTSEGMENT", at(0, 0, 0), EAST, 2000, 114.3);

    assertThat(taps(element(join(duct, branch(57.15)).get(1), 2000))).isEmpty();
  }

  /** Its own port there takes the joint, and says that no file connects it. */
  @Test
  void portOfTheBranchThatIsConnectedToNothingTakesTheJoint() {
    Network branch =
        branch(57.15)
            .port(2, 1, at(700, 57.15, 0), at(0, -1, 0))
            .port(2, 2, at(700, 557.15, 0), NORTH);
    List<Port> ports = element(join(main(114.3), branch).get(1), 2000).ports();

    assertThat(ports).hasSize(2);
    assertThat(ports.get(0).isInFile()).isTrue();
    assertThat(ports.get(0).tap()).isTrue();
    assertThat(ports.get(0).touching()).isTrue();
    assertThat(ports.get(1).connectedTo()).isNull();
  }

  /** What repeats an element of an earlier file is joined in its place. */
  @Test
  void mainThatStandsInBothFilesIsJoinedOnce() {
    Network both = branch(57.15).pipe(1, at(0, 0, 0), EAST, 2000, 114.3);
    List<MepModel> models = join(main(114.3), both);

    assertThat(element(models.get(1), 1000).repeats()).isEqualTo(new ElementKey(0, 1000));
    assertThat(taps(element(models.get(1), 2000))).hasSize(1);
  }

  private record Piece(int n, double[] at, double[] along, double lengthMm, double diameterMm) {
    void into(Network network) {
      network.pipe(n, at, along, lengthMm, diameterMm);
    }
  }

  /** Mains and branches at random in one file, and the same ones dealt out to three. */
  @Test
  void branchesAreJoinedAsTheyAreWhenAllIsInOneFile() {
    long seed = 20261126;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    int found = 0;
    for (int round = 0; round < 20; round++) {
      List<Piece> pieces = pieces(random);
      Network one = new Network();
      Network[] three = {new Network(), new Network(), new Network()};
      for (Piece piece : pieces) {
        piece.into(one);
        piece.into(three[random.nextInt(three.length)]);
      }
      List<String> expected = joints(join(one));

      assertThat(joints(join(three))).isEqualTo(expected);
      found += expected.size();
    }
    assertThat(found).isGreaterThan(100);
  }

  /** Mains far from each other, with branches on them, off them and through them. */
  private static List<Piece> pieces(Random random) {
    List<Piece> pieces = new ArrayList<>();
    for (int m = 0; m < 4; m++) {
      double[] start = at(20_000 * m, random.nextInt(9000), random.nextInt(9000));
      Vector along = Vector.random(random);
      pieces.add(new Piece(10 * m + 1, start, along.array(), 8000, 114.3));
      for (int b = 0; b < 5; b++) {
        Vector out = Vector.random(random).across(along);
        double offMm = 50 + 12 * random.nextDouble();
        double[] foot = along.from(start, 1000 + 1200 * b);
        pieces.add(new Piece(10 * m + 2 + b, out.from(foot, offMm), out.array(), 500, 33.7));
      }
    }
    return pieces;
  }

  private record Vector(double x, double y, double z) {
    static Vector random(Random random) {
      return new Vector(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
    }

    Vector unit() {
      double norm = Math.sqrt(x * x + y * y + z * z);
      return new Vector(x / norm, y / norm, z / norm);
    }

    Vector across(Vector unit) {
      double dot = x * unit.x + y * unit.y + z * unit.z;
      return new Vector(x - dot * unit.x, y - dot * unit.y, z - dot * unit.z).unit();
    }

    double[] from(double[] start, double mm) {
      return at(start[0] + mm * x, start[1] + mm * y, start[2] + mm * z);
    }

    double[] array() {
      return at(x, y, z);
    }
  }

  private static List<String> joints(List<MepModel> models) {
    return models.stream()
        .flatMap(model -> model.elements().stream())
        .flatMap(e -> taps(e).stream().map(tap -> e.key().step() + "-" + other(tap)))
        .sorted(Comparator.naturalOrder())
        .toList();
  }

  private static long other(Port tap) {
    return Objects.requireNonNull(tap.connectedTo()).step();
  }
}
