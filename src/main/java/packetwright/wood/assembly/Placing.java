package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Sizes;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;

/** Puts one piece where its definition says. */
final class Placing {
  private final Place place;
  private final Sizes sizes;
  private final Findings findings = new Findings();

  private Placing(Place place, Sizes sizes) {
    this.place = place;
    this.sizes = sizes;
  }

  static Checked<Placed> placed(Place place, Sizes sizes, List<Part> parts) {
    Placing placing = new Placing(place, sizes);
    return placing.findings.checked(placing.placed(parts));
  }

  private @Nullable Placed placed(List<Part> parts) {
    String name = place.piece().value();
    Part part =
        parts.stream()
            .filter(p -> p.name().equals(Part.nameOf(name)))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no part for piece " + name));
    List<Length> corner = new ArrayList<>();
    for (Located<String> formula : place.corner()) {
      Length length = length(formula);
      if (length != null) {
        corner.add(length);
      }
    }
    Direction inside = Direction.of(place.inside().value());
    Direction top = Direction.of(place.top().value());
    if (inside == null || top == null || inside.axis() == top.axis()) {
      findings.add(wrongDirection(name));
      return null;
    }
    Tilt tilt = place.tilt() == null ? null : tilt(place.tilt(), inside);
    if (corner.size() != 3) {
      return null;
    }
    Point at = new Point(corner.get(0), corner.get(1), corner.get(2));
    return new Placed(name, part, part.solidOf(name), at, top.cross(inside), top, inside, tilt);
  }

  private @Nullable Tilt tilt(AssemblyDefinition.Tilt written, Direction inside) {
    Length rise = length(written.rise());
    Length run = length(written.run());
    Direction about = Direction.of(written.about().value());
    if (rise == null || run == null || about == null) {
      return null;
    }
    for (Located<String> formula : List.of(written.rise(), written.run())) {
      Length length = formula.equals(written.rise()) ? rise : run;
      if (length.signum() <= 0) {
        findings.add(
            Finding.error(
                "no-tilt",
                formula.at(),
                "`" + formula.value() + "` is not more than 0, so `" + name() + "` has no slope",
                "leave `tilt` out, or turn it the other way with `about`"));
        return null;
      }
    }
    if (about.axis() == inside.axis()) {
      findings.add(
          Finding.error(
              "no-tilt",
              written.about().at(),
              "about `" + written.about().value() + "` the face of `" + name() + "` stays level",
              "name an axis that lies in its face"));
      return null;
    }
    return new Tilt(about, rise, run);
  }

  private String name() {
    return place.piece().value();
  }

  private @Nullable Length length(Located<String> formula) {
    Evaluated evaluated = findings.take(sizes.evaluate(formula));
    if (evaluated == null) {
      return null;
    }
    if (evaluated.value().dimension() == Dimension.LENGTH) {
      return evaluated.value().asLength();
    }
    findings.add(
        Finding.error(
            "not-a-length",
            formula.at(),
            "`"
                + formula.value()
                + "` is "
                + evaluated.value().dimension().phrase()
                + ", and a length is wanted",
            "write a formula that gives a length"));
    return null;
  }

  private Finding wrongDirection(String name) {
    return Finding.error(
        "wrong-direction",
        place.inside().at(),
        "`"
            + name
            + "` looks toward `"
            + place.inside().value()
            + "` and `"
            + place.top().value()
            + "`, which are not two directions at a right angle",
        "write two of +x, -x, +y, -y, +z, -z with different letters");
  }
}
