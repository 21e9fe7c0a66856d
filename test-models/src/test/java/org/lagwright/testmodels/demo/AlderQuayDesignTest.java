package org.lagwright.testmodels.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Vec;

/** The building must hang together before anybody measures it. */
class AlderQuayDesignTest {

  private static final double TOLERANCE_MM = 1e-6;

  private final Plan plan = AlderQuay.plan();

  @Test
  void joinedPortsCoincideAndLookAtEachOther() {
    for (Plan.Joint joint : plan.joints()) {
      assertThat(joint.source().at().minus(joint.sink().at()).length())
          .as("%s to %s", joint.source().piece().key(), joint.sink().piece().key())
          .isLessThan(TOLERANCE_MM);
      assertThat(joint.source().out().dot(joint.sink().out())).isCloseTo(-1, within(1e-9));
    }
  }

  @Test
  void joinedPiecesHaveTheSameSize() {
    for (Plan.Joint joint : plan.joints()) {
      Piece one = joint.source().piece();
      Piece other = joint.sink().piece();
      boolean segments = one.kind().endsWith("segment") && other.kind().endsWith("segment");
      if (segments) {
        assertThat(one.measure().size()).as(one.key()).isEqualTo(other.measure().size());
      }
    }
  }

  @Test
  void noPortIsJoinedTwice() {
    Set<Plan.Port> joined = new HashSet<>();
    for (Plan.Joint joint : plan.joints()) {
      assertThat(joined.add(joint.source())).isTrue();
      assertThat(joined.add(joint.sink())).isTrue();
    }
  }

  @Test
  void onlyTheNamelessRunAndTheWaterEntryHaveOpenEnds() {
    Set<Plan.Port> open = new HashSet<>(plan.ports());
    for (Plan.Joint joint : plan.joints()) {
      open.remove(joint.source());
      open.remove(joint.sink());
    }
    assertThat(open)
        .extracting(port -> port.piece().key())
        .containsExactlyInAnyOrder("? 001", "? 003", "DCW 001");
  }

  @Test
  void everyPieceThatCarriesAMediumHasPortsExceptTheOneWithoutGeometry() {
    for (Piece piece : plan.pieces()) {
      long ports = plan.ports().stream().filter(p -> p.piece().equals(piece)).count();
      long least = piece.bodies().isEmpty() || !piece.isMep() ? 0 : least(piece);
      assertThat(ports).as(piece.key()).isGreaterThanOrEqualTo(least);
    }
  }

  private static long least(Piece piece) {
    return switch (piece.what().form()) {
      case "apparatus", "cap" -> 1;
      case "tee" -> 3;
      default -> 2;
    };
  }

  @Test
  void exactlyOnePieceHasNoGeometry() {
    assertThat(plan.pieces()).filteredOn(p -> p.bodies().isEmpty()).hasSize(1);
  }

  @Test
  void portsOfApparatusLieOnItsSurface() {
    for (Plan.Port port : plan.ports()) {
      if (port.piece().system() == null) {
        assertThat(distanceToBox(port)).as(port.piece().key()).isLessThan(TOLERANCE_MM);
      }
    }
  }

  /** Distance of a port from the face of the box that it looks out of. */
  private static double distanceToBox(Plan.Port port) {
    Body.Extrusion box = (Body.Extrusion) port.piece().bodies().get(0).body();
    Profile.Rectangle base = (Profile.Rectangle) box.profile();
    Vec half = new Vec(base.x() / 2, base.y() / 2, box.depth() / 2);
    Vec centre = port.piece().frame().origin().plus(new Vec(0, 0, half.z()));
    Vec from = port.at().minus(centre);
    Vec size = new Vec(Math.abs(from.x()), Math.abs(from.y()), Math.abs(from.z()));
    assertThat(size.x() <= half.x() && size.y() <= half.y() && size.z() <= half.z()).isTrue();
    return Math.abs(from.dot(port.out()) - Math.abs(half.dot(port.out())));
  }

  @Test
  void everyPieceStartsInItsRoom() {
    assertThat(plan.pieces())
        .filteredOn(piece -> !piece.bodies().isEmpty())
        .allSatisfy(piece -> assertThat(piece.place().contains(piece.frame().origin())).isTrue());
  }

  @Test
  void straightsAreAsLongAsTheirPortsAreApart() {
    for (Piece piece : plan.pieces()) {
      List<Plan.Port> ports = plan.ports().stream().filter(p -> p.piece().equals(piece)).toList();
      if (piece.what().form().equals("straight") && ports.size() == 2) {
        double apart = ports.get(0).at().minus(ports.get(1).at()).length();
        assertThat(piece.measure().lengthMm()).isCloseTo(apart, within(TOLERANCE_MM));
      }
    }
  }

  @Test
  void bendsHaveTheChordThatAngleAndRadiusGive() {
    for (Piece piece : plan.pieces()) {
      if (piece.what().form().equals("bend")) {
        List<Plan.Port> ports = plan.ports().stream().filter(p -> p.piece().equals(piece)).toList();
        double chord = ports.get(0).at().minus(ports.get(1).at()).length();
        double half = Math.toRadians(piece.measure().degrees()) / 2;
        assertThat(chord)
            .isCloseTo(2 * piece.measure().bendRadiusMm() * Math.sin(half), within(TOLERANCE_MM));
      }
    }
  }

  @Test
  void theDemoHasEveryKindAndFormThatTheReadmeNames() {
    assertThat(plan.pieces())
        .extracting(p -> p.what().form())
        .contains("straight", "bend", "tee", "reducer", "transition", "flange", "cap")
        .contains("valve-body", "pump", "strainer", "meter", "damper", "apparatus");
    assertThat(plan.pieces()).extracting(Piece::system).contains(DemoSystem.values());
    assertThat(plan.pieces()).extracting(Piece::place).contains(Place.values());
    assertThat(plan.insulations()).hasSize(2);
  }
}
