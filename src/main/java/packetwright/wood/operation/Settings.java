package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import packetwright.definition.procedure.Verb;
import packetwright.definition.size.Evaluated;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.operation.Simulation.Waste;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;

/** What one operation sets on its machine, in the order it is set. */
final class Settings {
  private static final int MOST_PASSES = 50;

  /** Settings that are places rather than sizes. */
  private static final Set<String> MAY_BE_NOUGHT =
      Set.of("fence", "line", "inset", "across", "start");

  /** What is added to a rough size when it is tried with more waste: more than all else takes. */
  private static final Length ROUGHER = Length.ofInches(1, 1);

  /** What is added then to what is left for later: more than what is added to a trim. */
  private static final Length MORE_LEFT = Length.ofInches(1, 100);

  private static final Length MORE_TRIMMED = Length.ofInches(1, 1000);

  /** Stands for a setting that is refused, so that the operation can be looked at to its end. */
  private static final Length STAND_IN = Length.ofInches(1, 64);

  private final Situation s;
  private final List<Setting> all = new ArrayList<>();
  private final Set<String> names = new TreeSet<>();
  private boolean isStopped;

  Settings(Situation situation) {
    this.s = situation;
  }

  List<Setting> list() {
    return List.copyOf(all);
  }

  /** Whether the run must end here, since a setting is refused. */
  boolean isStopped() {
    return isStopped;
  }

  /**
   * Sets a length. What the operation writes under {@code set} overrides what was reckoned.
   *
   * @return the length that is set
   */
  Length set(Setting reckoned) {
    String name = reckoned.name();
    names.add(name);
    Located<String> written = s.operation().set().get(name);
    Evaluated over = written == null ? null : s.length(written);
    Length value = over == null ? reckoned.value().asLength() : over.length();
    boolean mayBeNought =
        MAY_BE_NOUGHT.contains(name.replaceAll("_[0-9]+$", ""))
            && s.operation().verb().value() != Verb.RIP;
    if (value.signum() < 0 || (value.signum() == 0 && !mayBeNought)) {
      s.error(
          "setting-without-size",
          written == null ? s.operation().place() : written.at(),
          "`" + name + "` comes to " + s.print(value) + ", which nothing can be set to",
          "write a size of more than 0");
      isStopped = true;
      return STAND_IN;
    }
    Length tried =
        reckoned.kind() == Kind.FREE && s.inputs().waste() == Waste.MORE
            ? withMoreWaste(value)
            : value;
    all.add(reckoned.with(tried));
    return tried;
  }

  /** A free amount moved as far as it may be without anything else running short. */
  private Length withMoreWaste(Length value) {
    return switch (s.operation().verb().value()) {
      case ROUGH_CUT -> value.plus(ROUGHER);
      case SQUARE_END, JOINT_EDGE -> value.plus(MORE_TRIMMED);
      case JOINT_FACE -> value.dividedBy(2); // the board is as thick as it is bought
      case CROSSCUT, RIP -> value.plus(MORE_LEFT);
      default -> value;
    };
  }

  /** Notes in how many passes an amount is taken; how much each takes is told when it is known. */
  void passes(int count) {
    if (count > 1) {
      all.add(
          new Setting("passes", Quantity.number(Rational.of(count)), "", null, Kind.FREE, false));
    }
  }

  /** Notes the angle that a machine's scale shows; the cut is set by its rise and run. */
  void angle(String name, Quantity angle) {
    all.add(new Setting(name, angle, "", null, Kind.FREE, false));
  }

  /** Notes how much each pass takes off. */
  void eachPass(Length depth) {
    all.add(new Setting("each_pass", Quantity.of(depth), "", null, Kind.FREE, false));
  }

  /** In how many passes an amount is taken, each at most so much; too many are a finding. */
  int needed(Length amount, Length most) {
    Rational passes = amount.dividedBy(most);
    if (passes.compareTo(Rational.of(MOST_PASSES)) > 0) {
      s.error(
          "too-many-passes",
          "this would take more than " + MOST_PASSES + " passes",
          "start from stock nearer to size, or look at the depth or cutter that the shop states");
      isStopped = true;
      return 1;
    }
    return passes.ceiling().intValueExact();
  }

  /** Notes an error for each name under {@code set} that this operation does not set. */
  void refuseUnknown() {
    s.operation()
        .set()
        .forEach(
            (name, formula) -> {
              if (!names.contains(name)) {
                s.error(
                    "unknown-setting",
                    formula.at(),
                    "this operation has no setting `" + name + "`",
                    NearMiss.hint(name, names));
              }
            });
  }
}
