package org.lagwright.ifc.model;

/**
 * What a model was read from. Only its reader can ask it anything, which it does where another file
 * tells what an element is joined to.
 */
public interface Origin {

  /** That of a model which no file was read for. */
  Origin NONE = new Origin() {};
}
