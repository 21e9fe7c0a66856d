/**
 * Pictures for the README, drawn from what the program wrote.
 *
 * <p>Knows: what a reader of the README should see. Must not know: how anything was computed.
 *
 * <p>Start reading at {@link org.lagwright.testmodels.picture.ModelPicture}.
 */
@NullMarked
package org.lagwright.testmodels.picture;

import org.jspecify.annotations.NullMarked;
