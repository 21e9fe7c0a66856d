package org.lagwright.bench;

/**
 * What one process took.
 *
 * @param seconds from start to end
 * @param cpuSeconds user and system time of all its threads
 * @param anonymousBytes most anonymous memory seen, which is what no file backs
 * @param residentBytes most resident memory, files mapped included
 * @param heapBytes most of the Java heap in use, garbage included; 0 for other programs
 */
record Measurement(
    double seconds, double cpuSeconds, long anonymousBytes, long residentBytes, long heapBytes) {}
