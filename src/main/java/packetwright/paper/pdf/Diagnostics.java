package packetwright.paper.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;

/** Collects what the layout engine warns of: each is a bug of ours, for text may be lost. */
final class Diagnostics implements Consumer<Diagnostic> {
  private final List<String> warnings = new ArrayList<>();

  /** Keeps the engine from writing to the standard error stream. */
  static void silenceTheLog() {
    XRLog.setLoggerImpl(new Silent());
  }

  @Override
  public void accept(Diagnostic diagnostic) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
      warnings.add(diagnostic.getLogMessageId() + ": " + diagnostic.getFormattedMessage());
    }
  }

  void refuseAny() {
    if (!warnings.isEmpty()) {
      throw new PageRefused("the page was not laid out as written: " + warnings);
    }
  }

  /** Hears everything and says nothing: what matters reaches the consumer. */
  private static final class Silent implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {
      // Said nowhere.
    }

    @Override
    public void log(String where, Level level, String message, @Nullable Throwable error) {
      // Said nowhere.
    }

    @Override
    public void setLevel(String where, Level level) {
      // One level for all.
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return diagnostic.getLevel().intValue() >= Level.WARNING.intValue();
    }
  }
}
