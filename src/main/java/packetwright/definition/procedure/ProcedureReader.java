package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/** Reads {@code procedure.md}: CommonMark with steps, operations, places and variants. */
public final class ProcedureReader {
  /** The file that holds the procedure. */
  public static final String PROCEDURE = "procedure.md";

  private static final int MAX_NESTING = 20;
  private static final int MAX_STEPS = 500;

  /** Levels of headings that begin a passage of a step; the deeper ones lie inside the others. */
  private static final Set<Integer> PASSAGES = Set.of(3, 4);

  private static final Parser PARSER =
      Parser.builder()
          .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
          .customInlineContentParserFactory(new Place.Factory())
          .maxOpenBlockParsers(MAX_NESTING)
          .maxInlineNesting(MAX_NESTING)
          .build();

  private final Source source;
  private final Variant variant;
  private final StepDraft introduction;
  private final List<StepDraft> drafts = new ArrayList<>();
  private final Map<String, Span> ids = new HashMap<>();
  private final Set<String> options = new HashSet<>();
  private StepDraft current;

  private ProcedureReader(Source source, Variant variant) {
    this.source = source;
    this.variant = variant;
    this.introduction = new StepDraft("", "", Span.startOf(source.file()));
    this.current = introduction;
  }

  /**
   * The procedure in the variant for one shop and its options. Passages of other variants are
   * checked too, and left out.
   *
   * @param file name for the places of findings
   */
  public static Checked<Procedure> read(String file, String text, Variant variant) {
    if (text.isBlank()) {
      return Checked.failed(
          Finding.error(
              "empty-file",
              Span.startOf(file),
              "nothing is written here",
              "fill it in, or copy it from a sample"));
    }
    ProcedureReader reader = new ProcedureReader(new Source(file), variant);
    for (Node node = PARSER.parse(text).getFirstChild(); node != null; node = node.getNext()) {
      reader.block(node);
    }
    return reader.procedure();
  }

  private void block(Node node) {
    if (node instanceof Heading heading && heading.getLevel() == 2) {
      step(heading);
    } else if (node instanceof Heading heading && PASSAGES.contains(heading.getLevel())) {
      passage(heading);
    } else if (node instanceof FencedCodeBlock fenced
        && fenced.getInfo().strip().equals("operations")) {
      operations(fenced);
    } else {
      prose(node);
    }
  }

  private void step(Heading heading) {
    current.end();
    String title = PlainText.of(heading);
    String id = slug(title);
    Span at = source.at(heading);
    current = new StepDraft(id, title, at);
    drafts.add(current);
    LiteralSizes.warnOfTitle(heading, source, current.findings);
    Span earlier = ids.putIfAbsent(id, at);
    if (id.isEmpty()) {
      current.findings.add(
          Finding.error("untitled-step", at, "this step has no title", "write what is done in it"));
    } else if (earlier != null) {
      current.findings.add(
          Finding.error(
              "duplicate-step",
              at,
              "the step `" + title + "` stands here twice, first in line " + earlier.line(),
              "give one of them another title"));
    }
  }

  /** Lower-case letters and digits, joined by hyphens. */
  private static String slug(String title) {
    return title
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "-")
        .replaceAll("^-|-$", "");
  }

  private void passage(Heading heading) {
    String title = PlainText.of(heading);
    String name = title.substring(title.indexOf(' ') + 1).strip();
    int level = heading.getLevel();
    if (title.startsWith("With ")) {
      List<MachineKind> kinds = machines(heading, name);
      boolean shopHasThem = !kinds.isEmpty() && kinds.stream().allMatch(variant.shop()::has);
      current.beginForMachine(level, machineVariant(kinds, heading, shopHasThem));
    } else if (title.startsWith("Without ")) {
      List<MachineKind> kinds = machines(heading, name);
      boolean shopLacksThem = !kinds.isEmpty() && kinds.stream().noneMatch(variant.shop()::has);
      current.beginForMachine(level, machineVariant(List.of(), heading, shopLacksThem));
    } else if (title.startsWith("If ")) {
      checkOption(heading, name);
      current.beginForOptions(level, variant.chosen().contains(name));
    } else if (title.startsWith("Unless ")) {
      checkOption(heading, name);
      current.beginForOptions(level, !variant.chosen().contains(name));
    } else {
      current.findings.add(
          Finding.error(
              "unknown-variant",
              source.at(heading),
              "`" + title + "` does not say when it holds",
              "write With or Without and machines, or If or Unless and an option; a step has two"
                  + " number signs"));
    }
  }

  private StepDraft.MachineVariant machineVariant(
      List<MachineKind> kinds, Heading heading, boolean holds) {
    return new StepDraft.MachineVariant(kinds, source.at(heading), holds);
  }

  /** {@code hand_saw and chisel} as both; none where one of them is unknown, with a finding. */
  private List<MachineKind> machines(Heading heading, String names) {
    List<MachineKind> kinds = new ArrayList<>();
    for (String name : names.split("\\s+and\\s+", -1)) {
      MachineKind kind = MachineKind.of(name);
      if (kind == null) {
        current.findings.add(
            Finding.error(
                "unknown-machine",
                source.at(heading),
                "`" + name + "` is no machine or hand tool",
                machineHint(name)));
        return List.of();
      }
      kinds.add(kind);
    }
    return kinds;
  }

  private void checkOption(Heading heading, String name) {
    options.add(name);
    Set<String> known = variant.known();
    if (known != null && !known.contains(name)) {
      current.findings.add(
          Finding.error(
              "unknown-option",
              source.at(heading),
              "the project has no option `" + name + "`",
              optionHint(name, known)));
    }
  }

  private static String machineHint(String name) {
    String near = NearMiss.hint(name, MachineKind.words());
    return near.isEmpty() ? "write a machine or tool, for instance router_table or chisel" : near;
  }

  private static String optionHint(String name, Set<String> known) {
    String near = NearMiss.hint(name, known);
    return near.isEmpty() ? "add it under `options` in project.yaml" : near;
  }

  private void operations(FencedCodeBlock fenced) {
    Span at = source.at(fenced);
    if (current == introduction) {
      current.findings.add(
          Finding.error(
              "operations-outside-step",
              at,
              "these operations stand before the first step",
              "write a heading with two number signs above them"));
    }
    List<Operation> read =
        new OperationReader(current.findings)
            .read(
                source.file(),
                fenced.getLiteral(),
                at.line() + 1,
                at.column() + fenced.getFenceIndent());
    current.add(read);
  }

  private void prose(Node node) {
    Prose prose = new Prose(source, current.findings);
    List<Block> read = prose.block(node);
    if (current.isLive()) {
      current.prose.addAll(read);
      current.stepPlaces.addAll(prose.stepPlaces());
    }
  }

  private Checked<Procedure> procedure() {
    current.end();
    Findings findings = new Findings();
    Set<String> live = new HashSet<>();
    drafts.stream().filter(d -> !d.isEmpty()).forEach(d -> live.add(d.id));
    if (live.isEmpty() || drafts.size() > MAX_STEPS) {
      findings.add(noSteps());
    }
    checkStepPlaces(introduction, live);
    findings.addAll(introduction.findings.list());
    List<Step> steps = steps();
    Iterator<Step> next = steps.iterator();
    for (StepDraft draft : drafts) {
      checkStepPlaces(draft, live);
      findings.addAll(draft.findings(draft.isEmpty() ? draft.title : next.next().label()));
    }
    return findings.checked(new Procedure(introduction.prose, steps, options));
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (StepDraft draft : drafts) {
      if (!draft.isEmpty()) {
        steps.add(draft.numbered(steps.size() + 1));
      }
    }
    return Preparation.marked(steps, variant.blanks());
  }

  private Finding noSteps() {
    return Finding.error(
        "step-count",
        Span.startOf(source.file()),
        "the procedure has " + drafts.size() + " steps; from 1 to " + MAX_STEPS + " can be printed",
        "begin each step with a heading: two number signs and what is done");
  }

  private void checkStepPlaces(StepDraft draft, Set<String> live) {
    for (Block.StepPlace place : draft.stepPlaces) {
      if (!live.contains(place.id())) {
        boolean hidden = ids.containsKey(place.id());
        String near = NearMiss.hint(place.id(), live);
        draft.findings.add(
            Finding.error(
                "unknown-step",
                place.at(),
                hidden
                    ? "the step `" + place.id() + "` does not stand in this variant"
                    : "there is no step `" + place.id() + "`",
                hidden
                    ? "move the sentence into the same variant as that step"
                    : near.isEmpty()
                        ? "write the step's title in lower case, with hyphens for spaces"
                        : near));
      }
    }
  }
}
