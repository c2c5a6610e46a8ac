package packetwright.paper.packet;

import java.util.List;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.words.Phrase;

/**
 * One step as it is printed.
 *
 * @param mark as printed: {@code 3}, or {@code P1} on the preparation sheet
 * @param id for links
 * @param title as printed
 * @param tools machines first, in the order used
 * @param prepared whether the instructor does it before class: only the key prints it
 * @param back what comes back from a step that the instructor does between those of the student:
 *     the student's packet prints it short; empty for every other step
 * @param prose what to do
 * @param settings what to set, a box for each set-up
 * @param helpers what is made and used to help with the set-up
 * @param cautions most severe first, three statements at most
 * @param more heads on the page of the machines under which more is said of this step
 * @param check who looks before power goes on; empty where no look is asked for
 * @param checks what is looked at, set-up by set-up
 * @param milling how boards of several thicknesses are planed; only where the instructor does it
 * @param fits what to do with a part that does not fit; only where parts are fitted
 * @param figures of the machine as it is set up, to stand beside the text
 * @param drawings at this step
 */
public record PacketStep(
    String mark,
    String id,
    String title,
    List<Tool> tools,
    boolean prepared,
    Phrase back,
    List<Prose> prose,
    List<SettingsBox> settings,
    List<Phrase> helpers,
    List<Panel> cautions,
    List<Phrase> more,
    Phrase check,
    List<Check> checks,
    List<MillingTable> milling,
    List<FitRow> fits,
    List<Sheet> figures,
    List<Sheet> drawings) {
  /** Keeps its own copies. */
  public PacketStep {
    tools = List.copyOf(tools);
    prose = List.copyOf(prose);
    settings = List.copyOf(settings);
    helpers = List.copyOf(helpers);
    cautions = List.copyOf(cautions);
    more = List.copyOf(more);
    checks = List.copyOf(checks);
    milling = List.copyOf(milling);
    fits = List.copyOf(fits);
    figures = List.copyOf(figures);
    drawings = List.copyOf(drawings);
  }

  /** Whether the instructor does it between steps of the student. */
  public boolean isBetween() {
    return !back.pieces().isEmpty();
  }

  /**
   * The passes of boards that differ in thickness.
   *
   * @param boards the thickness of each
   * @param rows a run of passes each
   * @param last what the last pass is set by
   */
  public record MillingTable(Phrase boards, List<MillingRow> rows, Phrase last) {
    /** Keeps its own copy. */
    public MillingTable {
      rows = List.copyOf(rows);
    }
  }

  /**
   * Passes at one go through the same boards.
   *
   * @param passes their numbers
   * @param settings of the planer, one for each pass
   * @param boards numbers of those that go through
   */
  public record MillingRow(Phrase passes, Phrase settings, Phrase boards) {}

  /**
   * A row of the table of the dry fit.
   *
   * @param parts that it speaks of
   * @param wrong how a part does not fit
   * @param act what to do
   */
  public record FitRow(Phrase parts, Phrase wrong, Phrase act) {}

  /**
   * A machine or hand tool.
   *
   * @param name as printed
   * @param powered whether it has a switch
   */
  public record Tool(String name, boolean powered) {}

  /**
   * The settings of one set-up.
   *
   * @param work what is done with it; empty when the step has one set-up only
   * @param lines in the order set
   */
  public record SettingsBox(Phrase work, List<Setting> lines) {
    /** Keeps its own copy. */
    public SettingsBox {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One line of the settings box.
   *
   * @param name what is set
   * @param value to which value
   * @param datum from where it is measured; may be empty
   * @param note what else to know: a cutter's make-up, a value that is only a start; may be empty
   */
  public record Setting(Phrase name, Phrase value, Phrase datum, Phrase note) {}

  /**
   * Hazard statements of one severity.
   *
   * @param severity {@code danger}, {@code warning}, {@code caution} or {@code notice}
   * @param signal the signal word as printed
   * @param symbol the safety alert symbol; none for a notice
   * @param statements one or more
   */
  public record Panel(
      String severity, Phrase signal, List<Sheet> symbol, List<Statement> statements) {
    /** Keeps its own copies. */
    public Panel {
      symbol = List.copyOf(symbol);
      statements = List.copyOf(statements);
    }
  }

  /**
   * A hazard statement.
   *
   * @param only of which cut or step it speaks; empty where it speaks of all
   * @param hazard what can hurt
   * @param consequence what it does
   * @param avoid how not to be hurt
   */
  public record Statement(Phrase only, Phrase hazard, Phrase consequence, Phrase avoid) {}

  /**
   * What holds at a machine whatever the piece.
   *
   * @param name of the machine or tool, or of what the statements are about
   * @param powered whether it has a switch
   * @param steps at which it is used; empty for what is no tool
   * @param panels most severe first
   */
  public record MachineRules(Phrase name, boolean powered, Phrase steps, List<Panel> panels) {
    /** Keeps its own copy. */
    public MachineRules {
      panels = List.copyOf(panels);
    }
  }

  /**
   * What to look at in one set-up.
   *
   * @param machine as printed
   * @param work what is done with the set-up; empty where the step has one only
   * @param items to look at, a tick each
   */
  public record Check(Phrase machine, Phrase work, List<Phrase> items) {
    /** Keeps its own copy. */
    public Check {
      items = List.copyOf(items);
    }
  }
}
