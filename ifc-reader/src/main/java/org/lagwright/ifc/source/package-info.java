/**
 * Where models come from: a file or a packed file.
 *
 * <p>Knows: paths, archives, what to tell a user whose file cannot be read. Must not know: what is
 * in a model.
 *
 * <p>Start reading at {@link org.lagwright.ifc.source.ModelReader}.
 */
@NullMarked
package org.lagwright.ifc.source;

import org.jspecify.annotations.NullMarked;
