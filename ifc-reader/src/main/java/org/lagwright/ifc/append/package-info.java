/**
 * Adds records to an exchange file; every byte that was there stays, and its order with it.
 *
 * <p>Knows: how values are written in ISO 10303-21, and which attributes a schema gives to an
 * entity. Must not know: what is added, or why.
 *
 * <p>Start reading at {@link org.lagwright.ifc.append.IfcAppender}.
 */
@NullMarked
package org.lagwright.ifc.append;

import org.jspecify.annotations.NullMarked;
