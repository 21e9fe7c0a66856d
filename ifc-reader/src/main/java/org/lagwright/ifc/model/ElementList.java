package org.lagwright.ifc.model;

import java.util.AbstractList;

/**
 * Elements that are made from what is kept of them when somebody looks at them, each time anew: in
 * a large model all of them as objects would take more memory than reading it. Who goes through
 * them more than once copies them first. Cannot be changed.
 */
public abstract class ElementList extends AbstractList<MepElement> {}
