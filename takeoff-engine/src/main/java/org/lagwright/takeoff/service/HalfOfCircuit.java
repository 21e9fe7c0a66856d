package org.lagwright.takeoff.service;

import org.jspecify.annotations.Nullable;

/**
 * Flow or return of a circuit that may carry chilled or condenser water, {@code CWS} and {@code
 * CWR}; only its temperature tells which.
 *
 * @param direction flow or return
 * @param otherHalf the word for the other half, beside which somewhere in the model this one means
 *     nothing else; null where it never does
 * @param cold family meant where the temperature is one of what cools
 * @param warm family meant where it is warmer than that
 */
record HalfOfCircuit(String direction, @Nullable String otherHalf, String cold, String warm) {}
