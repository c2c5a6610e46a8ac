package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Box;
import packetwright.wood.part.Difference;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Compares every part as made with the part as drawn, and names the step that spoiled it. */
final class Proof {
  private final Inputs inputs;
  private final Run run;
  private final Told told;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Part> sharp = new ArrayList<>();

  private Proof(Inputs inputs, Run run, Told told) {
    this.inputs = inputs;
    this.run = run;
    this.told = told;
  }

  static List<Finding> check(Inputs inputs, Run run, Told told) {
    Proof proof = new Proof(inputs, run, told);
    for (Part part : inputs.parts()) {
      proof.check(part);
    }
    if (!proof.sharp.isEmpty() && !told.has("not-eased")) {
      proof.staySharp();
    }
    return proof.findings;
  }

  private void check(Part part) {
    List<Workpiece> made = run.made().getOrDefault(part.name(), List.of());
    if (made.size() < part.count()) {
      findings.add(
          Finding.error(
              "part-never-made",
              part.at(),
              "part "
                  + part.letter()
                  + ", `"
                  + part.name()
                  + "`, is cut free "
                  + made.size()
                  + " of "
                  + part.count()
                  + " times",
              "add `- crosscut: " + part.name() + "` to a step"));
      return;
    }
    for (Workpiece piece : made) {
      if (piece.history().over().signum() > 0 || piece.history().wide().signum() > 0) {
        leftLong(part, piece);
        return;
      }
      Difference difference = Difference.between(piece.solid(), part.solidOf(piece.name()));
      if (difference != null) {
        differs(part, piece, difference);
        return;
      }
      if (!piece.is(Side.OUTSIDE, State.EASED)) {
        sharp.add(part);
        return;
      }
    }
  }

  private void staySharp() {
    List<String> names = sharp.stream().map(Part::name).toList();
    String target = names.size() == 1 ? names.get(0) : names.toString();
    findings.add(
        Finding.warning(
            "edges-not-eased",
            sharp.get(0).at(),
            "the edges of " + Listing.of(names) + " stay sharp",
            "add `- ease: " + target + "` to a late step"));
  }

  private void leftLong(Part part, Workpiece piece) {
    boolean isLong = piece.history().over().signum() > 0;
    Length extra = isLong ? piece.history().over() : piece.history().wide();
    int maker = piece.history().extents().get(isLong ? 0 : 1);
    findings.add(
        at(
            "left-long",
            maker,
            part,
            "part "
                + part.letter()
                + ", `"
                + piece.name()
                + "`, is left "
                + inputs.print(extra)
                + (isLong ? " long" : " wide")
                + " and never trimmed",
            "add `- cut_to_fit: " + piece.name() + "` to a later step"));
  }

  private void differs(Part part, Workpiece piece, Difference difference) {
    String subject = "part " + part.letter() + ", `" + piece.name() + "`, comes out ";
    switch (difference.kind()) {
      case EXTENT -> extent(part, piece, difference, subject);
      case WOOD_GONE -> {
        Box place = place(difference);
        int maker = makerOf(piece, place);
        findings.add(
            at(
                "part-differs",
                maker,
                part,
                subject + "with wood cut away that the drawing keeps, " + where(place),
                settingHint(maker)));
      }
      case WOOD_LEFT -> {
        Part.Feature feature = featureAt(part, difference);
        int maker = feature == null ? -1 : cutOf(part, feature);
        String target =
            feature == null
                ? "a hole of `" + part.name() + "`"
                : part.name() + "." + feature.name();
        if (maker < 0 && told.has("piece-unfinished", target)) {
          return;
        }
        if (maker < 0) {
          findings.add(
              Finding.error(
                  "feature-not-cut",
                  part.at(),
                  "no step cuts `" + target + "`",
                  "add `- " + Handwork.maker(feature) + ": " + target + "` to a step"));
        } else {
          findings.add(
              at(
                  "part-differs",
                  maker,
                  part,
                  subject + "with `" + target + "` not as drawn",
                  settingHint(maker)));
        }
      }
    }
  }

  private static Box place(Difference difference) {
    Box place = difference.place();
    if (place == null) {
      throw new IllegalStateException("a difference of cells without a place: " + difference);
    }
    return place;
  }

  private void extent(Part part, Workpiece piece, Difference difference, String subject) {
    Length amount = difference.amount();
    boolean isMore = amount.signum() > 0;
    String word =
        switch (difference.axis()) {
          case 0 -> isMore ? "long" : "short";
          case 1 -> isMore ? "wide" : "narrow";
          default -> isMore ? "thick" : "thin";
        };
    int maker = piece.history().extents().get(difference.axis());
    String message =
        subject
            + inputs.print(amount.magnitude())
            + " too "
            + word
            + ": "
            + inputs.print(piece.solid().extent(difference.axis()))
            + " and not "
            + inputs.print(part.solid().extent(difference.axis()));
    findings.add(
        maker < 0
            ? Finding.error(
                "part-differs", part.at(), message, "add the operation that brings it to size")
            : at(
                "part-differs",
                maker,
                part,
                message,
                (isMore ? "add the cut that brings it to size, or " : "") + settingHint(maker)));
  }

  private String where(Box place) {
    return "from "
        + inputs.print(place.low().x())
        + " to "
        + inputs.print(place.high().x())
        + " along it and from "
        + inputs.print(place.low().y())
        + " to "
        + inputs.print(place.high().y())
        + " above its bottom edge";
  }

  private String settingHint(int maker) {
    return maker < 0
        ? "look at the step that makes this cut"
        : "look at the settings of `"
            + verbOf(maker)
            + "` in step "
            + run.operations().get(maker).step().label();
  }

  private String verbOf(int operation) {
    return run.operations().get(operation).operation().verb().value().word();
  }

  private Finding at(String code, int operation, Part part, String message, String hint) {
    if (operation < 0) {
      return Finding.error(code, part.at(), message, hint);
    }
    OperationRun maker = run.operations().get(operation);
    return Finding.error(code, maker.operation().place(), message, hint)
        .inStep(maker.step().label());
  }

  /** The operation whose cut reaches into a place where wood should have stayed. */
  private static int makerOf(Workpiece piece, Box place) {
    List<Removal> removals = piece.solid().removals();
    for (int i = 0; i < removals.size(); i++) {
      Box taken = removals.get(i).around(piece.solid().block());
      if (taken != null && taken.overlaps(place)) {
        return piece.history().removals().get(i);
      }
    }
    return -1;
  }

  private static Part.@Nullable Feature featureAt(Part part, Difference difference) {
    Box place = difference.place();
    return part.features().stream()
        .filter(f -> f.removals().stream().anyMatch(r -> isAt(r, part, place)))
        .findFirst()
        .orElse(null);
  }

  /** Whether a removal reaches a place; without one, whether it is a hole. */
  private static boolean isAt(Removal removal, Part part, @Nullable Box place) {
    Box taken = removal.around(part.solid().block());
    return place == null ? removal instanceof Removal.Bore : taken != null && taken.overlaps(place);
  }

  /** The last operation that aimed at a feature; -1 when none did. */
  private int cutOf(Part part, Part.Feature feature) {
    String target = part.name() + "." + feature.name();
    for (int i = run.operations().size() - 1; i >= 0; i--) {
      for (Located<String> aimed : run.operations().get(i).operation().targets()) {
        if (aimed.value().equals(target)) {
          return i;
        }
      }
    }
    return -1;
  }
}
