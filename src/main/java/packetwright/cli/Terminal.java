package packetwright.cli;

import java.io.PrintWriter;
import java.util.Collections;

/** Where a command writes: results to out, findings and progress to err. */
final class Terminal {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean isWatched;
  private int shown;

  /**
   * A terminal.
   *
   * @param isWatched whether a person looks at it; progress is shown to nobody else
   */
  Terminal(PrintWriter out, PrintWriter err, boolean isWatched) {
    this.out = out;
    this.err = err;
    this.isWatched = isWatched;
  }

  PrintWriter out() {
    return out;
  }

  PrintWriter err() {
    return err;
  }

  void print(String text) {
    clearProgress();
    out.print(text);
    out.flush();
  }

  void complain(String text) {
    clearProgress();
    err.print(text);
    err.flush();
  }

  /** Shows what is being done, on one line that the next message replaces. */
  void progress(String doing) {
    if (isWatched) {
      clearProgress();
      err.print(doing + " ...");
      err.flush();
      shown = doing.length() + 4;
    }
  }

  void clearProgress() {
    if (shown > 0) {
      err.print("\r" + String.join("", Collections.nCopies(shown, " ")) + "\r");
      err.flush();
      shown = 0;
    }
  }
}
