/**
 * Measures the program beside others, each as a whole process: {@code .ci/bench}. Timed here and in
 * no test.
 *
 * <p>Knows how to start and watch processes, and what is known of the large models. Must not know
 * the reader: engines are commands. Start reading at {@link org.lagwright.bench.Bench}; a new
 * engine is one more in {@link org.lagwright.bench.Engines}, a new limit one more in {@link
 * org.lagwright.bench.Limits}.
 */
@NullMarked
package org.lagwright.bench;

import org.jspecify.annotations.NullMarked;
