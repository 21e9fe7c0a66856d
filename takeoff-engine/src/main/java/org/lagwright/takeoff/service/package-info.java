/**
 * Which service flows through an element, how hot, and who says so.
 *
 * <p>Knows: names of services in several languages, systems, media. Must not know: insulation.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.service.ServiceClassifier}.
 */
@NullMarked
package org.lagwright.takeoff.service;

import org.jspecify.annotations.NullMarked;
