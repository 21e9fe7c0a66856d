/**
 * Models of any size whose quantities are known exactly, for measuring speed and memory: lines of
 * pipes and ducts with properties, ports and systems, and between them what a takeoff passes over.
 *
 * <p>What is measured here is the design, not the file: quantities are counted from the lines
 * before they are written. Must not know the reader. Start reading at {@link
 * org.lagwright.testmodels.large.LargeModel}.
 */
@NullMarked
package org.lagwright.testmodels.large;

import org.jspecify.annotations.NullMarked;
