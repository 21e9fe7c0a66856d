package org.lagwright.ifc.extract;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.ClassKinds;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.graph.Circles;
import org.lagwright.ifc.extract.graph.OpenEnds;
import org.lagwright.ifc.extract.insulation.InsulationReader;
import org.lagwright.ifc.extract.measure.SectionWidth;
import org.lagwright.ifc.extract.place.PlaceReader;
import org.lagwright.ifc.extract.property.BelongingReader;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** Makes an element of the model from what was worked out of it. Safe for several threads. */
public final class ElementMaker {

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final PlaceReader places;
  private final BelongingReader belongings;
  private final InsulationReader insulation;
  private final Circles circles;

  ElementMaker(
      OpenedFile opened,
      PlaceReader places,
      BelongingReader belongings,
      InsulationReader insulation,
      Circles circles) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
    this.places = places;
    this.belongings = belongings;
    this.insulation = insulation;
    this.circles = circles;
  }

  /** The element of an open draft. */
  MepElement element(Draft draft) {
    IfcRecord record = Objects.requireNonNull(file.find(draft.step()));
    String globalId = record.text("GlobalId");
    MepElement.Builder named =
        MepElement.builder(draft.key(), globalId == null ? "" : globalId, draft.ifcClass())
            .named(
                draft.names().own(),
                draft.names().objectType(),
                draft.names().typeName(),
                draft.names().tag())
            .typeClass(typeClass(record, draft));
    MepElement element =
        measured(named, draft)
            .is(Objects.requireNonNull(draft.kind()), draft.form())
            .ports(draft.joints())
            .systems(belongings.systemsOf(draft.step()))
            .place(places.placeOf(record, draft))
            .properties(properties.propertiesOf(draft.step(), draft.propertyCount()))
            .materials(belongings.materialsOf(draft.step()))
            .layers(belongings.layersOf(record))
            .existingInsulation(insulation.of(draft.key()))
            .lining(insulation.liningOf(draft.key()))
            .openEnds(OpenEnds.of(draft))
            .build();
    circles.suspect(record, element, draft);
    return element;
  }

  /** Gives an element the figures that were decided for it. */
  public static MepElement.Builder measured(MepElement.Builder element, Draft draft) {
    return element
        .section(draft.section())
        .width(SectionWidth.of(draft))
        .ends(draft.ends())
        .nominalSize(draft.nominalSize())
        .lengthM(draft.lengthM())
        .bend(draft.angleDeg(), draft.bendRadiusM())
        .eccentricityM(draft.eccentricityM())
        .branchLengthM(draft.branchLengthM());
  }

  /** Of a radiator, say, that its own class does not tell from a wash basin. */
  private @Nullable String typeClass(IfcRecord record, Draft draft) {
    boolean asked = draft.kind() == Kind.TERMINAL || draft.kind() == Kind.EQUIPMENT;
    long typeId = asked && ClassKinds.isFamily(record) ? relations.typeOf(record.id()) : 0;
    IfcRecord type = typeId == 0 ? null : file.find(typeId);
    return type == null ? null : type.entityName();
  }
}
