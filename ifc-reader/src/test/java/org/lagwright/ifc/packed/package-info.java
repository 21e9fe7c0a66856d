/** Packed values against the values themselves. */
@NullMarked
package org.lagwright.ifc.packed;

import org.jspecify.annotations.NullMarked;
