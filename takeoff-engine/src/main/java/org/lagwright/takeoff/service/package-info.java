/**
 * Which service flows through an element, how hot, and who says so.
 *
 * <p>Knows: names of services in several languages, systems, media. Must not know: insulation.
 */
@NullMarked
package org.lagwright.takeoff.service;

import org.jspecify.annotations.NullMarked;
