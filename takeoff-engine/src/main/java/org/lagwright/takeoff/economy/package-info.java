/**
 * What heat costs: annual heat, money and carbon dioxide, and the thickness at which insulation and
 * heat together cost least. Pure functions.
 *
 * <p>Knows: heat flows, hours, prices, emission factors. Must not know: pipes, rules, stock.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.economy.EnergyTariff}.
 */
@NullMarked
package org.lagwright.takeoff.economy;

import org.jspecify.annotations.NullMarked;
