package packetwright.paper.html;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateSequenceModel;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * Shows templates plain data only: records as maps of their components, lists, texts, numbers and
 * truth values. No method of ours can be called from a template.
 */
final class Models implements ObjectWrapper {
  private final Markup markup;
  private final Map<String, Sheet> sheets = new LinkedHashMap<>();

  Models(Words words) {
    this.markup = new Markup(words);
  }

  /** Drawings that were printed so far, by name. */
  Map<String, Sheet> sheets() {
    return sheets;
  }

  @Override
  public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
    if (value == null) {
      return null;
    } else if (value instanceof TemplateModel model) {
      return model;
    } else if (value instanceof Phrase phrase) {
      return HTMLOutputFormat.INSTANCE.fromMarkup(markup.phrase(phrase));
    } else if (value instanceof Sheet sheet) {
      return drawing(sheet);
    } else if (value instanceof String text) {
      return new SimpleScalar(text);
    } else if (value instanceof Integer number) {
      return new SimpleNumber(number);
    } else if (value instanceof Boolean truth) {
      return truth ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
    } else if (value instanceof List<?> list) {
      return new Sequence(list);
    } else if (value instanceof Record record) {
      return new Components(record);
    }
    throw new IllegalArgumentException("templates cannot show " + value.getClass());
  }

  private TemplateModel drawing(Sheet sheet) throws TemplateModelException {
    Sheet former = sheets.putIfAbsent(sheet.name(), sheet);
    if (former != null && !former.equals(sheet)) {
      throw new IllegalStateException("two drawings are called " + sheet.name());
    }
    return HTMLOutputFormat.INSTANCE.fromMarkup(Markup.drawing(sheet));
  }

  /** A list. */
  private final class Sequence implements TemplateSequenceModel {
    private final List<?> list;

    private Sequence(List<?> list) {
      this.list = list;
    }

    @Override
    public @Nullable TemplateModel get(int index) throws TemplateModelException {
      return index < 0 || index >= list.size() ? null : wrap(list.get(index));
    }

    @Override
    public int size() {
      return list.size();
    }
  }

  /** A record as a map. */
  private final class Components implements TemplateHashModel {
    private final Record record;

    private Components(Record record) {
      this.record = record;
    }

    @Override
    public @Nullable TemplateModel get(String name) throws TemplateModelException {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        if (component.getName().equals(name)) {
          try {
            return wrap(component.getAccessor().invoke(record));
          } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("component " + component, e);
          }
        }
      }
      return null;
    }

    @Override
    public boolean isEmpty() {
      return false;
    }
  }

  /** Phrases by key: {@code words["packet.parts"]}. */
  static final class Headings implements TemplateHashModel {
    private final Words words;

    Headings(Words words) {
      this.words = words;
    }

    @Override
    public TemplateModel get(String key) {
      return new SimpleScalar(words.plain(key));
    }

    @Override
    public boolean isEmpty() {
      return false;
    }
  }
}
