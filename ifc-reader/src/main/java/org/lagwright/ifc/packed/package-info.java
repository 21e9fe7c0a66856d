/**
 * Values of the model in few bytes: a large model holds hundreds of thousands of elements, of which
 * as objects each takes some two thousand bytes, and packed three hundred.
 *
 * <p>Knows: the values of the model, and how they are written into bytes within one run. Must not
 * know: files, records, how anything was read. The bytes are no format: nothing stores them.
 *
 * <p>Start reading at {@link org.lagwright.ifc.packed.PackedElements}.
 */
@NullMarked
package org.lagwright.ifc.packed;

import org.jspecify.annotations.NullMarked;
