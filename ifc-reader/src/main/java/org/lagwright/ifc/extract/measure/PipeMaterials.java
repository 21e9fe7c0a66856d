package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.BelongingReader;
import org.lagwright.ifc.extract.text.PipeMaterial;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Property;

/**
 * Says what the pipes of one file are made of: their associated materials, else a property, else
 * their names. The body of a valve or flange says nothing of the pipe it sits in, and fittings of
 * cast iron sit on steel pipes.
 */
public final class PipeMaterials {

  private final BelongingReader belongings;

  /** Reads the materials of a file. */
  public PipeMaterials(BelongingReader belongings) {
    this.belongings = belongings;
  }

  /** Null if nothing tells, or if two tell different materials. */
  @Nullable PipeMaterial of(Draft draft) {
    Kind kind = draft.kind();
    if (kind != Kind.PIPE_SEGMENT
        && (kind != Kind.PIPE_FITTING || draft.form().isWiderThanItsPipe())) {
      return null;
    }
    Told told = new Told();
    told.by(belongings.materialsOf(draft.step()));
    if (told.isNothing()) {
      for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.MATERIAL)) {
        told.by(p.text());
      }
    }
    if (told.isNothing()) {
      told.by(draft.names().ofType());
    }
    if (told.isNothing()) {
      told.by(draft.names().own());
    }
    boolean ofFitting = kind == Kind.PIPE_FITTING && told.material == PipeMaterial.CAST_IRON;
    return told.several || ofFitting ? null : told.material;
  }

  private static final class Told {
    private @Nullable PipeMaterial material;
    private boolean several;

    boolean isNothing() {
      return material == null;
    }

    void by(List<String> texts) {
      for (String text : texts) {
        by(text);
      }
    }

    void by(String text) {
      Optional<PipeMaterial> told = PipeMaterial.in(text);
      if (told.isPresent()) {
        several |= material != null && material != told.get();
        material = told.get();
      }
    }
  }
}
