/**
 * No underpinning: the plan to protect and to monitor. Zones of influence by each published rule,
 * limits by structure, strain and damage, trigger levels, instruments and their accuracy,
 * vibration, readings, and who acts at which level.
 */
@NullMarked
package underhold.sizing.monitoring;

import org.jspecify.annotations.NullMarked;
