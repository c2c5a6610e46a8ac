package packetwright.definition.project;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/** Reads {@code parts:}, whose shape the schema has checked; what has a wrong shape is left out. */
final class PartsReader {
  private static final List<String> SIZE_KEYS =
      List.of(
          "at", "across", "width", "depth", "length", "diameter", "by", "size", "radius", "rise");

  private static final String KINDS =
      Arrays.stream(PartDefinition.FeatureKind.values())
          .map(PartDefinition.FeatureKind::word)
          .collect(Collectors.joining(", "));

  /** Kinds that are cut into a face, which they must name. */
  private static final Set<PartDefinition.FeatureKind> IN_A_FACE =
      EnumSet.of(
          PartDefinition.FeatureKind.RABBET,
          PartDefinition.FeatureKind.DADO,
          PartDefinition.FeatureKind.GROOVE,
          PartDefinition.FeatureKind.NOTCH,
          PartDefinition.FeatureKind.HOLE,
          PartDefinition.FeatureKind.CHAMFER,
          PartDefinition.FeatureKind.ROUNDOVER);

  private final Node.Mapping root;
  private final Findings findings;

  PartsReader(Node.Mapping root, Findings findings) {
    this.root = root;
    this.findings = findings;
  }

  List<PartDefinition> parts() {
    List<PartDefinition> parts = new ArrayList<>();
    Map<String, Span> letters = new HashMap<>();
    for (Node.Entry entry : root.entries("parts")) {
      Node.Mapping part = entry.value().asMapping();
      if (part != null) {
        checkLetter(part.text("letter"), letters);
        checkBlank(part.text("blank"));
        PartDefinition read = part(entry.key(), part);
        if (read != null) {
          parts.add(read);
        }
      }
    }
    return parts;
  }

  private void checkLetter(@Nullable Located<String> letter, Map<String, Span> letters) {
    Span earlier = letter == null ? null : letters.putIfAbsent(letter.value(), letter.at());
    if (letter != null && earlier != null) {
      findings.add(
          Finding.error(
              "duplicate-letter",
              letter.at(),
              "`"
                  + letter.value()
                  + "` is the letter of two parts, first in line "
                  + earlier.line(),
              "give one of them a letter that no part has"));
    }
  }

  private void checkBlank(@Nullable Located<String> blank) {
    List<String> known = root.entries("blanks").stream().map(e -> e.key().value()).toList();
    if (blank != null && !known.contains(blank.value())) {
      findings.add(
          Finding.error(
              "unknown-blank",
              blank.at(),
              "there is no blank `" + blank.value() + "`",
              NearMiss.hint(blank.value(), known)));
    }
  }

  private @Nullable PartDefinition part(Located<String> name, Node.Mapping part) {
    List<PartDefinition.FeatureDefinition> features = new ArrayList<>();
    for (Node.Entry entry : part.entries("features")) {
      Node.Mapping feature = entry.value().asMapping();
      PartDefinition.FeatureDefinition read =
          feature == null ? null : feature(entry.key(), feature);
      if (read != null) {
        features.add(read);
      }
    }
    Located<String> blank = part.text("blank");
    List<Located<String>> size = part.texts("size");
    int count = part.whole("count", 0);
    Located<String> hand = part.text("hand");
    checkPair(name, hand, count);
    return blank == null || size.size() != 3 || count == 0
        ? null
        : new PartDefinition(
            name,
            part.text("letter", ""),
            count,
            hand != null,
            blank,
            size.get(0),
            size.get(1),
            size.get(2),
            features);
  }

  private void checkPair(Located<String> name, @Nullable Located<String> hand, int count) {
    if (hand != null && count % 2 != 0) {
      findings.add(
          Finding.error(
              "odd-pair",
              hand.at(),
              "`" + name.value() + "` is made in pairs, and its count is " + count,
              "make its count even, or leave out `hand: pair`"));
    }
  }

  private PartDefinition.@Nullable FeatureDefinition feature(
      Located<String> name, Node.Mapping feature) {
    List<PartDefinition.FeatureKind> kinds = new ArrayList<>();
    for (PartDefinition.FeatureKind kind : PartDefinition.FeatureKind.values()) {
      if (feature.get(word(kind)) != null) {
        kinds.add(kind);
      }
    }
    if (kinds.size() != 1) {
      findings.add(
          Finding.error(
              "feature-kind",
              name.at(),
              "`"
                  + name.value()
                  + "` is "
                  + (kinds.isEmpty() ? "no" : "more than one")
                  + " feature",
              "write exactly one of " + KINDS));
      return null;
    }
    PartDefinition.FeatureKind kind = kinds.get(0);
    checkKeys(name, feature, kind);
    Located<String> where = feature.text(word(kind));
    Side named = side(feature, "face");
    Side face = named == null && !IN_A_FACE.contains(kind) ? Side.INSIDE : named;
    Map<String, Located<String>> sizes = new LinkedHashMap<>();
    for (String key : SIZE_KEYS) {
      Located<String> size = feature.text(key);
      if (size != null) {
        sizes.put(key, size);
      }
    }
    return where == null || face == null
        ? null
        : new PartDefinition.FeatureDefinition(
            name, kind, where, face, side(feature, "from"), sizes);
  }

  private void checkKeys(
      Located<String> name, Node.Mapping feature, PartDefinition.FeatureKind kind) {
    List<String> missing = new ArrayList<>(needed(kind));
    if (IN_A_FACE.contains(kind)) {
      missing.add("face");
    }
    missing.removeAll(feature.keys());
    if (!missing.isEmpty()) {
      String list = "`" + String.join("`, `", missing) + "`";
      findings.add(
          Finding.error(
              "missing-key",
              name.at(),
              "the " + word(kind) + " `" + name.value() + "` needs " + list,
              "add " + list));
    }
  }

  private static List<String> needed(PartDefinition.FeatureKind kind) {
    return switch (kind) {
      case RABBET -> List.of("width", "depth");
      case DADO, GROOVE -> List.of("from", "at", "width", "depth");
      case NOTCH -> List.of("from", "at", "width", "length", "depth");
      case HOLE -> List.of("from", "at", "diameter");
      case MITER, BEVEL, TAPER -> List.of("from", "by");
      case CHAMFER -> List.of("size");
      case ROUNDOVER, CORNER -> List.of("radius");
      case CURVE -> List.of("length", "rise");
    };
  }

  private static String word(PartDefinition.FeatureKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static @Nullable Side side(Node.Mapping feature, String key) {
    Located<String> word = feature.text(key);
    return word == null ? null : Side.of(word.value());
  }
}
