package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Premises;

/**
 * Finds the spaces of other files around elements whose own file has none there, and the storeys of
 * other files below those whose own file has none at all. What an element's own file tells of its
 * storey, its building and of outdoors stays.
 */
final class CrossPlaces {

  /** Between the floors of one storey as architects and engineers place them: its finish. */
  private static final double SAME_FLOOR_M = 0.3;

  private final Joining joining;

  private CrossPlaces(Joining joining) {
    this.joining = joining;
  }

  static void find(Joining joining) {
    CrossPlaces places = new CrossPlaces(joining);
    joining.read().forEach(places::look);
  }

  private void look(MepModel model) {
    List<MepModel> withSpaces = others(model, Premises::haveSpaces);
    boolean haveOwn = model.premises().haveStoreys();
    List<MepModel> withStoreys = haveOwn ? List.of() : others(model, Premises::haveStoreys);
    boolean any = !withSpaces.isEmpty() || !withStoreys.isEmpty();
    for (MepElement element : any ? model.elements() : List.<MepElement>of()) {
      MepElement now = joining.now(element);
      Point middle = now.place().positionM();
      if (now.kind().isLagged() && middle != null) {
        if (now.place().space() == null) {
          now = inSpace(now, middle, withSpaces);
        }
        if (now.place().storey() == null) {
          onFloor(now, middle, withStoreys);
        }
      }
    }
  }

  /** Other files of the same origin that have what is looked for. */
  private List<MepModel> others(MepModel model, Predicate<Premises> have) {
    int own = model.file().index();
    List<MepModel> others = new ArrayList<>();
    for (MepModel other : joining.read()) {
      int index = other.file().index();
      if (index != own && have.test(other.premises()) && joining.haveOneOrigin(own, index)) {
        others.add(other);
      }
    }
    return others;
  }

  private MepElement inSpace(MepElement element, Point middle, List<MepModel> others) {
    for (MepModel other : others) {
      Place around = other.premises().around(middle);
      if (around.space() != null) {
        return joined(element, around, other);
      }
    }
    return element;
  }

  /**
   * Files whose storeys have different names there may be two houses; of one name they tell no more
   * than they agree about.
   */
  private void onFloor(MepElement element, Point middle, List<MepModel> others) {
    MepModel first = null;
    Place found = Place.UNKNOWN;
    for (MepModel other : others) {
      Place floor = other.premises().onFloorBelow(middle);
      if (first == null && floor.storey() != null) {
        first = other;
        found = floor;
      } else if (floor.storey() != null && !floor.storey().equals(found.storey())) {
        return;
      } else if (floor.storey() != null) {
        found = agreed(found, floor);
      }
    }
    if (first != null) {
      joined(element, found, first);
    }
  }

  private static Place agreed(Place found, Place floor) {
    Double heightM = found.heightAboveFloorM();
    Double otherM = floor.heightAboveFloorM();
    boolean level = heightM != null && otherM != null && Math.abs(heightM - otherM) < SAME_FLOOR_M;
    return new Place(
        Objects.equals(found.building(), floor.building()) ? found.building() : null,
        found.storey(),
        found.storeyElevationM(),
        found.space(),
        found.external(),
        found.positionM(),
        level ? heightM : null,
        found.basis());
  }

  private MepElement joined(MepElement element, Place told, MepModel other) {
    Place place = joined(element.place(), told, other.file().name());
    MepElement joined = element.toBuilder().place(place).build();
    joining.change(joined);
    return joined;
  }

  private static Place joined(Place own, Place told, String file) {
    List<Evidence> basis = new ArrayList<>(own.basis());
    for (Evidence evidence : told.basis()) {
      basis.add(new Evidence(evidence.step(), evidence.path() + " in " + file, evidence.raw()));
    }
    boolean onStorey = own.storey() != null;
    return new Place(
        own.building() == null ? told.building() : own.building(),
        onStorey ? own.storey() : told.storey(),
        onStorey ? own.storeyElevationM() : told.storeyElevationM(),
        own.space() == null ? told.space() : own.space(),
        own.external() == null ? told.external() : own.external(),
        own.positionM(),
        Place.aboveNextFloorM(own.heightAboveFloorM(), told.heightAboveFloorM()),
        basis);
  }
}
