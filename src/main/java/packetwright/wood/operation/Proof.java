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
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Compares every part as made with the part as drawn, and names the step that spoiled it. */
final class Proof {
  private final Inputs inputs;
  private final Run run;
  private final Told told;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Part> sharp = new ArrayList<>();
  private int ofEarlierParts;

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
    ofEarlierParts = findings.size();
    made.forEach(piece -> check(part, piece));
    if (findings.size() == ofEarlierParts
        && made.stream().anyMatch(piece -> !piece.is(Side.OUTSIDE, State.EASED))) {
      sharp.add(part);
    }
  }

  private void check(Part part, Workpiece piece) {
    if (piece.history().over().signum() > 0 || piece.history().wide().signum() > 0) {
      leftLong(part, piece);
      return;
    }
    Difference difference = Difference.between(piece.solid(), part.solidOf(piece.name()));
    if (difference != null) {
      differs(part, piece, difference);
    }
  }

  /** Notes a finding, unless the same operation has spoiled another piece of the part so. */
  private void add(Finding finding) {
    boolean isKnown =
        findings.subList(ofEarlierParts, findings.size()).stream()
            .anyMatch(f -> f.code().equals(finding.code()) && f.at().equals(finding.at()));
    if (!isKnown) {
      findings.add(finding);
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
    add(
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
      case WOOD_GONE -> woodGone(part, piece, difference, subject);
      case WOOD_LEFT -> woodLeft(part, piece, difference, subject);
    }
  }

  private void woodGone(Part part, Workpiece piece, Difference difference, String subject) {
    int maker = makerOf(piece, difference.made());
    Part.Feature feature = featureOf(part, piece, difference.drawn());
    String off =
        feature != null && maker >= 0 && cutOf(part, feature) == maker
            ? offWords(part, piece, feature, difference, maker)
            : "with wood cut away that the drawing keeps, " + where(place(difference));
    add(at("part-differs", maker, part, subject + off, settingHint(maker)));
  }

  private void woodLeft(Part part, Workpiece piece, Difference difference, String subject) {
    Part.Feature feature = featureOf(part, piece, difference.drawn());
    if (feature == null) {
      throw new IllegalStateException("no feature draws " + difference.drawn());
    }
    String target = part.name() + "." + feature.name();
    int maker = cutOf(part, feature);
    if (maker < 0) {
      notCut(part, feature, target);
    } else if (!piece.history().aims().contains(target)) {
      add(
          at(
              "part-differs",
              maker,
              part,
              subject + "without `" + target + "`",
              "let `%s` in step %s work on `%s` too"
                  .formatted(verbOf(maker), stepOf(maker), piece.name())));
    } else {
      add(
          at(
              "part-differs",
              maker,
              part,
              subject + offWords(part, piece, feature, difference, maker),
              settingHint(maker)));
    }
  }

  private void notCut(Part part, Part.Feature feature, String target) {
    if (!told.has("piece-unfinished", target)) {
      add(
          Finding.error(
              "feature-not-cut",
              part.at(),
              "no step cuts `" + target + "`",
              "add `- " + Handwork.maker(feature) + ": " + target + "` to a step"));
    }
  }

  private String offWords(
      Part part, Workpiece piece, Part.Feature feature, Difference difference, int maker) {
    return "with `"
        + part.name()
        + "."
        + feature.name()
        + "` "
        + Misfit.words(inputs::print, feature, piece, difference, maker);
  }

  private static Box place(Difference difference) {
    Box place = difference.place();
    if (place == null) {
      throw new IllegalStateException("wood gone without a place: " + difference);
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
    Length drawn = part.solid().extent(difference.axis());
    String message =
        subject
            + inputs.print(amount.magnitude())
            + " too "
            + word
            + ": "
            + inputs.print(piece.solid().extent(difference.axis()))
            + " and not "
            + inputs.print(drawn);
    if (maker < 0) {
      add(
          Finding.error(
              "part-differs", part.at(), message, "add the operation that brings it to size"));
    } else if (amount.magnitude().equals(kerf(maker))) {
      add(
          at(
              "part-differs",
              maker,
              part,
              message
                  + "; step "
                  + run.operations().get(maker).step().number()
                  + (isMore ? " gives it the kerf too" : " leaves no room for the kerf"),
              kerfHint(maker, drawn)));
    } else {
      String hint = settingHint(maker);
      add(
          at(
              "part-differs",
              maker,
              part,
              message,
              isMore ? "add the cut that brings it to size, or " + hint : hint));
    }
  }

  /**
   * Compares a run that proves with the same run with other amounts of waste: no part may come out
   * otherwise, and no setting that bounds a kept surface may be another.
   */
  static List<Finding> ofWaste(Inputs inputs, Run run, Run again) {
    Proof proof = new Proof(inputs, run, new Told());
    for (int i = 0; i < run.operations().size() && proof.findings.isEmpty(); i++) {
      proof.settingOfWaste(i, again.operations().get(i));
    }
    for (Part part : inputs.parts()) {
      proof.partOfWaste(part, again);
    }
    return proof.findings;
  }

  private void settingOfWaste(int operation, OperationRun again) {
    for (Setting setting : run.operations().get(operation).settings()) {
      boolean isOther =
          setting.kind() == Setting.Kind.BOUND
              && again.settings().stream()
                  .filter(other -> other.name().equals(setting.name()))
                  .anyMatch(other -> !other.value().equals(setting.value()));
      if (isOther) {
        OperationRun maker = run.operations().get(operation);
        findings.add(
            Finding.error(
                    "depends-on-waste",
                    maker.operation().place(),
                    ("`%s` of `%s` is reckoned from a side that is still rough here, so it is right"
                            + " for one size of blank only")
                        .formatted(setting.name(), verbOf(operation)),
                    "measure from a side that stays, or cut the piece to its size before")
                .inStep(maker.step().label()));
        return;
      }
    }
  }

  private void partOfWaste(Part part, Run again) {
    List<Workpiece> first = run.made().getOrDefault(part.name(), List.of());
    List<Workpiece> second = again.made().getOrDefault(part.name(), List.of());
    for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
      Workpiece piece = second.get(i);
      Difference difference =
          piece.solid().equals(first.get(i).solid())
              ? null
              : Difference.between(piece.solid(), part.solidOf(piece.name()));
      if (difference != null && findings.isEmpty()) {
        int maker =
            difference.kind() == Difference.Kind.EXTENT
                ? piece.history().extents().get(difference.axis())
                : makerOf(piece, difference.made());
        findings.add(
            at(
                "depends-on-waste",
                maker,
                part,
                "part %s, `%s`, comes out as drawn from one size of blank only: nothing brings it"
                        .formatted(part.letter(), piece.name())
                    + " to its size",
                "add the cut that does, such as `rip` to its width or `crosscut` to its length"));
      }
    }
  }

  /** Width of wood that the tool of an operation turns to dust; zero when it says none. */
  private Length kerf(int operation) {
    OperationRun maker = run.operations().get(operation);
    return maker.tool() == null ? Length.ZERO : inputs.shop().kerf(maker.tool());
  }

  private String kerfHint(int maker, Length drawn) {
    String setting =
        run.operations().get(maker).settings().stream()
            .filter(s -> s.datum().equals("near"))
            .map(s -> "`" + s.name() + "`")
            .findFirst()
            .orElse("it");
    return ("in step %s, set %s of `%s` to %s, up to the near side of the blade:"
            + " the kerf, %s, falls in the waste")
        .formatted(
            stepOf(maker), setting, verbOf(maker), inputs.print(drawn), inputs.print(kerf(maker)));
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
    if (maker < 0) {
      return "look at the step that makes this cut";
    }
    String hint =
        run.operations().get(maker).operation().set().isEmpty()
            ? "look at the settings of `%s` in step %s"
            : "correct `set` of `%s` in step %s, or leave it out";
    return hint.formatted(verbOf(maker), stepOf(maker));
  }

  private String stepOf(int operation) {
    return run.operations().get(operation).step().label();
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

  /** The operation that made a cut; -1 when none did. */
  private static int makerOf(Workpiece piece, @Nullable Removal removal) {
    int at = removal == null ? -1 : piece.solid().removals().indexOf(removal);
    return at < 0 ? -1 : piece.history().removals().get(at);
  }

  /** The feature of a piece that a removal draws, or none. */
  private static Part.@Nullable Feature featureOf(
      Part part, Workpiece piece, @Nullable Removal drawn) {
    return part.featuresOf(piece.name()).stream()
        .filter(feature -> drawn != null && feature.removals().contains(drawn))
        .findFirst()
        .orElse(null);
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
