/**
 * Models to test with, written by our own IFC writer: tiny ones with one rule each, and the demo
 * building Alder Quay ferry terminal.
 *
 * <p>Knows: STEP text and closed-form geometry. Must not know: reader, engine, report; reader and
 * generator check each other.
 */
@NullMarked
package org.lagwright.testmodels;

import org.jspecify.annotations.NullMarked;
