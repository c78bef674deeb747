package underhold.consult.screening;

import java.util.List;
import underhold.site.Site;
import underhold.site.Zone;

/** What became of reading a zone. */
public sealed interface ZoneReading {
  /** A zone of a valid site. */
  record Read(Site site, Zone zone) implements ZoneReading {}

  /** No zone; what the user has to put right, a line each. */
  record Refused(List<String> messages) implements ZoneReading {
    public Refused {
      messages = List.copyOf(messages);
    }
  }
}
