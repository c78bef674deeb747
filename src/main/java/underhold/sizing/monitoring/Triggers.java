package underhold.sizing.monitoring;

import underhold.sizing.Amount;

/**
 * Trigger levels of movement.
 *
 * @param alert the plan is looked at again
 * @param action work changes
 * @param stop work stops
 */
record Triggers(Amount alert, Amount action, Amount stop) {}
