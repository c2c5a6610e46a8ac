package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** Turns paragraphs and lists into our records; what cannot be printed is a finding. */
final class Prose {
  private static final Pattern NAME =
      Pattern.compile("[a-z][a-z0-9_]*(\\.[a-z0-9_]+)*", Pattern.CASE_INSENSITIVE);
  private static final Pattern STEP = Pattern.compile("step:\\s*([\\p{L}\\p{N}_-]+)");

  /** The setting, and before it the operation where a step has several. */
  private static final Pattern SETTING =
      Pattern.compile("setting:\\s*(?:([\\p{L}\\p{N}_. -]+)\\.)?([\\p{L}\\p{N}_-]+)");

  private final Source source;
  private final Findings findings;
  private final List<Block.StepPlace> stepPlaces = new ArrayList<>();

  Prose(Source source, Findings findings) {
    this.source = source;
    this.findings = findings;
  }

  /** The places met so far that name a step. */
  List<Block.StepPlace> stepPlaces() {
    return stepPlaces;
  }

  /** The block that a node makes; none when it cannot be printed. */
  List<Block> block(Node node) {
    if (node instanceof Paragraph) {
      return List.of(new Block.Paragraph(inlines(node)));
    }
    if (node instanceof BulletList || node instanceof OrderedList) {
      return List.of(new Block.ItemList(node instanceof OrderedList, items(node)));
    }
    refuse(node);
    return List.of();
  }

  private List<List<Block>> items(Node list) {
    List<List<Block>> items = new ArrayList<>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      List<Block> blocks = new ArrayList<>();
      for (Node child = item.getFirstChild(); child != null; child = child.getNext()) {
        blocks.addAll(block(child));
      }
      items.add(blocks);
    }
    return items;
  }

  List<Block.Inline> inlines(Node parent) {
    List<Block.Inline> inlines = new ArrayList<>();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      inline(node, inlines);
    }
    return inlines;
  }

  private void inline(Node node, List<Block.Inline> to) {
    if (node instanceof Text text) {
      LiteralSizes.warn(text.getLiteral(), source.at(node), findings);
      to.add(new Block.Text(text.getLiteral()));
    } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
      to.add(new Block.Text(" "));
    } else if (node instanceof Emphasis || node instanceof StrongEmphasis) {
      to.add(new Block.Emphasis(node instanceof StrongEmphasis, inlines(node)));
    } else if (node instanceof Place place) {
      to.add(place(place));
    } else if (node instanceof Code code) {
      to.add(new Block.Text(code.getLiteral()));
    } else {
      refuse(node);
      to.addAll(inlines(node));
    }
  }

  private Block.Inline place(Place place) {
    String content = place.content().strip();
    Span at = source.at(place);
    Matcher step = STEP.matcher(content);
    Matcher setting = SETTING.matcher(content);
    if (place.isClosed() && content.startsWith("=") && content.length() > 1) {
      return new Block.Literal(content.substring(1).strip());
    }
    if (place.isClosed() && NAME.matcher(content).matches()) {
      return new Block.SizePlace(content, at);
    }
    if (place.isClosed() && step.matches()) {
      return step(new Block.StepPlace(step.group(1), at));
    }
    if (place.isClosed() && setting.matches()) {
      String of = setting.group(1);
      return new Block.SettingPlace(of == null ? "" : of, setting.group(2), at);
    }
    findings.add(
        Finding.error(
            "unreadable-place",
            at,
            place.isClosed()
                ? "`{" + place.content() + "}` is no place for a size"
                : "this brace is not closed on its line",
            "write {name}, {step: id}, {setting: fence} or {=3 in}; for a plain brace, \\{"));
    return new Block.Text("{" + place.content() + (place.isClosed() ? "}" : ""));
  }

  private Block.Inline step(Block.StepPlace place) {
    stepPlaces.add(place);
    return place;
  }

  /** Says that a kind of Markdown is not printed. */
  void refuse(Node node) {
    findings.add(
        Finding.error(
            "unread-markdown",
            source.at(node),
            name(node) + " cannot be printed here",
            "write paragraphs and lists, with *emphasis* and **strong** words"));
  }

  private static String name(Node node) {
    return switch (node.getClass().getSimpleName()) {
      case "HtmlBlock", "HtmlInline" -> "HTML";
      case "Image" -> "a picture";
      case "Link" -> "a link";
      case "FencedCodeBlock" -> "a fenced block that is not marked `operations`";
      case "IndentedCodeBlock" -> "a text set in by four spaces or more";
      case "BlockQuote" -> "a quotation";
      case "ThematicBreak" -> "a line across the page";
      case "Heading" -> "a heading of this level";
      default -> "this kind of Markdown";
    };
  }
}
