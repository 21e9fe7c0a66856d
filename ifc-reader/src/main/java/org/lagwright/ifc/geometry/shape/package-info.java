/**
 * What is told of a body: form, section, length, angle, radius, ends; and what ends tell together.
 *
 * <p>Knows: ends and outlines. Must not know: how a body was drawn.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.shape.Shape}.
 */
@NullMarked
package org.lagwright.ifc.geometry.shape;

import org.jspecify.annotations.NullMarked;
