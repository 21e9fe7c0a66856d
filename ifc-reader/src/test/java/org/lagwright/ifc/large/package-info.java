/** Large generated models: their quantities as the reader sees them, and what reading costs. */
@NullMarked
package org.lagwright.ifc.large;

import org.jspecify.annotations.NullMarked;
