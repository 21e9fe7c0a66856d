package org.lagwright.takeoff.heat;

/**
 * Heat flow and the surface it leaves.
 *
 * @param flow watt per metre of run for pipes and ducts, watt per square metre for flat surfaces;
 *     positive from the inside to the air
 * @param surfaceC temperature of the outer surface, degC
 * @param coefficientWPerM2K coefficient at the outer surface; infinite where the surface
 *     temperature was given
 */
public record HeatFlow(double flow, double surfaceC, double coefficientWPerM2K) {}
