package org.lagwright.report.json;

import org.lagwright.ifc.model.ModelFile;

/** A file that was read. */
record ModelView(String file, String sha256, String schema) {
  static ModelView of(ModelFile model) {
    return new ModelView(model.name(), model.sha256(), model.schema());
  }
}
