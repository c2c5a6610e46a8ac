package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import packetwright.definition.procedure.Block.SettingPlace;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/** Which of a step's settings a place in its prose means; it must be one. */
public final class SettingMeant {
  private final List<OperationRun> runs;
  private final SettingPlace place;

  private SettingMeant(List<OperationRun> runs, SettingPlace place) {
    this.runs = runs;
    this.place = place;
  }

  /**
   * Its value; none, with a finding, when no setting is meant or several that differ are.
   *
   * @param runs of the step; none in the introduction
   */
  public static Checked<Quantity> value(List<OperationRun> runs, SettingPlace place) {
    return new SettingMeant(runs, place).value();
  }

  private Checked<Quantity> value() {
    List<OperationRun> named =
        place.of().isEmpty()
            ? runs
            : runs.stream().filter(run -> names(run).contains(place.of())).toList();
    if (named.isEmpty() && !place.of().isEmpty()) {
      return unknown(
          "no operation of this step is about `" + place.of() + "`", place.of(), names());
    }
    Set<Quantity> values = values(named);
    if (values.isEmpty()) {
      List<String> set =
          named.stream().flatMap(r -> r.settings().stream()).map(Setting::name).distinct().toList();
      return unknown("this step sets no `" + place.name() + "`", place.name(), set);
    }
    return values.size() == 1 ? Checked.of(values.iterator().next()) : ambiguous(values.size());
  }

  private Set<Quantity> values(List<OperationRun> among) {
    Set<Quantity> values = new LinkedHashSet<>();
    for (OperationRun run : among) {
      run.settings().stream()
          .filter(setting -> setting.name().equals(place.name()))
          .forEach(setting -> values.add(setting.value()));
    }
    return values;
  }

  /**
   * What an operation can be told by: targets first, then pieces and their parts, then the verb.
   */
  private static Set<String> names(OperationRun run) {
    Set<String> names = new LinkedHashSet<>();
    run.operation().targets().stream().map(Located::value).forEach(names::add);
    for (Workpiece piece : run.before()) {
      names.add(piece.name());
      names.add(Part.nameOf(piece.name()));
    }
    names.add(run.operation().verb().value().word());
    return names;
  }

  private List<String> names() {
    Set<String> names = new LinkedHashSet<>();
    runs.forEach(run -> names.addAll(names(run)));
    return List.copyOf(names);
  }

  private Checked<Quantity> unknown(String message, String word, List<String> known) {
    return Checked.failed(
        Finding.error("unknown-place", place.at(), message, NearMiss.hint(word, known)));
  }

  private Checked<Quantity> ambiguous(int count) {
    List<String> telling = new ArrayList<>();
    for (OperationRun run : runs) {
      names(run).stream()
          .filter(
              name ->
                  values(runs.stream().filter(r -> names(r).contains(name)).toList()).size() == 1)
          .findFirst()
          .filter(name -> !telling.contains(name))
          .ifPresent(telling::add);
    }
    List<String> places =
        telling.stream().map(name -> "{setting: " + name + "." + place.name() + "}").toList();
    return Checked.failed(
        Finding.error(
            "ambiguous-setting",
            place.at(),
            "this step sets `" + place.name() + "` to " + count + " different values",
            places.isEmpty()
                ? "make two steps of it, or point to the settings box"
                : "name the operation: write " + String.join(" or ", places)));
  }
}
