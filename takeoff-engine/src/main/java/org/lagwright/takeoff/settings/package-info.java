/**
 * What the user chooses: air, rule, materials, what services and systems mean.
 *
 * <p>Knows: the settings file. Must not know: models.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.settings.SettingsReader}.
 */
@NullMarked
package org.lagwright.takeoff.settings;

import org.jspecify.annotations.NullMarked;
