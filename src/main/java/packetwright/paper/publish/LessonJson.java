package packetwright.paper.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import packetwright.definition.procedure.Step;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Size;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;

/**
 * A lesson's sizes, parts and steps for other programs. Values are exact rationals in the project's
 * unit, such as {@code "143/32"}.
 */
public final class LessonJson {
  private final Lesson lesson;

  private LessonJson(Lesson lesson) {
    this.lesson = lesson;
  }

  /** The text of {@code sizes.json}. */
  public static String of(Lesson lesson) {
    LessonJson json = new LessonJson(lesson);
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("project", lesson.project().id());
    root.put("term", lesson.choices().term());
    root.put("sizes", json.sizes());
    root.put("parts", json.parts());
    root.put("steps", json.steps());
    return Json.text(root);
  }

  private Map<String, Object> sizes() {
    Map<String, Object> sizes = new LinkedHashMap<>();
    for (Size size : lesson.sizes().all()) {
      Map<String, Object> entry = value(size.value());
      if (size.kind() == Size.Kind.DERIVED || size.kind() == Size.Kind.PART) {
        entry.put("formula", size.derivation().formula());
      }
      if (!size.from().isEmpty()) {
        entry.put("from", List.copyOf(new TreeSet<>(size.from())));
      }
      Quantity tolerance = size.tolerance();
      if (tolerance != null) {
        entry.put("tolerance", inProjectUnit(tolerance).toString());
      }
      if (!size.low().equals(size.high())) {
        entry.put("low", inProjectUnit(size.low()).toString());
        entry.put("high", inProjectUnit(size.high()).toString());
      }
      if (size.isMeasured()) {
        entry.put("measured", true);
      }
      if (!size.fitted().isEmpty()) {
        entry.put("cut_to_fit", true);
      }
      sizes.put(size.name(), entry);
    }
    return sizes;
  }

  /** Value, unit and text of a quantity. */
  private Map<String, Object> value(Quantity quantity) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("value", inProjectUnit(quantity).toString());
    if (quantity.dimension() == Dimension.LENGTH) {
      entry.put("unit", unit().symbol());
      entry.put("text", lesson.project().rule().print(quantity.asLength()).graded());
    } else {
      entry.put("unit", quantity.dimension().name().toLowerCase(java.util.Locale.ROOT));
      entry.put("text", quantity.value().toString());
    }
    return entry;
  }

  private Unit unit() {
    return lesson.project().rule().unit();
  }

  private Rational inProjectUnit(Quantity quantity) {
    Rational perUnit = unit().inBase();
    return switch (quantity.dimension()) {
      case LENGTH -> quantity.value().dividedBy(perUnit);
      case AREA -> quantity.value().dividedBy(perUnit.times(perUnit));
      case VOLUME -> quantity.value().dividedBy(perUnit.times(perUnit).times(perUnit));
      default -> quantity.value();
    };
  }

  private List<Object> parts() {
    List<Object> parts = new ArrayList<>();
    for (Part part : lesson.parts()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("name", part.name());
      entry.put("letter", part.letter());
      entry.put("count", part.count());
      entry.put("blank", part.blank());
      entry.put("length", value(Quantity.of(part.solid().length())));
      entry.put("width", value(Quantity.of(part.solid().width())));
      entry.put("thickness", value(Quantity.of(part.solid().thickness())));
      entry.put("features", part.features().stream().map(Part.Feature::name).toList());
      parts.add(entry);
    }
    return parts;
  }

  private List<Object> steps() {
    List<Object> steps = new ArrayList<>();
    for (Step step : lesson.procedure().steps()) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("number", step.mark());
      entry.put("id", step.id());
      entry.put("title", step.title());
      entry.put(
          "operations", lesson.run().ofStep(step.number()).stream().map(this::operation).toList());
      steps.add(entry);
    }
    return steps;
  }

  private Object operation(OperationRun run) {
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("verb", run.operation().verb().value().word());
    entry.put("targets", run.operation().targets().stream().map(t -> t.value()).toList());
    MachineKind tool = run.tool();
    if (tool != null) {
      entry.put("at", tool.word());
    }
    Map<String, Object> settings = new LinkedHashMap<>();
    for (Setting setting : run.settings()) {
      Map<String, Object> value = value(setting.value());
      if (!setting.datum().isEmpty()) {
        value.put("datum", setting.datum());
      }
      value.put("bound", setting.kind() == Setting.Kind.BOUND);
      if (setting.fitted()) {
        value.put("cut_to_fit", true);
      }
      settings.put(setting.name(), value);
    }
    entry.put("settings", settings);
    return entry;
  }
}
