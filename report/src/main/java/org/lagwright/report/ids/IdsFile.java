package org.lagwright.report.ids;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.lagwright.report.XmlFile;
import org.lagwright.takeoff.readiness.Asked;
import org.lagwright.takeoff.readiness.Asked.AttributeFacet;
import org.lagwright.takeoff.readiness.Asked.PartOfFacet;
import org.lagwright.takeoff.readiness.Asked.PropertyFacet;
import org.lagwright.takeoff.readiness.Need;
import org.lagwright.takeoff.readiness.Requirement;
import org.lagwright.takeoff.readiness.RequirementPack;

/**
 * Writes the requirements that IDS can say, one specification for each thing asked. Names, order
 * and values are those of buildingSMART IDS 1.0 (ids.xsd of tag v1.0.0); figures are in SI.
 */
public final class IdsFile {

  private static final String NAMESPACE = "http://standards.buildingsmart.org/IDS";
  private static final String SCHEMA = NAMESPACE + "/1.0/ids.xsd";
  private static final String REQUIRED = "required";

  private final RequirementPack pack;
  private final XmlFile xml = new XmlFile("ids");

  private IdsFile(RequirementPack pack) {
    this.pack = pack;
  }

  /**
   * Writes the file; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(RequirementPack pack, OutputStream out) throws IOException {
    out.write(new IdsFile(pack).bytes());
  }

  private byte[] bytes() {
    xml.with("xmlns", NAMESPACE)
        .with("xmlns:xs", "http://www.w3.org/2001/XMLSchema")
        .with("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance")
        .with("xsi:schemaLocation", NAMESPACE + " " + SCHEMA);
    xml.open("info")
        .text("title", "What a model must carry for an insulation takeoff")
        .text("version", pack.version())
        .text("description", description())
        .text("purpose", "Insulation takeoff")
        .close();
    xml.open("specifications");
    for (Requirement requirement : pack.requirements()) {
      requirement.asked().forEach(asked -> specification(requirement, asked));
    }
    return xml.close().bytes();
  }

  private String description() {
    StringBuilder text =
        new StringBuilder("Each specification says whether it is needed or helpful.");
    text.append(" Not in here, as IDS cannot say it:");
    pack.requirements().stream()
        .filter(r -> r.asked().isEmpty())
        .forEach(r -> text.append(' ').append(r.title()).append(": ").append(r.ask()));
    return text.toString();
  }

  private void specification(Requirement requirement, Asked asked) {
    String need = requirement.need() == Need.NEEDED ? "Needed. " : "Helpful. ";
    xml.open("specification")
        .with("name", requirement.title())
        .with("ifcVersion", String.join(" ", asked.schemas()))
        .with("identifier", requirement.id())
        .with("description", need + requirement.why())
        .with("instructions", requirement.ask());
    xml.open("applicability")
        .with("minOccurs", asked.atLeastOne() ? "1" : "0")
        .with("maxOccurs", "unbounded")
        .open("entity");
    value("name", pack.entities(asked));
    xml.close().close().open("requirements");
    facet(asked);
    xml.close().close();
  }

  private void facet(Asked asked) {
    if (asked.property() != null) {
      property(asked.property());
    } else if (asked.partOf() != null) {
      partOf(asked.partOf());
    } else if (asked.attribute() != null) {
      attribute(asked.attribute());
    }
  }

  private void property(PropertyFacet facet) {
    xml.open("property").with("dataType", facet.measure()).with("cardinality", REQUIRED);
    if (facet.sets().isEmpty()) {
      pattern("propertySet", ".+");
    } else {
      value("propertySet", facet.sets());
    }
    value("baseName", facet.names());
    xml.open("value").open("xs:restriction").with("base", "xs:double");
    xml.open("xs:minInclusive").with("value", figure(facet.from())).close();
    xml.open("xs:maxInclusive").with("value", figure(facet.to())).close();
    xml.close().close().close();
  }

  private void partOf(PartOfFacet facet) {
    xml.open("partOf");
    if (facet.relation() != null) {
      xml.with("relation", facet.relation());
    }
    xml.with("cardinality", REQUIRED).open("entity");
    value("name", List.of(facet.entity()));
    if (!facet.types().isEmpty()) {
      value("predefinedType", facet.types());
    }
    xml.close().close();
  }

  private void attribute(AttributeFacet facet) {
    xml.open("attribute").with("cardinality", REQUIRED);
    value("name", List.of(facet.name()));
    if (facet.pattern() != null) {
      pattern("value", facet.pattern());
    }
    xml.close();
  }

  private void pattern(String name, String pattern) {
    xml.open(name).open("xs:restriction").with("base", "xs:string");
    xml.open("xs:pattern").with("value", pattern).close().close().close();
  }

  /** One text as it is, several as a choice. */
  private void value(String name, List<String> texts) {
    xml.open(name);
    if (texts.size() == 1) {
      xml.text("simpleValue", texts.get(0));
    } else {
      xml.open("xs:restriction").with("base", "xs:string");
      texts.forEach(text -> xml.open("xs:enumeration").with("value", text).close());
      xml.close();
    }
    xml.close();
  }

  private static String figure(double number) {
    return Double.toString(number);
  }
}
