/**
 * Whether an element gets insulation: in, out or ask. Every element is in exactly one.
 *
 * <p>Knows: services, kinds and forms. Must not know: how thick.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.scope.ScopeRules}.
 */
@NullMarked
package org.lagwright.takeoff.scope;

import org.jspecify.annotations.NullMarked;
