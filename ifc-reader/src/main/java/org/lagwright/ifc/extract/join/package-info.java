/**
 * Several files as one model: elements and coverings that are there twice, joints, hosts and places
 * in other files.
 *
 * <p>Knows: models that were read, each by itself. Must not know: how a file is read.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.join.ModelJoiner}.
 */
@NullMarked
package org.lagwright.ifc.extract.join;

import org.jspecify.annotations.NullMarked;
