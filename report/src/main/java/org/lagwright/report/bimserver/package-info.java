/**
 * A BIMserver as the place where models come from and results go to, over its JSON interface (read
 * and tried at release 1.5.186 of opensourceBIM/BIMserver). No class of that server is linked here:
 * it is under the AGPL.
 *
 * <p>Knows: HTTP, the server's interface and its quirks, where credentials come from. Must not
 * know: what is in a model or a takeoff, options, exit codes.
 *
 * <p>Start reading at {@link org.lagwright.report.bimserver.BimServer}.
 */
@NullMarked
package org.lagwright.report.bimserver;

import org.jspecify.annotations.NullMarked;
