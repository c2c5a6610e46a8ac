package packetwright.cli;

import java.io.IOException;

/** A file or folder named on the command line that is not there or is not what it should be. */
final class UnreadableException extends IOException {
  UnreadableException(String message) {
    super(message);
  }
}
