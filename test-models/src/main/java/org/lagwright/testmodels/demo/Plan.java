package org.lagwright.testmodels.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Vec;

/** Collects the pieces of a design, their ports, and what is joined to what. */
final class Plan {

  /**
   * A port of a piece.
   *
   * @param out unit vector away from the piece
   * @param across unit vector along the width of the section
   * @param source true where the medium leaves the piece
   */
  record Port(Piece piece, DemoSystem system, Vec at, Vec out, Vec across, boolean source) {}

  /** Two ports at the same place. */
  record Joint(Port source, Port sink) {}

  /** Insulation already modelled on a piece. */
  record Insulation(Piece host, double thicknessMm, String material) {}

  private final List<Piece> pieces = new ArrayList<>();
  private final List<Port> ports = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Insulation> insulations = new ArrayList<>();
  private final Map<Piece, Double> wrongLengthsMm = new LinkedHashMap<>();
  private final Map<DemoSystem, Integer> counts = new EnumMap<>(DemoSystem.class);

  List<Piece> pieces() {
    return List.copyOf(pieces);
  }

  List<Port> ports() {
    return List.copyOf(ports);
  }

  List<Joint> joints() {
    return List.copyOf(joints);
  }

  List<Insulation> insulations() {
    return List.copyOf(insulations);
  }

  /** Lengths in millimetres that quantity sets give although the pieces are not that long. */
  Map<Piece, Double> wrongLengthsMm() {
    return Collections.unmodifiableMap(wrongLengthsMm);
  }

  /** Adds a piece of a system; keys count up within it. */
  Piece add(
      Piece.What what,
      DemoSystem system,
      Place place,
      Piece.Measure measure,
      @Nullable Size section,
      Frame frame,
      List<Body.Placed> bodies) {
    int number = counts.merge(system, 1, Integer::sum);
    String key = String.format(Locale.ROOT, "%s %03d", system.code, number);
    Piece piece = new Piece(key, what, system, place, measure, section, frame, bodies);
    pieces.add(piece);
    return piece;
  }

  /** Adds a box between two corners that belongs to no single system. */
  Piece box(Piece.What what, Place place, Vec min, Vec max) {
    Vec size = max.minus(min);
    Vec foot = new Vec((min.x() + max.x()) / 2, (min.y() + max.y()) / 2, min.z());
    Body body = new Body.Extrusion(new Profile.Rectangle(size.x(), size.y()), size.z());
    return loose(what, place, Frame.at(foot), body);
  }

  /** Adds a piece outside all systems. */
  Piece loose(Piece.What what, Place place, Frame frame, Body body) {
    Piece piece =
        new Piece(
            "loose " + what.name(),
            what,
            null,
            place,
            Piece.Measure.of(""),
            null,
            frame,
            List.of(body.inPlace()));
    pieces.add(piece);
    return piece;
  }

  Port port(Piece piece, DemoSystem system, Vec at, Vec out, Vec across, boolean source) {
    Port port = new Port(piece, system, at, out, across, source);
    ports.add(port);
    return port;
  }

  void join(Port one, Port other) {
    if (one.source() == other.source()) {
      throw new IllegalStateException("two " + (one.source() ? "sources" : "sinks") + " meet");
    }
    joints.add(one.source() ? new Joint(one, other) : new Joint(other, one));
  }

  void insulate(Piece host, double thicknessMm, String material) {
    insulations.add(new Insulation(host, thicknessMm, material));
  }

  /** A rod from which a pipe hangs, from its upper side to the ceiling. */
  void hanger(Place place, Vec foot, int number) {
    loose(
        what(ElementClass.DISCRETE_ACCESSORY, "NOTDEFINED", "apparatus", "Hanger " + number),
        place,
        Frame.at(foot),
        new Body.Extrusion(new Profile.Circle(10), 500));
  }

  /** A deliberate flaw: a pipe that has neither shape nor place, only a length as a property. */
  void withoutGeometry(DemoSystem system, Place place, Size size, double lengthMm) {
    Piece.What what =
        what(ElementClass.PIPE_SEGMENT, "RIGIDSEGMENT", "straight", "Pipe " + size.words());
    Piece.Measure measure = new Piece.Measure(size.label(), lengthMm, 0, 0);
    add(what, system, place, measure, size, Frame.WORLD, List.of());
  }

  /** A deliberate flaw: the quantity set of this piece will give another length than it has. */
  void contradict(Piece piece, double lengthMm) {
    wrongLengthsMm.put(piece, lengthMm);
  }

  /** A line that starts at a new port of an apparatus. */
  Line from(Piece apparatus, DemoSystem system, Size size, Vec at, Vec direction, Vec across) {
    Port start = port(apparatus, system, at, direction, across, system.outward);
    return new Line(
        this, system, apparatus.place(), size, new Line.End(at, direction, across), start);
  }

  /** A line that starts at an open end. */
  Line open(DemoSystem system, Place place, Size size, Vec at, Vec direction) {
    return new Line(
        this, system, place, size, new Line.End(at, direction, Line.across(direction)), null);
  }

  static Piece.What what(ElementClass ifcClass, String predefined, String form, String name) {
    return new Piece.What(ifcClass, predefined, form, name);
  }
}
