package underhold.site;

import java.util.function.Function;

/** What became of a site, or of a report of one, that should be written to a file. */
public sealed interface SiteWriting {
  /** Handles both outcomes. */
  <R> R fold(Function<Written, R> written, Function<Refused, R> refused);

  /** The whole file is on the disk. */
  record Written(SavedState savedState) implements SiteWriting {
    @Override
    public <R> R fold(Function<Written, R> written, Function<Refused, R> refused) {
      return written.apply(this);
    }
  }

  /** Nothing was written; a file that was there is as it was. */
  record Refused(Reason reason, String message) implements SiteWriting {
    @Override
    public <R> R fold(Function<Written, R> written, Function<Refused, R> refused) {
      return refused.apply(this);
    }
  }

  /** Why nothing was written. */
  enum Reason {
    /** Somebody changed or deleted the file after it was read. */
    CHANGED_SINCE_READ,
    /** A new file was wanted and there is one already. */
    EXISTS_ALREADY,
    /** The disk or its rights do not allow it. */
    CANNOT_WRITE
  }
}
