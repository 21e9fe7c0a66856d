/**
 * Tiny models, one rule each. The name of a model is its rule as a sentence.
 *
 * <p>Knows the IFC writer. Must not know who reads the models. Start reading at {@link
 * org.lagwright.testmodels.tiny.TinyModels}.
 */
@NullMarked
package org.lagwright.testmodels.tiny;

import org.jspecify.annotations.NullMarked;
