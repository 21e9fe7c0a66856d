/**
 * A BIMserver of our own for the proof, in a process of its own.
 *
 * <p>Knows: how to start the released server. Must not know: anything of Lagwright, which in its
 * turn knows nothing of these classes.
 *
 * <p>Start reading at {@link org.lagwright.bimserverproof.StartServer}.
 */
@NullMarked
package org.lagwright.bimserverproof;

import org.jspecify.annotations.NullMarked;
