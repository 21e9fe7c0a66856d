package org.lagwright.report.bcf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.report.PlainText;
import org.lagwright.report.XmlFile;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;

/**
 * Writes the issues of a takeoff as one BCF file. Names and order of elements are those of the
 * schemas of buildingSMART for BCF-XML 2.1 and 3.0.
 */
public final class BcfArchive {

  private static final String AUTHOR = "Lagwright";
  private static final String STATUS = "Open";
  private static final Pattern IFC_GUID = Pattern.compile("[0-9A-Za-z_$]{22}");

  private final Takeoff takeoff;
  private final BcfVersion version;
  private final String created;
  private final List<Topic> topics;
  private final List<Trunk> all;

  /**
   * Prepares the file.
   *
   * @param created when the issues were found
   */
  public BcfArchive(Takeoff takeoff, BcfVersion version, Instant created) {
    this.takeoff = takeoff;
    this.version = version;
    this.created = created.truncatedTo(ChronoUnit.SECONDS).toString();
    this.topics = TopicList.of(takeoff);
    this.all =
        Trunk.of(
            takeoff.elements().stream()
                .map(TakenElement::element)
                .filter(element -> element.kind().isLagged())
                .toList());
  }

  /** How many topics it has. */
  public int topics() {
    return topics.size();
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    put(zip, "bcf.version", new XmlFile("Version").with("VersionId", version.id()).bytes());
    if (version == BcfVersion.V3_0) {
      put(zip, "extensions.xml", extensions());
    }
    for (Topic topic : topics) {
      write(topic, zip);
    }
    zip.finish();
  }

  private void write(Topic topic, ZipOutputStream zip) throws IOException {
    List<Trunk> trunks = Trunk.of(topic);
    String folder = topic.guid() + "/";
    put(zip, folder + "markup.bcf", markup(topic, !trunks.isEmpty()));
    if (!trunks.isEmpty()) {
      // walls and slabs may be far larger than what meets them
      List<Trunk> elements = Trunk.of(topic.elements());
      View view = View.of(elements.isEmpty() ? trunks : elements);
      put(zip, folder + "viewpoint.bcfv", viewpoint(topic, view));
      put(zip, folder + "snapshot.png", Snapshot.png(view, all, trunks));
    }
  }

  private void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(Instant.parse(created).toEpochMilli());
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private static byte[] extensions() {
    XmlFile xml = new XmlFile("Extensions");
    xml.open("TopicTypes");
    TopicList.TYPES.forEach(type -> xml.text("TopicType", type));
    xml.close().open("TopicStatuses").text("TopicStatus", STATUS).close().open("Priorities");
    TopicList.PRIORITIES.forEach(priority -> xml.text("Priority", priority));
    return xml.close().open("Users").text("User", AUTHOR).close().bytes();
  }

  private byte[] markup(Topic topic, boolean seen) {
    boolean old = version == BcfVersion.V2_1;
    XmlFile xml = new XmlFile("Markup");
    header(xml, topic, old);
    xml.open("Topic")
        .with("Guid", topic.guid())
        .with("TopicType", topic.type())
        .with("TopicStatus", STATUS)
        .text("Title", line(topic.title()))
        .text("Priority", topic.priority());
    if (!topic.label().isEmpty() && old) {
      xml.text("Labels", line(topic.label()));
    } else if (!topic.label().isEmpty()) {
      xml.open("Labels").text("Label", line(topic.label())).close();
    }
    xml.text("CreationDate", created)
        .text("CreationAuthor", AUTHOR)
        .text("Description", line(topic.description()));
    if (old) {
      xml.close();
      viewpoints(xml, topic, seen, "Viewpoints");
    } else if (seen) {
      xml.open("Viewpoints");
      viewpoints(xml, topic, true, "ViewPoint");
    }
    return xml.bytes();
  }

  /** The files that the elements are in; all where it has none. */
  private void header(XmlFile xml, Topic topic, boolean old) {
    List<Integer> files = topic.models();
    xml.open("Header");
    if (!old) {
      xml.open("Files");
    }
    for (ModelFile file : takeoff.models()) {
      if (files.isEmpty() || files.contains(file.index())) {
        xml.open("File").text("Filename", line(file.name())).close();
      }
    }
    xml.close();
    if (!old) {
      xml.close();
    }
  }

  private static void viewpoints(XmlFile xml, Topic topic, boolean seen, String name) {
    if (seen) {
      xml.open(name)
          .with("Guid", topic.viewpointGuid())
          .text("Viewpoint", "viewpoint.bcfv")
          .text("Snapshot", "snapshot.png")
          .close();
    }
  }

  private byte[] viewpoint(Topic topic, View view) {
    XmlFile xml = new XmlFile("VisualizationInfo").with("Guid", topic.viewpointGuid());
    List<Topic.Component> named =
        topic.components().stream().filter(c -> IFC_GUID.matcher(c.globalId()).matches()).toList();
    if (!named.isEmpty()) {
      components(xml, named);
    }
    xml.open("OrthogonalCamera")
        .point("CameraViewPoint", view.eye())
        .point("CameraDirection", View.DIRECTION)
        .point("CameraUpVector", View.UP)
        .text("ViewToWorldScale", XmlFile.number(view.heightM()));
    if (version == BcfVersion.V3_0) {
      xml.text("AspectRatio", XmlFile.number(View.ASPECT));
    }
    return xml.close().bytes();
  }

  private void components(XmlFile xml, List<Topic.Component> components) {
    xml.open("Components").open("Selection");
    components.forEach(component -> component(xml, component));
    xml.close().open("Visibility").with("DefaultVisibility", "true").close();
    xml.open("Coloring").open("Color").with("Color", String.format("%08X", Snapshot.INK.getRGB()));
    if (version == BcfVersion.V3_0) {
      xml.open("Components");
    }
    components.forEach(component -> component(xml, component));
    if (version == BcfVersion.V3_0) {
      xml.close();
    }
    xml.close().close().close();
  }

  private static void component(XmlFile xml, Topic.Component component) {
    xml.open("Component").with("IfcGuid", component.globalId());
    String tag = component.tag();
    if (tag != null && !tag.isBlank()) {
      xml.text("AuthoringToolId", line(tag));
    }
    xml.close();
  }

  private static String line(String text) {
    return PlainText.oneLine(text);
  }
}
