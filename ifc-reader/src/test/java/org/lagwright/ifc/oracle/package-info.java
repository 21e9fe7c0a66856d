/**
 * Other programs measure the bodies that we measure, and the figures are compared. Run by the Maven
 * profile {@code oracle} only, because they are large, and node has to be there.
 *
 * <p>What they cannot do: {@link org.lagwright.ifc.oracle.GeomServer} knows IFC2X3 only, draws
 * circles as polygons of about 25 sides (volumes of round bodies are 1.1 % short, of bends 1.4 %),
 * and adds up items that overlap. {@link org.lagwright.testmodels.check.WebIfc} knows all three
 * schemas, but leaves the ends of revolved and swept bodies open and turns some meshes inside out,
 * so that its volumes tell nothing; boxes and outer areas are compared. Neither tells diameters,
 * angles or what an element is.
 *
 * <p>Start reading at {@link org.lagwright.ifc.oracle.Comparison}.
 */
@NullMarked
package org.lagwright.ifc.oracle;

import org.jspecify.annotations.NullMarked;
