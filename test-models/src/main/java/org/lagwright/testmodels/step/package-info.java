/**
 * Writes ISO 10303-21 text: records, numbers, values, escapes.
 *
 * <p>Knows STEP syntax only. Must not know IFC. Start reading at {@link
 * org.lagwright.testmodels.step.StepWriter}.
 */
@NullMarked
package org.lagwright.testmodels.step;

import org.jspecify.annotations.NullMarked;
