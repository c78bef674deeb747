package underhold.report.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps what the PDF library has to say off the screen: standard output is for answers. */
final class QuietLog implements XRLogger {

  /** Silences the library, and spares it the search for fonts of the machine. */
  static void use() {
    OwnFonts.use();
    XRLog.setLoggerImpl(new QuietLog());
    XRLog.setLoggingEnabled(false);
  }

  @Override
  public void log(String where, Level level, String message) {}

  @Override
  public void log(String where, Level level, String message, Throwable cause) {}

  @Override
  public void setLevel(String logger, Level level) {}

  @Override
  public boolean isLogLevelEnabled(Diagnostic diagnostic) {
    return false;
  }
}
