package packetwright.definition.procedure;

import java.util.List;
import packetwright.text.source.Span;

/** A paragraph or a list of the prose. */
public sealed interface Block {
  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

  /** One method for each kind of block. */
  interface Cases<R> {
    /** Running text. */
    R paragraph(Paragraph paragraph);

    /** A list. */
    R list(ItemList list);
  }

  /**
   * Running text.
   *
   * @param spans in order
   */
  record Paragraph(List<Inline> spans) implements Block {
    /** Keeps its own copy. */
    public Paragraph {
      spans = List.copyOf(spans);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.paragraph(this);
    }
  }

  /**
   * A list.
   *
   * @param numbered or with bullets
   * @param items each of one or more blocks
   */
  record ItemList(boolean numbered, List<List<Block>> items) implements Block {
    /** Keeps its own copy. */
    public ItemList {
      items = items.stream().map(List::copyOf).toList();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.list(this);
    }
  }

  /** A stretch of text within a block. */
  sealed interface Inline {
    /** Calls the case that fits. */
    <R> R match(InlineCases<R> cases);
  }

  /** One method for each kind of stretch. */
  interface InlineCases<R> {
    /** Plain words. */
    R text(Text text);

    /** Words that stand out. */
    R emphasis(Emphasis emphasis);

    /** A size by name. */
    R size(SizePlace place);

    /** Another step's number. */
    R step(StepPlace place);

    /** A setting of this step. */
    R setting(SettingPlace place);

    /** A number that is meant as it stands. */
    R literal(Literal literal);
  }

  /**
   * Plain words.
   *
   * @param text as read
   */
  record Text(String text) implements Inline {
    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.text(this);
    }
  }

  /**
   * Words that stand out.
   *
   * @param strong bold rather than italic
   * @param spans in order
   */
  record Emphasis(boolean strong, List<Inline> spans) implements Inline {
    /** Keeps its own copy. */
    public Emphasis {
      spans = List.copyOf(spans);
    }

    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.emphasis(this);
    }
  }

  /**
   * {@code {name}}: a size by name.
   *
   * @param name as written
   * @param at its place
   */
  record SizePlace(String name, Span at) implements Inline {
    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.size(this);
    }
  }

  /**
   * {@code {step: id}}: another step's number.
   *
   * @param id of the step
   * @param at its place
   */
  record StepPlace(String id, Span at) implements Inline {
    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.step(this);
    }
  }

  /**
   * {@code {setting: fence}} or {@code {setting: wall.fence}}: a setting of this step.
   *
   * @param of what tells the operation among several: its piece, target or verb; else empty
   * @param name of the setting
   * @param at its place
   */
  record SettingPlace(String of, String name, Span at) implements Inline {
    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.setting(this);
    }
  }

  /**
   * {@code {=3 in}}: a number that is meant as it stands.
   *
   * @param text without the braces and the sign
   */
  record Literal(String text) implements Inline {
    @Override
    public <R> R match(InlineCases<R> cases) {
      return cases.literal(this);
    }
  }
}
