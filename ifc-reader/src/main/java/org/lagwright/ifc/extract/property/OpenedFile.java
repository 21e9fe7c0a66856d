package org.lagwright.ifc.extract.property;

import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.threads.Workers;

/**
 * An indexed file and what holds for all of its elements. It stays as long as the model that was
 * read of it.
 *
 * @param source its name and its number among the files of one model
 */
public record OpenedFile(
    IfcFile file,
    ModelFile source,
    Units units,
    Relations relations,
    PropertyReader properties,
    Placements placements) {

  /** Reads units and relations of a file. */
  public static OpenedFile of(IfcFile file, ModelFile source, Workers workers) {
    Units units = new Units(file, source.index());
    Relations relations = new Relations(file, workers);
    PropertyReader properties = new PropertyReader(file, relations, units);
    Placements placements = new Placements(file, units.geometry());
    return new OpenedFile(file, source, units, relations, properties, placements);
  }

  /** Metres in the file's unit of length. */
  public double lengthUnitM() {
    return units.lengthM();
  }
}
