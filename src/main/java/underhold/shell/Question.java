package underhold.shell;

import java.util.Optional;
import underhold.consult.OpenQuestion;
import underhold.site.FactDefinition;

/**
 * What the interview asks now.
 *
 * @param topic what sort of question it is
 * @param zone the place of the zone it is about
 * @param zoneName the name of that zone; empty where there is none yet
 * @param fact the fact asked for; empty unless the topic is a fact
 * @param open what hangs on it; empty where that was not worked out
 * @param former what was answered before; empty at the first time
 * @param number its number, from 1
 * @param toGo about how many will follow
 */
record Question(
    Topic topic,
    int zone,
    String zoneName,
    Optional<FactDefinition> fact,
    Optional<OpenQuestion> open,
    String former,
    int number,
    int toGo) {

  /** The sorts of questions. */
  enum Topic {
    SITE_NAME,
    ZONE_NAME,
    FACT,
    /** Whether to go on with questions that only move scores. */
    GO_ON,
    ANOTHER_ZONE,
    /** Nothing is left to ask. */
    NONE
  }
}
