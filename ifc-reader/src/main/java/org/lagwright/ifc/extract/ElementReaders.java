package org.lagwright.ifc.extract;

import org.lagwright.ifc.extract.draft.AirLines;
import org.lagwright.ifc.extract.draft.DraftReader;
import org.lagwright.ifc.extract.draft.PortReader;
import org.lagwright.ifc.extract.insulation.CoveringBodies;
import org.lagwright.ifc.extract.insulation.CoveringFiles;
import org.lagwright.ifc.extract.insulation.Coverings;
import org.lagwright.ifc.extract.insulation.InsulationChoice;
import org.lagwright.ifc.extract.measure.ProfileReader;
import org.lagwright.ifc.extract.property.BelongingReader;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.geometry.CornerReader;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.packed.Vocabulary;

/**
 * What the elements of one file are read with. Made once for all of them and, as readers remember
 * much, anew for the few that are worked out once more.
 */
final class ElementReaders {

  final Vocabulary vocabulary;
  final PortReader ports;
  final BelongingReader belongings;
  final ProfileReader profiles;
  final MaterialLayers layers;
  final DraftReader drafts;
  final Coverings coverings;
  private final double lengthUnitM;

  /**
   * @param folding true if elements are folded while they wait for the next step of the work
   */
  ElementReaders(OpenedFile opened, boolean folding) {
    ShapeMeasurer shapes =
        new ShapeMeasurer(opened.file(), opened.units().geometry(), opened.placements());
    lengthUnitM = opened.lengthUnitM();
    vocabulary = new Vocabulary(opened.source().index());
    ports = new PortReader(opened);
    belongings = new BelongingReader(opened);
    profiles = new ProfileReader(opened.file(), opened.relations(), shapes, lengthUnitM);
    layers = new MaterialLayers(opened.file(), opened.relations(), lengthUnitM);
    drafts =
        new DraftReader(
            opened, ports, shapes, new AirLines(belongings, ports), vocabulary, folding);
    CornerReader corners = new CornerReader(opened.units().geometry(), opened.placements());
    coverings =
        new Coverings(
            opened.source().name(),
            belongings,
            new CoveringBodies(opened.file(), shapes, corners),
            profiles,
            drafts,
            layers,
            lengthUnitM);
  }

  /** Chooses between what shows and what states insulation. */
  InsulationChoice choice(CoveringFiles files) {
    return new InsulationChoice(files, layers, lengthUnitM);
  }
}
