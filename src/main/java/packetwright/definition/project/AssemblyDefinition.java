package packetwright.definition.project;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.source.Located;

/**
 * Where parts sit and how they hold, as its author wrote it.
 *
 * @param places one for each piece
 * @param joints named
 */
public record AssemblyDefinition(List<Place> places, List<Joint> joints) {
  /** Keeps its own copies. */
  public AssemblyDefinition {
    places = List.copyOf(places);
    joints = List.copyOf(joints);
  }

  /**
   * Where one piece sits.
   *
   * @param piece a part's name, with a number where there are several: {@code side 1}
   * @param corner three formulas: the lowest corner in the assembly
   * @param inside where its inside face looks: {@code +y}
   * @param top where its top edge looks: {@code +z}
   * @param tilt how it is turned from there, or none
   */
  public record Place(
      Located<String> piece,
      List<Located<String>> corner,
      Located<String> inside,
      Located<String> top,
      @Nullable Tilt tilt) {}

  /**
   * How a piece is turned about the line through its corner along an axis.
   *
   * @param rise formula
   * @param run formula: it rises so much over so much
   * @param about the axis: {@code +y}; the right hand's thumb looks along it
   */
  public record Tilt(Located<String> rise, Located<String> run, Located<String> about) {}

  /**
   * Pieces that meet.
   *
   * @param name as operations use it
   * @param kind {@code rabbet}, {@code groove}, {@code slide}, {@code butt}, {@code dado}, {@code
   *     rest}
   * @param pieces those that meet, the holding, sliding or resting one first
   * @param out the direction in which a sliding piece leaves, or none
   * @param glued whether glue is allowed in a groove; other joints may always be glued
   */
  public record Joint(
      Located<String> name,
      String kind,
      List<Located<String>> pieces,
      @Nullable String out,
      boolean glued) {
    /** Keeps its own copy. */
    public Joint {
      pieces = List.copyOf(pieces);
    }
  }
}
