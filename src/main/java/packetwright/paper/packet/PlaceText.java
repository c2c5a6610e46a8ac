package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Block;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Choice;
import packetwright.definition.size.Size;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.SettingMeant;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import packetwright.text.words.Phrase;
import packetwright.wood.operation.OperationRun;

/** Fills the places of the prose: sizes by name, numbers of steps, settings of the step. */
final class PlaceText {
  private final Lesson lesson;
  private final Naming naming;
  private final Findings findings;

  PlaceText(Lesson lesson, Naming naming, Findings findings) {
    this.lesson = lesson;
    this.naming = naming;
    this.findings = findings;
  }

  /** The prose of a step, or of the introduction when there is none. */
  List<Prose> fill(List<Block> blocks, @Nullable Step step) {
    return blocks.stream().map(b -> prose(b, step)).toList();
  }

  private Prose prose(Block block, @Nullable Step step) {
    return block.match(
        new Block.Cases<Prose>() {
          @Override
          public Prose paragraph(Block.Paragraph paragraph) {
            return Prose.paragraph(phrase(paragraph.spans(), step));
          }

          @Override
          public Prose list(Block.ItemList list) {
            return Prose.list(
                list.numbered(), list.items().stream().map(item -> fill(item, step)).toList());
          }
        });
  }

  private Phrase phrase(List<Block.Inline> spans, @Nullable Step step) {
    List<Phrase.Piece> pieces = new ArrayList<>();
    for (Block.Inline span : spans) {
      pieces.addAll(span.match(new Filling(step)));
    }
    return new Phrase(pieces);
  }

  private void unknown(String message, String hint, Span at, @Nullable Step step) {
    Finding finding = Finding.error("unknown-place", at, message, hint);
    findings.add(step == null ? finding : finding.inStep(step.label()));
  }

  /** Fills one stretch. */
  private final class Filling implements Block.InlineCases<List<Phrase.Piece>> {
    private final @Nullable Step step;

    private Filling(@Nullable Step step) {
      this.step = step;
    }

    @Override
    public List<Phrase.Piece> text(Block.Text text) {
      return List.of(new Phrase.Text(text.text()));
    }

    @Override
    public List<Phrase.Piece> emphasis(Block.Emphasis emphasis) {
      return List.of(new Phrase.Emphasis(emphasis.strong(), phrase(emphasis.spans(), step)));
    }

    @Override
    public List<Phrase.Piece> size(Block.SizePlace place) {
      for (Choice choice : lesson.project().choices()) {
        if (choice.name().value().equals(place.name())) {
          return List.of(new Phrase.Text(lesson.choices().substitution().row(choice).value()));
        }
      }
      Size size = lesson.sizes().find(place.name());
      if (size == null) {
        unknown(
            "no size is called `" + place.name() + "`",
            NearMiss.hint(place.name(), lesson.sizes().values().names()),
            place.at(),
            step);
        return List.of();
      }
      return naming.size(size.value()).pieces();
    }

    @Override
    public List<Phrase.Piece> step(Block.StepPlace place) {
      for (Step other : lesson.procedure().steps()) {
        if (other.id().equals(place.id())) {
          return List.of(new Phrase.Text(other.mark()));
        }
      }
      throw new IllegalStateException("no step " + place.id());
    }

    @Override
    public List<Phrase.Piece> setting(Block.SettingPlace place) {
      List<OperationRun> runs = step == null ? List.of() : lesson.run().ofStep(step.number());
      Checked<Quantity> value = SettingMeant.value(runs, place);
      value.findings().forEach(f -> findings.add(step == null ? f : f.inStep(step.label())));
      if (value.hasValue()) {
        return naming.exactly(value.value()).pieces();
      }
      return List.of();
    }

    @Override
    public List<Phrase.Piece> literal(Block.Literal literal) {
      return Naming.typeset(literal.text()).pieces();
    }
  }
}
