package org.lagwright.takeoff.compare;

/** What became of an element. Several may hold at once; none means that it is as it was. */
public enum Change {
  ADDED("added"),
  REMOVED("removed"),
  /** The same piece under another GlobalId, told by kind, type, size and place. */
  REISSUED("new GlobalId"),
  MOVED("moved"),
  RESIZED("resized"),
  LENGTH_CHANGED("length changed"),
  FORM_CHANGED("form changed"),
  RESERVICED("other service"),
  THICKNESS_CHANGED("thickness changed"),
  MATERIAL_CHANGED("material changed"),
  SCOPE_CHANGED("scope changed");

  private final String label;

  Change(String label) {
    this.label = label;
  }

  /** In words: {@code other service}. */
  public String label() {
    return label;
  }
}
