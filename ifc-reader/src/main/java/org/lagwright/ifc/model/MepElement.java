package org.lagwright.ifc.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One pipe, duct, fitting, valve, apparatus or covering as the model shows it.
 *
 * @param key names the element among all models read
 * @param globalId the IfcGloballyUniqueId as written; may repeat in bad files
 * @param ifcClass class of the record in the standard's spelling ({@code IfcPipeSegment}); upper
 *     case where no schema knows it
 * @param name Name, empty if absent
 * @param objectType ObjectType, null if absent
 * @param typeName Name of the type object, null if absent
 * @param typeClass class of the type object ({@code IfcSpaceHeaterType}) of an apparatus or
 *     terminal whose own class names but its family, as those of IFC2X3; else null
 * @param tag Tag, null if absent
 * @param kind what it is
 * @param form its shape
 * @param section outer section without insulation; null where nothing in the file tells
 * @param width world unit vector along the width of {@code section}; null where the section is
 *     round, or nothing drawn tells
 * @param endSections sections of the ends of a fitting: bend two, tee three (run, run, branch),
 *     cross in pairs; null where unknown
 * @param nominalSize nominal size as written ({@code DN50}), null where absent
 * @param lengthM length along the centre line in metres; null where unknown
 * @param angleDeg angle of a bend in degrees, of a lateral that between branch and run; null where
 *     it is neither or unknown
 * @param bendRadiusM centre-line radius of a bend in metres
 * @param eccentricityM how far the axes of the two ends of a reducer, transition or offset lie
 *     apart, metres; 0 where it is concentric, null where unknown or no such piece
 * @param branchLengthM of a tee or lateral, from the axis of the run to the end of the branch along
 *     its own axis, metres; null where unknown or no such piece
 * @param ports connection points, in the order of the file
 * @param systems systems it belongs to
 * @param place storey, space, indoors or not
 * @param properties properties and quantities, type and occurrence merged
 * @param materials names of associated materials
 * @param layers presentation layers of its representations
 * @param existingInsulation insulation the model already shows, null where none
 * @param lining lining inside a duct, which reduces the free area and is no insulation outside it;
 *     null where none is shown
 * @param openEnds ends that its own file connects to nothing
 * @param repeats the element of another file that this one is once more; null if it is none, or the
 *     one that counts
 */
public record MepElement(
    ElementKey key,
    String globalId,
    String ifcClass,
    String name,
    @Nullable String objectType,
    @Nullable String typeName,
    @Nullable String typeClass,
    @Nullable String tag,
    Kind kind,
    Form form,
    @Nullable Measured<Section> section,
    @Nullable Point width,
    @Nullable Measured<List<Section>> endSections,
    @Nullable String nominalSize,
    @Nullable Measured<Double> lengthM,
    @Nullable Measured<Double> angleDeg,
    @Nullable Measured<Double> bendRadiusM,
    @Nullable Measured<Double> eccentricityM,
    @Nullable Measured<Double> branchLengthM,
    List<Port> ports,
    List<MepSystem> systems,
    Place place,
    List<Property> properties,
    List<String> materials,
    List<String> layers,
    @Nullable ExistingInsulation existingInsulation,
    @Nullable ExistingInsulation lining,
    List<OpenEnd> openEnds,
    @Nullable ElementKey repeats) {

  public MepElement {
    openEnds = List.copyOf(openEnds);
    ports = List.copyOf(ports);
    systems = List.copyOf(systems);
    properties = properties instanceof PropertyList ? properties : List.copyOf(properties);
    materials = List.copyOf(materials);
    layers = List.copyOf(layers);
  }

  /** Sections of the ends, empty where unknown. */
  public List<Section> ends() {
    return endSections == null ? List.of() : endSections.value();
  }

  /** First property with this name, whatever its set; names compare without case. */
  public Optional<Property> findProperty(String propertyName) {
    String wanted = propertyName.toLowerCase(Locale.ROOT);
    return properties.stream()
        .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst();
  }

  /** A builder for one element; everything not set is empty, null or unknown. */
  public static Builder builder(ElementKey key, String globalId, String ifcClass) {
    return new Builder(key, globalId, ifcClass);
  }

  /** A builder that starts from this element. */
  public Builder toBuilder() {
    return builder(key, globalId, ifcClass)
        .named(name, objectType, typeName, tag)
        .typeClass(typeClass)
        .is(kind, form)
        .section(section)
        .width(width)
        .ends(endSections)
        .nominalSize(nominalSize)
        .lengthM(lengthM)
        .bend(angleDeg, bendRadiusM)
        .eccentricityM(eccentricityM)
        .branchLengthM(branchLengthM)
        .ports(ports)
        .systems(systems)
        .place(place)
        .properties(properties)
        .materials(materials)
        .layers(layers)
        .existingInsulation(existingInsulation)
        .lining(lining)
        .openEnds(openEnds)
        .repeats(repeats);
  }

  /** Collects what the extractors find out about one element. */
  public static final class Builder {
    private final ElementKey key;
    private final String globalId;
    private final String ifcClass;
    private String name = "";
    private @Nullable String objectType;
    private @Nullable String typeName;
    private @Nullable String typeClass;
    private @Nullable String tag;
    private Kind kind = Kind.OTHER;
    private Form form = Form.UNKNOWN;
    private @Nullable Measured<Section> section;
    private @Nullable Point width;
    private @Nullable Measured<List<Section>> endSections;
    private @Nullable String nominalSize;
    private @Nullable Measured<Double> lengthM;
    private @Nullable Measured<Double> angleDeg;
    private @Nullable Measured<Double> bendRadiusM;
    private @Nullable Measured<Double> eccentricityM;
    private @Nullable Measured<Double> branchLengthM;
    private List<Port> ports = List.of();
    private List<MepSystem> systems = List.of();
    private Place place = Place.UNKNOWN;
    private List<Property> properties = List.of();
    private List<String> materials = List.of();
    private List<String> layers = List.of();
    private @Nullable ExistingInsulation existingInsulation;
    private @Nullable ExistingInsulation lining;
    private List<OpenEnd> openEnds = List.of();
    private @Nullable ElementKey repeats;

    private Builder(ElementKey key, String globalId, String ifcClass) {
      this.key = key;
      this.globalId = globalId;
      this.ifcClass = ifcClass;
    }

    public Builder named(
        String name, @Nullable String objectType, @Nullable String typeName, @Nullable String tag) {
      this.name = name;
      this.objectType = objectType;
      this.typeName = typeName;
      this.tag = tag;
      return this;
    }

    public Builder typeClass(@Nullable String typeClass) {
      this.typeClass = typeClass;
      return this;
    }

    public Builder is(Kind kind, Form form) {
      this.kind = kind;
      this.form = form;
      return this;
    }

    public Builder section(@Nullable Measured<Section> section) {
      this.section = section;
      return this;
    }

    public Builder width(@Nullable Point width) {
      this.width = width;
      return this;
    }

    public Builder ends(@Nullable Measured<List<Section>> endSections) {
      this.endSections = endSections;
      return this;
    }

    public Builder nominalSize(@Nullable String nominalSize) {
      this.nominalSize = nominalSize;
      return this;
    }

    public Builder lengthM(@Nullable Measured<Double> lengthM) {
      this.lengthM = lengthM;
      return this;
    }

    public Builder bend(
        @Nullable Measured<Double> angleDeg, @Nullable Measured<Double> bendRadiusM) {
      this.angleDeg = angleDeg;
      this.bendRadiusM = bendRadiusM;
      return this;
    }

    public Builder eccentricityM(@Nullable Measured<Double> eccentricityM) {
      this.eccentricityM = eccentricityM;
      return this;
    }

    public Builder branchLengthM(@Nullable Measured<Double> branchLengthM) {
      this.branchLengthM = branchLengthM;
      return this;
    }

    public Builder ports(List<Port> ports) {
      this.ports = ports;
      return this;
    }

    public Builder systems(List<MepSystem> systems) {
      this.systems = systems;
      return this;
    }

    public Builder place(Place place) {
      this.place = place;
      return this;
    }

    public Builder properties(List<Property> properties) {
      this.properties = properties;
      return this;
    }

    public Builder materials(List<String> materials) {
      this.materials = materials;
      return this;
    }

    public Builder layers(List<String> layers) {
      this.layers = layers;
      return this;
    }

    public Builder existingInsulation(@Nullable ExistingInsulation existingInsulation) {
      this.existingInsulation = existingInsulation;
      return this;
    }

    public Builder lining(@Nullable ExistingInsulation lining) {
      this.lining = lining;
      return this;
    }

    public Builder openEnds(List<OpenEnd> openEnds) {
      this.openEnds = openEnds;
      return this;
    }

    public Builder repeats(@Nullable ElementKey repeats) {
      this.repeats = repeats;
      return this;
    }

    /** The finished element. */
    public MepElement build() {
      return new MepElement(
          key,
          globalId,
          ifcClass,
          name,
          objectType,
          typeName,
          typeClass,
          tag,
          kind,
          form,
          section,
          width,
          endSections,
          nominalSize,
          lengthM,
          angleDeg,
          bendRadiusM,
          eccentricityM,
          branchLengthM,
          ports,
          systems,
          place,
          properties,
          materials,
          layers,
          existingInsulation,
          lining,
          openEnds,
          repeats);
    }
  }
}
