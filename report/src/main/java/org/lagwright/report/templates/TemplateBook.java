package org.lagwright.report.templates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lagwright.report.Words;
import org.lagwright.report.templates.Template.Use;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.thickness.Layer;

/** The distinct pieces of a takeoff: those that need a drawing, and those that two figures give. */
final class TemplateBook {

  private final Takeoff takeoff;
  private final Map<String, String> services = new LinkedHashMap<>();
  private final List<Template> drawn = new ArrayList<>();
  private final List<Template> plain = new ArrayList<>();

  /** Pieces that are cut alike. */
  private record Key(String name, Layer layer, double boreM, PieceShape shape) {}

  /** The first making of equal pieces, and where they go. */
  private record Entry(Piece piece, LayerMaking making, List<Use> uses) {}

  TemplateBook(Takeoff takeoff) {
    this.takeoff = takeoff;
    for (TakeoffLine line : takeoff.lines()) {
      services.put(line.id(), line.serviceName() + ", " + line.size());
    }
    collect()
        .forEach(
            (key, entry) -> {
              List<Template> to = Template.isPlain(key.shape()) ? plain : drawn;
              to.add(new Template(to.size() + 1, entry.piece(), entry.making(), entry.uses()));
            });
  }

  Takeoff takeoff() {
    return takeoff;
  }

  /** Pieces with a drawing. */
  List<Template> drawn() {
    return drawn;
  }

  /** Plain tubes and rectangles, without straights: these come from the takeoff in metres. */
  List<Template> plain() {
    return plain;
  }

  private Map<Key, Entry> collect() {
    Map<Key, Entry> entries = new LinkedHashMap<>();
    takeoff.elements().stream()
        .filter(taken -> taken.lineId() != null && taken.making() != null)
        .filter(taken -> !taken.element().kind().isSegment())
        .sorted(
            Comparator.comparing((TakenElement t) -> Objects.requireNonNull(t.lineId()))
                .thenComparing(t -> t.element().key()))
        .forEach(taken -> collect(taken, Objects.requireNonNull(taken.making()), entries));
    return entries;
  }

  private void collect(TakenElement taken, Making making, Map<Key, Entry> entries) {
    for (LayerMaking layer : making.layers()) {
      for (Piece piece : layer.cover().pieces()) {
        Key key = new Key(piece.name(), piece.layer(), piece.boreM(), piece.shape());
        entries
            .computeIfAbsent(key, k -> new Entry(piece, layer, new ArrayList<>()))
            .uses()
            .add(
                new Use(
                    taken.element().key(),
                    taken.element().globalId(),
                    piece.count(),
                    run(taken),
                    making.assumed()));
      }
    }
  }

  private String run(TakenElement taken) {
    String line = Objects.requireNonNull(taken.lineId());
    StringBuilder run = new StringBuilder(line + ", " + services.get(line));
    String systems = Words.systems(taken.element().systems());
    if (systems != null && !systems.isBlank()) {
      run.append(", ").append(systems);
    }
    String storey = taken.element().place().storey();
    if (storey != null) {
      run.append(", ").append(storey);
    }
    return run.toString();
  }
}
