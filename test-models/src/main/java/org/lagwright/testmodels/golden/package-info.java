/**
 * Expected texts kept as files, whose difference reads like a change to the estimate.
 *
 * <p>Knows: files of test resources. Must not know: what is in them.
 */
@NullMarked
package org.lagwright.testmodels.golden;

import org.jspecify.annotations.NullMarked;
