package packetwright.wood.operation;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Size;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Part;

/**
 * Looks at every name in an operation before anything is run, so that all misspelt ones are said at
 * once and none has consequences.
 */
final class NameCheck {
  private final Situation s;
  private final Inputs inputs;

  private NameCheck(Situation s) {
    this.s = s;
    this.inputs = s.inputs();
  }

  static void check(Situation s) {
    NameCheck names = new NameCheck(s);
    names.targets();
    names.piece(s.operation().piece());
    names.piece(s.operation().of());
    Set<String> supplies = new TreeSet<>();
    s.inputs().project().supplies().forEach(supply -> supplies.add(supply.name().value()));
    s.operation()
        .using()
        .forEach(name -> names.require("unknown-supply", "supply", name, supplies));
    names.newName();
    names.unread("leave", s.operation().leave(), Set.of(Verb.CROSSCUT, Verb.RIP));
    names.counted();
    names.unread("of", s.operation().of(), Set.of(Verb.CROSSCUT));
    names.unread(
        "to", s.operation().to(), Set.of(Verb.PLANE_TO_THICKNESS, Verb.RIP, Verb.CUT_TO_FIT));
    names.unread("makes", s.operation().makes(), Set.of(Verb.RIP, Verb.GLUE, Verb.DRY_FIT));
  }

  /** What is no text, and so has no place of its own. */
  private void counted() {
    Operation operation = s.operation();
    Span at = operation.place();
    boolean isTrim = operation.verb().value() == Verb.SQUARE_END;
    if (operation.stop() && isTrim) {
      s.error(
          "stop-on-loose-piece",
          "a stop at `square_end` would stand against the piece that comes off, which nobody holds",
          "delete `stop`");
    }
    Set<Verb> stopped = Set.of(Verb.CROSSCUT, Verb.CUT, Verb.CUT_TO_FIT, Verb.DRILL);
    unread("stop", operation.stop() && !isTrim ? new Located<>("", at) : null, stopped);
    stacked(at);
    boolean hasGrits = !operation.grits().isEmpty();
    unread("grits", hasGrits ? new Located<>("", at) : null, Set.of(Verb.SAND));
    unread("count", operation.count() > 1 ? new Located<>("", at) : null, Set.of(Verb.CROSSCUT));
  }

  /** Only a cut that goes right through, along a line, reaches every piece of a stack. */
  private void stacked(Span at) {
    Operation operation = s.operation();
    if (operation.stacked() < 2) {
      return;
    }
    Set<Verb> stacked = Set.of(Verb.CUT, Verb.DRILL, Verb.SAW_CURVE);
    unread("stacked", new Located<>("", at), stacked);
    boolean isThrough =
        operation.targets().stream()
            .map(target -> Aim.find(inputs, target.value()))
            .allMatch(feature -> feature == null || isThrough(operation, feature));
    if (stacked.contains(operation.verb().value()) && !isThrough) {
      s.error(
          "key-unread",
          at,
          "`stacked` says nothing to this cut, which does not go through a whole stack",
          "delete it; curves, holes right through, and tapers at a band saw or by hand are stacked");
    }
  }

  private static boolean isThrough(Operation operation, Part.Feature feature) {
    Located<MachineKind> tool = operation.at();
    return switch (feature.kind()) {
      case CORNER, CURVE -> true;
      case HOLE -> feature.where().equals("through");
      case TAPER -> tool == null || Slants.isByHand(tool.value());
      default -> false;
    };
  }

  /** What an operation makes must not take the name of something else. */
  private void newName() {
    Located<String> makes = s.operation().makes();
    if (makes == null) {
      return;
    }
    Set<String> taken = new TreeSet<>(blanks());
    inputs.parts().forEach(part -> taken.add(part.name()));
    Blank gluedUp = GlueUp.made(s);
    if (gluedUp != null) {
      taken.remove(gluedUp.name());
    }
    if (taken.contains(makes.value())) {
      s.error(
          "made-name-taken",
          makes.at(),
          "`" + makes.value() + "` is the name of a part or a blank already",
          "give what this operation makes a name of its own");
    }
  }

  /** A key that a verb does not read is a mistake, never passed over. */
  private void unread(String key, @Nullable Located<String> written, Set<Verb> readBy) {
    Verb verb = s.operation().verb().value();
    if (written != null && !readBy.contains(verb)) {
      String readers =
          readBy.stream().map(v -> "`" + v.word() + "`").sorted().collect(Collectors.joining(", "));
      s.error(
          "key-unread",
          written.at(),
          "`" + key + "` says nothing to `" + verb.word() + "`; it belongs to " + readers,
          "delete it");
    }
  }

  private void targets() {
    Operation operation = s.operation();
    switch (operation.verb().value()) {
      case ROUGH_CUT -> each("unknown-blank", "blank", blanks());
      case CROSSCUT -> each("unknown-part", "part", parts());
      case CUT, DRILL, SAW_CURVE, ROUT -> Aim.all(s).forEach(this::verb);
      case EASE -> {
        if (operation.targets().stream().anyMatch(t -> t.value().contains("."))) {
          Aim.all(s).forEach(this::verb);
        } else {
          operation.targets().forEach(this::piece);
        }
      }
      case GLUE -> {
        if (GlueUp.made(s) == null) {
          Joining.joints(s);
        } else {
          operation.targets().forEach(this::piece);
        }
      }
      case NAIL, SCREW -> Joining.joints(s);
      case INSPECT -> {
        List<Size> sizes = inputs.sizes().all();
        List<String> measured = sizes.stream().filter(Size::isMeasured).map(Size::name).toList();
        for (Located<String> target : operation.targets()) {
          if (inputs.sizes().find(target.value()) == null) {
            require("unknown-name", "size", target, measured);
          }
        }
      }
      default -> operation.targets().forEach(this::piece);
    }
  }

  /** Each kind of feature has its verb. */
  private void verb(Aim aim) {
    Verb verb = s.operation().verb().value();
    List<Verb> makers = Handwork.makers(aim.feature().kind());
    if (!makers.contains(verb)) {
      s.error(
          "wrong-verb",
          aim.target().at(),
          "`" + aim.target().value() + "` is a " + aim.feature().kind().word(),
          "write `" + makers.get(0).word() + "` instead of `" + verb.word() + "`");
    }
  }

  private void each(String code, String what, Collection<String> known) {
    s.operation().targets().forEach(target -> require(code, what, target, known));
  }

  private void piece(@Nullable Located<String> name) {
    if (name != null) {
      require("unknown-piece", "piece", name, pieces());
    }
  }

  private void require(String code, String what, Located<String> name, Collection<String> known) {
    if (!known.contains(name.value())) {
      s.error(
          code,
          name.at(),
          "no " + what + " is called `" + name.value() + "`",
          NearMiss.hint(name.value(), known));
    }
  }

  private List<String> blanks() {
    return inputs.blanks().stream().map(Blank::name).toList();
  }

  private List<String> parts() {
    return inputs.parts().stream().map(Part::name).toList();
  }

  /** Blanks, parts, their pieces, and whatever an operation makes. */
  private Set<String> pieces() {
    Set<String> names = new TreeSet<>(blanks());
    inputs.blanks().forEach(blank -> names.addAll(GlueUp.boardNames(blank)));
    for (Part part : inputs.parts()) {
      names.add(part.name());
      for (int number = 1; number <= part.count(); number++) {
        names.add(part.pieceName(number));
      }
    }
    inputs.procedure().steps().stream()
        .flatMap(step -> step.operations().stream())
        .map(Operation::makes)
        .forEach(
            makes -> {
              if (makes != null) {
                names.add(makes.value());
              }
            });
    return names;
  }
}
