package underhold.classroom.making;

import java.util.Optional;
import underhold.advice.SupportOption;

/**
 * A change that takes the first place from the method that leads.
 *
 * @param change the change
 * @param then what leads then; none where nothing does
 */
record Turned(Change change, Optional<SupportOption> then) {}
