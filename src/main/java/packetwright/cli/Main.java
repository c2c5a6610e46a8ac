package packetwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.publish.OutputFolder;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: which command, and how a run ended. */
@Command(
    name = "packetwright",
    mixinStandardHelpOptions = true,
    version = "packetwright 1",
    description =
        "Makes printable lesson packets for woodshop classes from one project definition.",
    subcommands = {MakeCommand.class, DrawCommand.class, CheckCommand.class, ShowCommand.class},
    synopsisSubcommandLabel = "COMMAND")
public final class Main {
  /** Done; warnings and notes too. */
  static final int DONE = 0;

  /** The project has errors; nothing was written. */
  static final int HAS_ERRORS = 1;

  /** The command line is wrong. */
  static final int WRONG_USAGE = 2;

  /** A file or folder named on the command line cannot be read or written. */
  static final int UNREADABLE = 3;

  /** Our own bug. */
  static final int BUG = 70;

  private final Terminal terminal;

  private Main(Terminal terminal) {
    this.terminal = terminal;
  }

  Terminal terminal() {
    return terminal;
  }

  /** Runs a command and ends the process with its exit status. */
  public static void main(String... arguments) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, false, StandardCharsets.UTF_8);
    int status = run(new Terminal(out, err, isWatched()), arguments);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** Whether both ends are a terminal; from release 22 on Java cannot tell, and says yes. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isWatched() {
    return System.console() != null;
  }

  /** Runs a command; answers its exit status. */
  static int run(Terminal terminal, String... arguments) {
    CommandLine commandLine = new CommandLine(new Main(terminal));
    commandLine.setOut(terminal.out());
    commandLine.setErr(terminal.err());
    commandLine.setCaseInsensitiveEnumValuesAllowed(true);
    commandLine.getSubcommands().values().forEach(Main::help);
    commandLine.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          if (exception instanceof IOException) {
            terminal.complain("packetwright: " + said(exception) + System.lineSeparator());
            return UNREADABLE;
          }
          terminal.complain(bugReport(exception));
          return BUG;
        });
    int status = commandLine.execute(arguments.length == 0 ? new String[] {"--help"} : arguments);
    return arguments.length == 0 ? WRONG_USAGE : status;
  }

  /** Gives a command {@code --help}, and a last line there that names the samples. */
  private static void help(CommandLine command) {
    command.setUsageHelpAutoWidth(true);
    command
        .getCommandSpec()
        .mixinStandardHelpOptions(true)
        .usageMessage()
        .footer("Samples: " + String.join(", ", ProjectFolder.samples()));
  }

  private static String said(Exception exception) {
    String message = exception.getMessage();
    boolean isOurs =
        exception instanceof UnreadableException
            || exception instanceof OutputFolder.TakenException;
    return isOurs && message != null
        ? message
        : "cannot read or write: " + exception.getClass().getSimpleName() + ", " + message;
  }

  /** What to send in: the exception and where it came from, without the whole stack. */
  private static String bugReport(Exception exception) {
    StringBuilder report = new StringBuilder();
    report.append("packetwright: this is a bug of ours, not of your project. Please send in:\n");
    for (Throwable cause = exception; cause != null; cause = cause.getCause()) {
      report.append("  ").append(cause).append('\n');
      StackTraceElement[] stack = cause.getStackTrace();
      for (int i = 0; i < Math.min(6, stack.length); i++) {
        report.append("    in ").append(stack[i]).append('\n');
      }
    }
    return report.toString();
  }
}
