package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.TakenElement;

/** What an element is held against. */
public sealed interface Neighbour {

  /** Names it among all models. */
  ElementKey key();

  /** As written in the model. */
  String globalId();

  /** As written in the model. */
  String name();

  /** Insulation bought for it, metres; 0 where it gets none. */
  double thicknessM();

  /** How its body is reckoned: {@code body} by its own shape, {@code box} by the box around it. */
  String method();

  /** Another pipe, duct, fitting or valve. */
  record Piece(TakenElement taken) implements Neighbour {
    @Override
    public ElementKey key() {
      return taken.element().key();
    }

    @Override
    public String globalId() {
      return taken.element().globalId();
    }

    @Override
    public String name() {
      return taken.element().name();
    }

    @Override
    public double thicknessM() {
      return Clearance.thicknessM(taken);
    }

    @Override
    public String method() {
      return "body";
    }
  }

  /** A wall, slab, beam, column or the like. */
  record Part(BuildingPart part) implements Neighbour {
    @Override
    public ElementKey key() {
      return part.key();
    }

    @Override
    public String globalId() {
      return part.globalId();
    }

    @Override
    public String name() {
      return part.name();
    }

    @Override
    public double thicknessM() {
      return 0;
    }

    @Override
    public String method() {
      return "box";
    }
  }
}
