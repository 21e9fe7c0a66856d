/**
 * Finding listed words and phrases in the names that designers write.
 *
 * <p>Knows: letters, accents, word boundaries, compounds. Must not know: what the words mean.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.words.PhraseBook}.
 */
@NullMarked
package org.lagwright.takeoff.words;

import org.jspecify.annotations.NullMarked;
