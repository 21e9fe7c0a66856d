/**
 * Bodies of faces and how to measure them: edges, open ends, bends, reducers, tees, hollow walls;
 * and what booleans leave of a body.
 *
 * <p>Knows: faces. Must not know: records of IFC.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.mesh.MeshMeasurer}.
 */
@NullMarked
package org.lagwright.ifc.geometry.mesh;

import org.jspecify.annotations.NullMarked;
