package org.lagwright.ifc.geometry.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.BendLegs;

/** A bend of 90 degrees between sockets of 15 mm: an arc of 60 mm from the x to the y axis. */
class SocketedBendTest {

  private static final double ARC_M = 0.06;

  private final List<Vec> corners = new ArrayList<>();

  /** A ring of 24 corners across the bend, at an angle or beyond the end of its arc. */
  private void ring(double degrees, double beyondM, double radiusM) {
    double at = Math.toRadians(degrees);
    Vec out = new Vec(Math.sin(at), -Math.cos(at), 0);
    Vec along = new Vec(Math.cos(at), Math.sin(at), 0);
    Vec centre = new Vec(0, ARC_M, 0).plus(out.times(ARC_M)).plus(along.times(beyondM));
    for (int i = 0; i < 24; i++) {
      double t = 2 * Math.PI * i / 24;
      Vec off = out.times(Math.cos(t)).plus(new Vec(0, 0, Math.sin(t)));
      corners.add(centre.plus(off.times(radiusM)));
    }
  }

  /** The sockets hide the rings of the outside where the arc begins and stops. */
  @Test
  void outsideThatSocketsHideInPartIsTheSizeAndNotTheBore() {
    for (int i = 0; i <= 8; i++) {
      ring(90.0 * i / 8, 0, 0.022);
      if (i > 0 && i < 8) {
        ring(90.0 * i / 8, 0, 0.025);
      }
    }
    for (double radiusM : new double[] {0.0252, 0.029}) {
      ring(0, -0.015, radiusM);
      ring(90, 0.015, radiusM);
    }
    Vec first = new Vec(-0.015, 0, 0);
    Vec last = new Vec(ARC_M, ARC_M + 0.015, 0);
    BendLegs legs = BendLegs.of(first, new Vec(-1, 0, 0), last, new Vec(0, 1, 0));
    SocketedBend bend = Objects.requireNonNull(SocketedBend.of(corners, legs, 0.029));
    assertThat(bend.radiusM()).isCloseTo(0.025, within(1e-6));
    assertThat(bend.fit().radiusM()).isCloseTo(ARC_M, within(1e-5));
  }
}
