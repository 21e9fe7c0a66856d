/**
 * Writes IFC2X3, IFC4 and IFC4X3 records. What differs between the schemas is decided here and
 * nowhere else.
 *
 * <p>Knows IFC attribute order and our few shapes. Must not know the models written with it. Start
 * reading at {@link org.lagwright.testmodels.ifc.IfcWriter}.
 */
@NullMarked
package org.lagwright.testmodels.ifc;

import org.jspecify.annotations.NullMarked;
