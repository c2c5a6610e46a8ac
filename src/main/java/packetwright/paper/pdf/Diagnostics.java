package packetwright.paper.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;

/** Collects what the layout engine warns of: each is a bug of ours, for text may be lost. */
final class Diagnostics implements Consumer<Diagnostic> {
  private final Set<String> warnings = new LinkedHashSet<>();

  /** Keeps the engine from writing to the standard error stream. */
  static void silenceTheLog() {
    XRLog.setLoggerImpl(new Silent());
  }

  @Override
  public void accept(Diagnostic diagnostic) {
    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
      warnings.add(inWords(diagnostic));
    }
  }

  void refuseAny() {
    if (!warnings.isEmpty()) {
      throw new PageRefused("the page was not laid out as written: " + String.join("; ", warnings));
    }
  }

  /** What usually goes wrong in a template, said so that it can be mended. */
  private static String inWords(Diagnostic diagnostic) {
    String id = diagnostic.getLogMessageId().toString();
    if (id.contains("LOAD_CSS") || id.contains("IMPORT")) {
      return "a style sheet asks for another one, and no other is read";
    } else if (id.contains("LOAD") && id.contains("RESOURCE")) {
      return "it asks for a file, and none is read";
    }
    return diagnostic.getFormattedMessage();
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
