/**
 * Outlines and profiles: circle, rectangle, oval, and what any closed line is.
 *
 * <p>Knows: the profiles of IFC, and how round a polygon is. Must not know: what is made of them.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.profile.Profiles}.
 */
@NullMarked
package org.lagwright.ifc.geometry.profile;

import org.jspecify.annotations.NullMarked;
