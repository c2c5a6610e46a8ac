package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.formula.Value;
import packetwright.text.measure.Length;
import packetwright.wood.assembly.Fastening;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * What has to be measured from the settings and the places of fasteners: distances to edges, and
 * the size of a router bit. Zero where an operation has no such thing.
 *
 * @param run the operation
 */
record MeasuredValues(OperationRun run) {
  private static final String DIAMETER = "diameter";
  private static final String CUTTER = "cutter";

  @Nullable Value of(String group, String name) {
    return switch (group) {
      case "largest" -> largest(name);
      case "fastener" -> fastener(name);
      case "hole" -> name.equals("edge") ? Value.of(holeEdge()) : null;
      case "bit" -> bit(name);
      default -> null;
    };
  }

  private List<Workpiece> worked() {
    return run.before().isEmpty() ? run.after() : run.before();
  }

  // ---- the largest piece

  private @Nullable Value largest(String extent) {
    int axis = List.of("length", "width", "thickness").indexOf(extent);
    return axis < 0
        ? null
        : Value.of(
            worked().stream()
                .map(p -> p.solid().extent(axis))
                .reduce(Length::max)
                .orElse(Length.ZERO));
  }

  // ---- fasteners

  private @Nullable Value fastener(String name) {
    return switch (name) {
      case "length" ->
          Value.of(
              run.fastened().stream()
                  .map(f -> f.fastener().length())
                  .reduce(Length::max)
                  .orElse(Length.ZERO));
      case "end" -> Value.of(nearest(true));
      case "edge" -> Value.of(nearest(false));
      default -> null;
    };
  }

  /**
   * From a fastener to the nearest end, or else edge or face, of the piece that it goes through.
   */
  private Length nearest(boolean isToEnd) {
    return run.fastened().stream()
        .flatMap(f -> distances(f, isToEnd))
        .reduce(Length::min)
        .orElse(Length.ZERO);
  }

  private Stream<Length> distances(Fastening fastening, boolean isToEnd) {
    Fastening.Line line = fastening.line();
    Workpiece driven =
        worked().stream().filter(p -> p.name().equals(fastening.driven())).findFirst().orElse(null);
    List<Length> distances = new ArrayList<>();
    if (isEnd(line.beside()) == isToEnd) {
      distances.add(line.inset());
    }
    if (isEnd(line.from()) == isToEnd) {
      distances.addAll(line.places());
      if (driven != null) {
        Length extent = driven.solid().extent(line.from().axis());
        line.places().forEach(place -> distances.add(extent.minus(place)));
      }
    }
    return distances.stream();
  }

  private static boolean isEnd(Side side) {
    return side.axis() == 0;
  }

  // ---- holes

  /** From the rim of a hole to the nearest end or edge of its piece. */
  private Length holeEdge() {
    Length radius = length(DIAMETER).dividedBy(2);
    if (radius.signum() == 0) {
      return Length.ZERO;
    }
    List<Length> distances = new ArrayList<>();
    for (Setting setting : run.settings()) {
      Side side = Side.of(setting.datum());
      boolean isPlace = setting.name().matches("(inset|across)(_\\d+)?");
      if (isPlace && side != null) {
        Length place = setting.value().asLength();
        distances.add(place);
        worked().forEach(p -> distances.add(p.solid().extent(side.axis()).minus(place)));
      }
    }
    return distances.stream()
        .map(distance -> distance.minus(radius))
        .reduce(Length::min)
        .orElse(Length.ZERO);
  }

  // ---- router bits

  private @Nullable Value bit(String name) {
    return switch (name) {
      case DIAMETER -> Value.of(bitDiameter());
      case "profile" -> Value.of(profile());
      case "left" -> Value.of(leftBesideProfile());
      case "beyond" -> Value.of(beyond());
      default -> null;
    };
  }

  /** Of a straight bit; a bit for a profile is at least twice as wide as the profile. */
  private Length bitDiameter() {
    return length(CUTTER).max(profile().times(2));
  }

  /** How wide a roundover or a chamfer is. */
  private Length profile() {
    return length("radius").max(length("size"));
  }

  /** How much of the edge stays beside its profile, to lie against the fence. */
  private Length leftBesideProfile() {
    Length profile = profile();
    return profile.signum() == 0
        ? Length.ZERO
        : worked().stream()
            .map(p -> p.solid().thickness().minus(profile))
            .reduce(Length::min)
            .orElse(Length.ZERO);
  }

  /** Wood beyond the bit, on the side away from the fence; zero and less where there is none. */
  private Length beyond() {
    Length far =
        run.settings().stream()
            .filter(s -> s.name().matches("fence(_\\d+)?"))
            .map(s -> s.value().asLength())
            .reduce(Length::max)
            .orElse(Length.ZERO)
            .plus(length(CUTTER));
    return worked().stream()
        .map(p -> p.solid().width().minus(far))
        .reduce(Length::min)
        .orElse(Length.ZERO);
  }

  private Length length(String setting) {
    return run.settings().stream()
        .filter(s -> s.name().equals(setting))
        .map(s -> s.value().asLength())
        .findFirst()
        .orElse(Length.ZERO);
  }
}
