package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.part.Box;

/**
 * Places fasteners in a joint: through its first piece into each of the others that touches it, or
 * the other way, at the largest surface that they have in common and for which the fastener is long
 * enough and not too long. Across the joint they stand in its middle, as far from both edges as can
 * be. Nothing is placed in a tilted piece, since its places are no rational numbers.
 */
public final class FastenerPlacing {
  /** So much wood stays beyond a fastener's point: common practice, no source. */
  private static final Length BEYOND_POINT = Length.ofInches(1, 8);

  private final Assembly assembly;
  private final Fastener fastener;
  private final Rule rule;
  private final Span at;
  private final Findings findings = new Findings();

  /**
   * For one operation.
   *
   * @param rule for places that can be measured, and for messages
   * @param at where findings point
   */
  public FastenerPlacing(Assembly assembly, Fastener fastener, Rule rule, Span at) {
    this.assembly = assembly;
    this.fastener = fastener;
    this.rule = rule;
    this.at = at;
  }

  /**
   * One fastening for each pair of pieces of the joint that touch.
   *
   * @param taken what earlier fasteners take up, in the assembly
   */
  public Checked<List<Fastening>> place(Joint joint, List<Box> taken) {
    List<Fastening> placed = new ArrayList<>();
    List<Box> all = new ArrayList<>(taken);
    List<Placed> pieces = pieces(joint);
    for (int i = 1; i < pieces.size(); i++) {
      boolean isTilted = pieces.get(0).tilt() != null || pieces.get(i).tilt() != null;
      Fastening fastening =
          isTilted ? null : place(joint, List.of(pieces.get(0), pieces.get(i)), all);
      if (fastening != null) {
        placed.add(fastening);
        all.addAll(fastening.prisms());
      }
    }
    boolean isUpright = pieces.stream().allMatch(p -> p.tilt() == null);
    if (placed.isEmpty() && isUpright && !findings.hasErrors()) {
      findings.add(noSurface(joint));
    }
    return findings.checked(placed);
  }

  private List<Placed> pieces(Joint joint) {
    List<Placed> pieces = new ArrayList<>();
    for (Located<String> name : joint.pieces()) {
      Placed piece = assembly.piece(name.value());
      if (piece == null) {
        findings.add(
            Finding.error(
                "joint-not-placed",
                at,
                "`"
                    + name.value()
                    + "` of joint `"
                    + joint.name().value()
                    + "` has no place in the assembly, so no place for `"
                    + fastener.supply()
                    + "` can be found",
                "add `" + name.value() + "` to `places` under `assembly`"));
        return List.of();
      }
      pieces.add(piece);
    }
    return pieces;
  }

  private @Nullable Fastening place(Joint joint, List<Placed> pair, List<Box> taken) {
    List<Contact> contacts = Contact.between(pair.get(0), pair.get(1));
    if (contacts.isEmpty()) {
      return null;
    }
    Contact contact = contacts.stream().filter(this::fits).findFirst().orElse(null);
    if (contact == null) {
      Length least = contacts.stream().map(Contact::through).reduce(Length::min).orElseThrow();
      contacts.stream().filter(c -> c.through().equals(least)).findFirst().ifPresent(this::refuse);
      return null;
    }
    FastenerLine line = new FastenerLine(contact, fastener, rule);
    List<Length> places = line.places(taken);
    if (places.isEmpty()) {
      findings.add(noRoom(contact));
      return null;
    }
    return new Fastening(
        joint.name().value(),
        fastener,
        contact.driven().piece(),
        contact.into().piece(),
        line.line(places),
        places.stream().map(line::prism).toList());
  }

  private boolean fits(Contact contact) {
    return !isTooShort(contact) && !isTooLong(contact);
  }

  private boolean isTooShort(Contact contact) {
    return fastener.length().isLess(fastener.kind().shortest(contact.through()));
  }

  private boolean isTooLong(Contact contact) {
    return fastener.length().isMore(longest(contact));
  }

  private static Length longest(Contact contact) {
    return contact.through().plus(contact.behind()).minus(BEYOND_POINT);
  }

  // ---- words

  private void refuse(Contact contact) {
    Length shortest = fastener.kind().shortest(contact.through());
    String goes =
        "`"
            + fastener.supply()
            + "` are "
            + print(fastener.length())
            + " long, and go through "
            + print(contact.through())
            + " of `"
            + contact.driven().piece()
            + "` into `"
            + contact.into().piece()
            + "`";
    if (isTooShort(contact)) {
      findings.add(
          Finding.error(
              "fastener-too-short",
              at,
              goes + ": too short to hold",
              longest(contact).isLess(shortest)
                  ? "leave the joint out: its pieces are too thin for any that holds"
                  : "use a supply that is at least " + print(shortest) + " long"));
    } else {
      findings.add(
          Finding.error(
              "fastener-comes-out",
              at,
              goes
                  + ", which is "
                  + print(contact.behind())
                  + " thick there: the point comes out, or nearly",
              longest(contact).isLess(shortest)
                  ? "leave the joint out: its pieces are too thin for any that holds"
                  : "use a supply that is at most " + print(longest(contact)) + " long"));
    }
  }

  private Finding noSurface(Joint joint) {
    return Finding.error(
        "fastener-without-room",
        at,
        "the pieces of joint `"
            + joint.name().value()
            + "` have no flat surface in common that `"
            + fastener.supply()
            + "` could go through",
        "leave the joint out");
  }

  private Finding noRoom(Contact contact) {
    return Finding.error(
        "fastener-without-room",
        at,
        "where `"
            + contact.driven().piece()
            + "` meets `"
            + contact.into().piece()
            + "` no place for `"
            + fastener.supply()
            + "` is "
            + print(fastener.margin())
            + " from every edge, groove and hole",
        "leave the joint out, or use a supply whose `edge` is less");
  }

  private String print(Length length) {
    return rule.printExactly(length).toString();
  }
}
