package packetwright.paper.packet;

import java.util.List;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.words.Phrase;

/**
 * Everything printed in a student packet, in printing order; a template only arranges it.
 *
 * @param heading of every page
 * @param cover first page
 * @param apart the parts taken apart; none or one
 * @param drawings of the parts, a sheet each
 * @param parts table of finished parts
 * @param handed pieces that the instructor hands out, as they are then
 * @param blanks pieces that students cut roughly themselves
 * @param steps numbered from 1; what the instructor does before class is not among them
 * @param machines what holds at each machine whatever the piece
 * @param fitting where measurements are written down
 * @param quiz last pages
 * @param rubric rows that the student assesses, each with its limit
 * @param glossary words of the trade that the steps use
 */
public record StudentPacket(
    Heading heading,
    Cover cover,
    List<Sheet> apart,
    List<Sheet> drawings,
    List<PartRow> parts,
    List<BlankRow> handed,
    List<BlankRow> blanks,
    List<PacketStep> steps,
    List<PacketStep.MachineRules> machines,
    FittingSheet fitting,
    QuizPage quiz,
    List<Phrase> rubric,
    List<Term> glossary) {
  /** Keeps its own copies. */
  public StudentPacket {
    apart = List.copyOf(apart);
    drawings = List.copyOf(drawings);
    parts = List.copyOf(parts);
    handed = List.copyOf(handed);
    blanks = List.copyOf(blanks);
    steps = List.copyOf(steps);
    machines = List.copyOf(machines);
    rubric = List.copyOf(rubric);
    glossary = List.copyOf(glossary);
  }

  /**
   * The first page.
   *
   * @param scale a strip of true inches or centimetres across the page
   * @param picture of the finished project; none or one
   * @param introduction by the author
   * @param objectives what the student learns
   * @param machines used, as printed
   * @param tools used by hand
   * @param supplies used up
   * @param gear worn
   * @param signs that show the gear
   * @param rules of this shop
   */
  public record Cover(
      Sheet scale,
      List<Sheet> picture,
      List<Prose> introduction,
      List<Phrase> objectives,
      List<Phrase> machines,
      List<Phrase> tools,
      List<Phrase> supplies,
      List<Phrase> gear,
      List<Sheet> signs,
      List<Phrase> rules) {
    /** Keeps its own copies. */
    public Cover {
      picture = List.copyOf(picture);
      introduction = List.copyOf(introduction);
      objectives = List.copyOf(objectives);
      machines = List.copyOf(machines);
      tools = List.copyOf(tools);
      supplies = List.copyOf(supplies);
      gear = List.copyOf(gear);
      signs = List.copyOf(signs);
      rules = List.copyOf(rules);
    }
  }

  /**
   * A word of the trade.
   *
   * @param word as printed
   * @param meaning in plain words
   */
  public record Term(String word, Phrase meaning) {}

  /**
   * A line of the parts table; sizes are finished sizes, marked where the student's own measurement
   * replaces one.
   *
   * @param letter on drawings
   * @param name as printed
   * @param count how many of it
   * @param material as printed
   * @param length along the grain
   * @param width across it
   * @param thickness of the part
   */
  public record PartRow(
      String letter,
      Phrase name,
      int count,
      Phrase material,
      Phrase length,
      Phrase width,
      Phrase thickness) {}

  /**
   * A piece that parts are cut from.
   *
   * @param name as printed
   * @param pieces what is cut from it
   * @param material as printed
   * @param length as handed out, or rough
   * @param width as handed out, or rough
   * @param thickness as handed out, or as bought
   * @param done what the instructor has done to it; empty where students do all of it
   */
  public record BlankRow(
      Phrase name,
      Phrase pieces,
      Phrase material,
      Phrase length,
      Phrase width,
      Phrase thickness,
      Phrase done) {}

  /**
   * Where a student writes what was measured.
   *
   * @param measured sizes to measure
   * @param fitted sizes to cut to what was measured
   */
  public record FittingSheet(List<Measured> measured, List<Fitted> fitted) {
    /** Keeps its own copies. */
    public FittingSheet {
      measured = List.copyOf(measured);
      fitted = List.copyOf(fitted);
    }
  }

  /**
   * A size to measure.
   *
   * @param name as printed
   * @param drawn its drawn value
   */
  public record Measured(Phrase name, Phrase drawn) {}

  /**
   * A size to cut to what was measured.
   *
   * @param part letter and name
   * @param what length or width
   * @param drawn value
   * @param low the least that it may come out, on a graduation
   * @param high the most
   * @param reckoning the formula in words, with the numbers that are known
   */
  public record Fitted(
      Phrase part, Phrase what, Phrase drawn, Phrase low, Phrase high, Phrase reckoning) {}

  /**
   * The measuring quiz.
   *
   * @param form which form it is
   * @param bar a bar of true length, to see whether the page was printed at its size
   * @param barText what to measure and what to do when it differs
   * @param questions in order
   */
  public record QuizPage(String form, Sheet bar, Phrase barText, List<Question> questions) {
    /** Keeps its own copy. */
    public QuizPage {
      questions = List.copyOf(questions);
    }
  }

  /**
   * A question with room for the answer.
   *
   * @param number from 1
   * @param prompt what is asked
   * @param drawing at true scale; none or one
   */
  public record Question(int number, Phrase prompt, List<Sheet> drawing) {
    /** Keeps its own copy. */
    public Question {
      drawing = List.copyOf(drawing);
    }
  }
}
