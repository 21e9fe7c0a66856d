/**
 * Which attributes an entity has, in which order, and what it is a kind of, in IFC2X3 TC1, IFC4
 * ADD2 TC1 and IFC4X3 ADD2. The rest of the reader asks by attribute name and never by position.
 *
 * <p>Knows: the entity tables of the three schemas. Must not know: what an entity is good for.
 *
 * <p>Start reading at {@link org.lagwright.ifc.schema.IfcFile}.
 */
@NullMarked
package org.lagwright.ifc.schema;

import org.jspecify.annotations.NullMarked;
