package org.lagwright.report;

import java.io.ByteArrayOutputStream;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.lagwright.ifc.model.Point;

/** One XML file in memory, written element by element, a line for each. */
public final class XmlFile {

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final XMLStreamWriter xml;
  private int depth = 1;
  private boolean leaf = true;

  /** Begins the file with its root element. */
  public XmlFile(String root) {
    try {
      xml = XMLOutputFactory.newFactory().createXMLStreamWriter(bytes, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeCharacters("\n");
      xml.writeStartElement(root);
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** Begins an element. */
  public XmlFile open(String name) {
    try {
      newLine();
      xml.writeStartElement(name);
      depth++;
      leaf = true;
      return this;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** An attribute of the element begun last. */
  public XmlFile with(String attribute, String value) {
    try {
      xml.writeAttribute(attribute, value);
      return this;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** Ends the element begun last. */
  public XmlFile close() {
    try {
      depth--;
      if (!leaf) {
        newLine();
      }
      xml.writeEndElement();
      leaf = false;
      return this;
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  /** A whole element with text that XML can hold. */
  public XmlFile text(String name, String text) {
    open(name);
    try {
      xml.writeCharacters(text);
    } catch (XMLStreamException e) {
      throw broken(e);
    }
    return close();
  }

  /** A point or direction with its three coordinates. */
  public XmlFile point(String name, Point point) {
    return open(name)
        .text("X", number(point.x()))
        .text("Y", number(point.y()))
        .text("Z", number(point.z()))
        .close();
  }

  /** A figure to a millionth. */
  public static String number(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }

  /** Ends the file. */
  public byte[] bytes() {
    try {
      depth = 0;
      if (!leaf) {
        newLine();
      }
      xml.writeEndDocument();
      xml.close();
      return bytes.toByteArray();
    } catch (XMLStreamException e) {
      throw broken(e);
    }
  }

  private void newLine() throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }

  /** Writing to memory fails only if we use the writer wrongly. */
  private static IllegalStateException broken(XMLStreamException e) {
    return new IllegalStateException("XML cannot be written", e);
  }
}
