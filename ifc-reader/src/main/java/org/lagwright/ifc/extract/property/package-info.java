/**
 * What a file says about a record without its body: relations, property sets and quantities,
 * materials, what it belongs to.
 *
 * <p>Knows: IFC relations, and what texts say. Must not know: what an element is or how big.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.property.Relations}.
 */
@NullMarked
package org.lagwright.ifc.extract.property;

import org.jspecify.annotations.NullMarked;
