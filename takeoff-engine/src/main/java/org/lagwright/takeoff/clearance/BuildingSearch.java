package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.UprightBox;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds where insulated elements do not fit beside parts of the building, or go through them. */
final class BuildingSearch {

  private final STRtree tree = new STRtree();
  private final ClearancePack wanted;
  private final List<Clash> clashes = new ArrayList<>();
  private final List<Passage> passages = new ArrayList<>();
  private final Map<ElementKey, Set<ElementKey>> through = new HashMap<>();
  private int lookedAt;
  private int withoutBody;

  BuildingSearch(List<List<BuildingPart>> models, ClearancePack wanted) {
    this.wanted = wanted;
    Set<String> known = new HashSet<>();
    for (List<BuildingPart> parts : models) {
      for (BuildingPart part : parts) {
        if (part.globalId().isEmpty() || known.add(part.globalId())) {
          add(part);
        }
      }
    }
  }

  private void add(BuildingPart part) {
    UprightBox box = part.box();
    if (box == null) {
      withoutBody++;
    } else {
      Block block = Block.of(part, box);
      tree.insert(block.box().plan(), block);
      lookedAt++;
    }
  }

  /** Holds elements against all parts. */
  void search(List<Placed> placed) {
    double mostM = wanted.largestM();
    for (Placed one : placed) {
      if (one.insulated()) {
        Envelope plan = one.box().plan();
        plan.expandBy(mostM);
        tree.query(plan, found -> hold(one, (Block) found));
      }
    }
  }

  private void hold(Placed one, Block block) {
    double wantedM = wanted.toBuildingM(one.duct(), one.jacketed());
    if (!one.box().isNear(block.box(), wantedM)) {
      return;
    }
    List<Solid> wall = List.of(block.solid());
    double gapM = Gap.betweenM(one.made().insulated(), wall, wantedM);
    if (gapM > wantedM - ClashSearch.TOLERANCE_M) {
      return;
    }
    if (gapM < 0) {
      through
          .computeIfAbsent(block.part().key(), part -> new HashSet<>())
          .add(one.taken().element().key());
    }
    double roomM = gapM < 0 ? block.roomM(one.made().insulated()) : Double.NaN;
    if (Block.fits(roomM)) {
      passages.add(new Passage(one.taken(), block.part(), roomM));
      return;
    }
    double bareM = Gap.betweenM(one.made().bare(), List.of(block.solid()), Double.MAX_VALUE);
    boolean opening = !Double.isNaN(roomM);
    double bareRoomM = opening && bareM < 0 ? block.roomM(one.made().bare()) : bareM;
    clashes.add(clash(one, block.part(), opening ? roomM : gapM, bareRoomM, wantedM, opening));
  }

  private static Clash clash(
      Placed one, BuildingPart part, double gapM, double bareM, double wantedM, boolean opening) {
    String box = "B: by the box around it" + (opening ? ", in an opening too small" : "");
    return new Clash(
        one.taken(),
        new Neighbour.Part(part),
        gapM,
        bareM,
        wantedM,
        Cause.of(gapM, bareM),
        Clash.note(one.note("A"), box));
  }

  /** A piece that ends where the next one goes through the same part is told by that one. */
  List<Clash> clashes() {
    return clashes.stream().filter(clash -> !isBeforePassage(clash)).toList();
  }

  private boolean isBeforePassage(Clash clash) {
    Set<ElementKey> passing = through.getOrDefault(clash.second().key(), Set.of());
    return clash.gapM() >= 0
        && clash.first().element().ports().stream()
            .anyMatch(port -> port.connectedTo() != null && passing.contains(port.connectedTo()));
  }

  List<Passage> passages() {
    return passages;
  }

  int lookedAt() {
    return lookedAt;
  }

  int withoutBody() {
    return withoutBody;
  }
}
