package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;

/**
 * Finds the spaces of other files around elements whose own file has none there. What an element's
 * own file tells of its storey, its building and of outdoors stays.
 */
final class CrossPlaces {

  private final Joining joining;

  private CrossPlaces(Joining joining) {
    this.joining = joining;
  }

  static void find(Joining joining) {
    CrossPlaces places = new CrossPlaces(joining);
    joining.read().forEach(places::look);
  }

  private void look(MepModel model) {
    int own = model.file().index();
    List<MepModel> others = new ArrayList<>();
    for (MepModel other : joining.read()) {
      boolean isOther = other.file().index() != own;
      if (isOther
          && other.premises().haveSpaces()
          && joining.haveOneOrigin(own, other.file().index())) {
        others.add(other);
      }
    }
    for (MepElement element : others.isEmpty() ? List.<MepElement>of() : model.elements()) {
      MepElement now = joining.now(element);
      Point middle = now.place().positionM();
      if (now.kind().isLagged() && now.place().space() == null && middle != null) {
        look(now, middle, others);
      }
    }
  }

  private void look(MepElement element, Point middle, List<MepModel> others) {
    for (MepModel other : others) {
      Place around = other.premises().around(middle);
      if (around.space() != null) {
        Place place = joined(element.place(), around, other.file().name());
        joining.change(element.toBuilder().place(place).build());
        return;
      }
    }
  }

  private static Place joined(Place own, Place around, String file) {
    List<Evidence> basis = new ArrayList<>(own.basis());
    for (Evidence evidence : around.basis()) {
      basis.add(new Evidence(evidence.step(), evidence.path() + " in " + file, evidence.raw()));
    }
    boolean onStorey = own.storey() != null;
    return new Place(
        own.building() == null ? around.building() : own.building(),
        onStorey ? own.storey() : around.storey(),
        onStorey ? own.storeyElevationM() : around.storeyElevationM(),
        around.space(),
        own.external() == null ? around.external() : own.external(),
        own.positionM(),
        onStorey ? own.heightAboveFloorM() : around.heightAboveFloorM(),
        basis);
  }
}
