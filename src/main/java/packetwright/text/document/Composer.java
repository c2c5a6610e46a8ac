package packetwright.text.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Builds nodes from the parser's events, so that depth and aliases are met before they cost. */
final class Composer {
  private static final int MAX_DEPTH = 40;

  private final Iterator<Event> events;
  private final Places places;
  private final Findings findings;

  Composer(Iterator<Event> events, Places places, Findings findings) {
    this.events = events;
    this.places = places;
    this.findings = findings;
  }

  @Nullable Node document() {
    Event event = events.next();
    while (event.getEventId() == Event.ID.StreamStart
        || event.getEventId() == Event.ID.DocumentStart) {
      event = events.next();
    }
    if (event.getEventId() == Event.ID.StreamEnd) {
      return empty();
    }
    Node node = node(event, 0);
    if (findings.hasErrors() && node == null) {
      return null;
    }
    events.next();
    Event after = events.next();
    if (after.getEventId() != Event.ID.StreamEnd) {
      unread(after, "a second document after `---`", "delete the line `---` and what follows it");
    }
    return node instanceof Node.Scalar scalar && scalar.isEmpty() ? empty() : node;
  }

  private @Nullable Node empty() {
    findings.add(
        Finding.error(
            "empty-file",
            places.start(),
            "nothing is written here",
            "fill it in, or copy it from a sample"));
    return null;
  }

  /** The node that an event begins; none when it lies too deep, and then reading ends. */
  private @Nullable Node node(Event event, int depth) {
    if (event instanceof AliasEvent alias) {
      unread(event, "the alias `*" + alias.getAlias() + "`", "write the value out again");
      return new Node.Scalar("", span(event), false);
    }
    if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
      unread(
          event,
          "the anchor `&" + node.getAnchor().get() + "`",
          "delete it, and write the value out where it is needed");
    }
    if (event instanceof ScalarEvent scalar) {
      if (scalar.getTag().isPresent()) {
        unread(event, "a tag", "delete the exclamation marks and the word after them");
      }
      if (scalar
          .getValue()
          .chars()
          .anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t')) {
        findings.add(
            Finding.error(
                "control-character",
                span(event),
                "this text holds a control character, which nothing prints",
                "write it without the escape"));
      }
      return new Node.Scalar(scalar.getValue(), span(event), !scalar.isPlain());
    }
    if (depth == MAX_DEPTH) {
      findings.add(
          Finding.error(
              "nested-too-deep",
              span(event),
              "this is nested more than " + MAX_DEPTH + " deep",
              "write it with fewer levels"));
      return null;
    }
    boolean flow = event instanceof CollectionStartEvent start && start.isFlow();
    return event.getEventId() == Event.ID.SequenceStart
        ? sequence(event, flow, depth)
        : mapping(event, flow, depth);
  }

  private @Nullable Node sequence(Event start, boolean flow, int depth) {
    List<Node> items = new ArrayList<>();
    Event event = events.next();
    while (event.getEventId() != Event.ID.SequenceEnd) {
      Node item = node(event, depth + 1);
      if (item == null) {
        return null;
      }
      items.add(item);
      event = events.next();
    }
    Span at = flow || items.isEmpty() ? between(start, event) : items.get(0).at();
    return new Node.Sequence(flow ? SplitText.join(items, findings) : items, at);
  }

  private @Nullable Node mapping(Event start, boolean flow, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Span> seen = new HashMap<>();
    Event event = events.next();
    while (event.getEventId() != Event.ID.MappingEnd) {
      Node key = node(event, depth + 1);
      Node value = key == null ? null : node(events.next(), depth + 1);
      if (key == null || value == null) {
        return null;
      }
      if (isNew(key, seen)) {
        Node.Scalar name = (Node.Scalar) key;
        entries.add(new Node.Entry(new Located<>(name.text(), name.at()), value));
      }
      event = events.next();
    }
    Span at = flow || entries.isEmpty() ? between(start, event) : entries.get(0).key().at();
    return new Node.Mapping(flow ? SplitText.joinEntries(entries, findings) : entries, at, flow);
  }

  /** Whether a key is a name that this mapping has not had before. */
  private boolean isNew(Node key, Map<String, Span> seen) {
    if (!(key instanceof Node.Scalar name)) {
      findings.add(
          Finding.error("yaml-syntax", key.at(), "a key must be a name", "write a name here"));
      return false;
    }
    Span earlier = seen.putIfAbsent(name.text(), name.at());
    if (earlier != null) {
      findings.add(
          Finding.error(
              "duplicate-key",
              name.at(),
              "`" + name.text() + "` stands here twice, first in line " + earlier.line(),
              "delete or rename one of them"));
    }
    return earlier == null;
  }

  private void unread(Event event, String what, String hint) {
    findings.add(
        Finding.error(
            "yaml-feature", span(event), what + " is a part of YAML that is not read here", hint));
  }

  private Span span(Event event) {
    return between(event, event);
  }

  private Span between(Event first, Event last) {
    Mark from = first.getStartMark().orElseThrow();
    return places.at(from, last.getEndMark().orElseThrow());
  }
}
