package packetwright.paper.packet;

import java.util.List;
import packetwright.text.words.Phrase;

/**
 * Everything printed in an answer key, in printing order; a template only arranges it.
 *
 * @param heading of every page
 * @param result what the run of the procedure showed
 * @param substituted values that differ from the project's own; may be empty
 * @param preparation steps that the instructor does before class
 * @param machines what holds at the machines that the instructor uses, whatever the piece
 * @param between steps that the instructor does between those of the student
 * @param helpers test pieces, blocks and the like, for one station
 * @param helperStock what the test pieces of one station take
 * @param sizes in groups
 * @param blanks how each rough size is reckoned
 * @param settings of each operation with a machine
 * @param checks set-ups to look at before power goes on
 * @param fitting the right answers of the fitting sheet, a table for each measured size
 * @param form which form of the quiz the answers belong to
 * @param answers of the quiz
 * @param looser limits that the shop has set looser than ours
 * @param accepted refusals that the instructor answers for
 * @param disputed limits on which published values differ
 * @param safety each rule that fired, most severe first
 */
public record AnswerKey(
    Heading heading,
    List<Phrase> result,
    List<Substituted> substituted,
    List<PacketStep> preparation,
    List<PacketStep.MachineRules> machines,
    List<PacketStep> between,
    List<HelperRow> helpers,
    List<Phrase> helperStock,
    List<SizeGroup> sizes,
    List<BlankSum> blanks,
    List<SettingsRow> settings,
    List<StepChecks> checks,
    List<FittingTable> fitting,
    String form,
    List<Answer> answers,
    List<LimitRow> looser,
    List<AcceptedRow> accepted,
    List<LimitRow> disputed,
    List<Safety> safety) {
  /** Keeps its own copies. */
  public AnswerKey {
    result = List.copyOf(result);
    substituted = List.copyOf(substituted);
    preparation = List.copyOf(preparation);
    machines = List.copyOf(machines);
    between = List.copyOf(between);
    helpers = List.copyOf(helpers);
    helperStock = List.copyOf(helperStock);
    sizes = List.copyOf(sizes);
    blanks = List.copyOf(blanks);
    settings = List.copyOf(settings);
    checks = List.copyOf(checks);
    fitting = List.copyOf(fitting);
    answers = List.copyOf(answers);
    looser = List.copyOf(looser);
    accepted = List.copyOf(accepted);
    disputed = List.copyOf(disputed);
    safety = List.copyOf(safety);
  }

  /**
   * A given that was substituted.
   *
   * @param name as formulas use it
   * @param about its sentence
   * @param own the project's own value
   * @param now the value in these documents
   */
  public record Substituted(String name, Phrase about, Phrase own, Phrase now) {}

  /**
   * A thing that is made before class.
   *
   * @param mark of the step that uses it
   * @param title of the step
   * @param name with the count, where it is more than one
   * @param sizes of it
   */
  public record HelperRow(String mark, String title, Phrase name, Phrase sizes) {}

  /**
   * Sizes of one kind.
   *
   * @param title of the table
   * @param rows in the project's order
   */
  public record SizeGroup(Phrase title, List<SizeRow> rows) {
    /** Keeps its own copy. */
    public SizeGroup {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One size with its working.
   *
   * @param title its sentence, or its name in plain words
   * @param name as formulas use it
   * @param formula as written; empty for one that was chosen
   * @param numbers the formula with numbers; empty for one that was chosen
   * @param value drawn
   * @param low worst case
   * @param high worst case; empty, as {@code low} is, when nothing varies
   * @param fitted whether it is a part's and is cut to fit
   */
  public record SizeRow(
      Phrase title,
      String name,
      String formula,
      Phrase numbers,
      Phrase value,
      Phrase low,
      Phrase high,
      boolean fitted) {}

  /**
   * How a rough piece's size comes about.
   *
   * @param name as printed
   * @param material as printed
   * @param length its items
   * @param lengthTotal their sum
   * @param width its items
   * @param widthTotal their sum
   * @param thickness as bought
   * @param boards each of so many boards that it is glued up from; empty for a single board
   * @param board its width's items
   * @param boardTotal their sum
   */
  public record BlankSum(
      Phrase name,
      Phrase material,
      List<Item> length,
      Phrase lengthTotal,
      List<Item> width,
      Phrase widthTotal,
      Phrase thickness,
      Phrase boards,
      List<Item> board,
      Phrase boardTotal) {
    /** Keeps its own copies. */
    public BlankSum {
      length = List.copyOf(length);
      width = List.copyOf(width);
      board = List.copyOf(board);
    }
  }

  /**
   * One item of a sum.
   *
   * @param what is added
   * @param amount of it
   */
  public record Item(Phrase what, Phrase amount) {}

  /**
   * What one operation sets.
   *
   * @param mark of the step
   * @param title of the step
   * @param machine as printed
   * @param work what it does to which piece
   * @param lines in the order set
   */
  public record SettingsRow(
      String mark, String title, Phrase machine, Phrase work, List<SettingLine> lines) {
    /** Keeps its own copy. */
    public SettingsRow {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One setting.
   *
   * @param name what is set
   * @param value exactly
   * @param datum from where it is measured; may be empty
   * @param tolerance plus or minus; may be empty
   * @param kind whether it bounds a kept surface
   * @param note a cutter's make-up, or that the student's measurement replaces it; may be empty
   */
  public record SettingLine(
      Phrase name, Phrase value, Phrase datum, Phrase tolerance, Phrase kind, Phrase note) {}

  /**
   * The set-ups of a step.
   *
   * @param mark of the step
   * @param title of the step
   * @param checks one for each box of initials
   */
  public record StepChecks(String mark, String title, List<PacketStep.Check> checks) {
    /** Keeps its own copy. */
    public StepChecks {
      checks = List.copyOf(checks);
    }
  }

  /**
   * Right answers of the fitting sheet.
   *
   * @param measured what was measured
   * @param parts that are cut to it, a column each
   * @param rows from the least that can be measured to the most
   */
  public record FittingTable(Phrase measured, List<Phrase> parts, List<FittingRow> rows) {
    /** Keeps its own copies. */
    public FittingTable {
      parts = List.copyOf(parts);
      rows = List.copyOf(rows);
    }
  }

  /**
   * The answers to one measurement.
   *
   * @param measured as read
   * @param cuts the size that each part is cut to
   */
  public record FittingRow(Phrase measured, List<Phrase> cuts) {
    /** Keeps its own copy. */
    public FittingRow {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * A question with its answer.
   *
   * @param number from 1
   * @param prompt as asked
   * @param answer the right one
   * @param working how it is reached, a line each
   * @param mistakes wrong answers and what each shows
   */
  public record Answer(
      int number, Phrase prompt, Phrase answer, List<Phrase> working, List<Mistake> mistakes) {
    /** Keeps its own copies. */
    public Answer {
      working = List.copyOf(working);
      mistakes = List.copyOf(mistakes);
    }
  }

  /**
   * A wrong answer.
   *
   * @param answer as the student would write it
   * @param shows what was done wrong
   */
  public record Mistake(Phrase answer, Phrase shows) {}

  /**
   * A rule that fired.
   *
   * @param severity {@code danger}, {@code warning}, {@code caution} or {@code notice}
   * @param signal the signal word as printed
   * @param statement as printed for the student
   * @param source where the rule comes from
   * @param fired at which steps
   */
  public record Safety(
      String severity,
      Phrase signal,
      PacketStep.Statement statement,
      Phrase source,
      List<Fired> fired) {
    /** Keeps its own copy. */
    public Safety {
      fired = List.copyOf(fired);
    }
  }

  /**
   * Where a rule fired.
   *
   * @param marks of the step, or of all steps with these reasons
   * @param title of the step; empty for several
   * @param why the sizes that made it fire, each reason once
   */
  public record Fired(List<String> marks, String title, List<Phrase> why) {
    /** Keeps its own copies. */
    public Fired {
      marks = List.copyOf(marks);
      why = List.copyOf(why);
    }
  }

  /**
   * A limit of a machine.
   *
   * @param machine as printed
   * @param limit what is limited
   * @param stated in this shop
   * @param own ours
   * @param source of ours
   * @param published each value that others publish, and who
   */
  public record LimitRow(
      Phrase machine,
      Phrase limit,
      Phrase stated,
      Phrase own,
      Phrase source,
      List<Phrase> published) {
    /** Keeps its own copy. */
    public LimitRow {
      published = List.copyOf(published);
    }
  }

  /**
   * A refusal that the instructor answers for.
   *
   * @param mark of the step
   * @param title of the step
   * @param code of the refusal
   * @param message what is refused
   * @param because the instructor's reason
   */
  public record AcceptedRow(
      String mark, String title, String code, Phrase message, Phrase because) {}
}
