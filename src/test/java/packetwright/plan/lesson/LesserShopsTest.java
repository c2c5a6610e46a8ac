package packetwright.plan.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.OperationRun;

/** Each sample in shops that lack one machine or another. */
class LesserShopsTest {
  private static final String SHOP = "lesser-shop.yaml";

  /** Work that a shop cannot do, by sample and shop, with the finding that says so. */
  private static final Map<String, String> CANNOT =
      Map.of(
          // Brads go in with one of the two; screws would need plugs, which the box is too thin
          // for.
          "sliding-lid-box without nailer, hammer", "no-variant",
          // A wide hole is bored with one of the two or not at all.
          "nest-box without drill_press, hand_drill", "no-variant",
          // Nothing else takes wood out of a groove.
          "sliding-lid-box without dado_set, router_table, chisel", "no-variant",
          "step-stool without dado_set, router_table, chisel", "no-variant");

  @TestFactory
  Stream<DynamicTest> eachSampleProvesOrSaysWhatItCannotDo() {
    List<DynamicTest> tests = new ArrayList<>();
    for (String sample : ProjectFolder.samples()) {
      shops(sample)
          .forEach(
              (name, shop) ->
                  tests.add(
                      DynamicTest.dynamicTest(
                          sample + " " + name, () -> check(sample, name, shop))));
    }
    assertThat(tests).hasSizeGreaterThan(40);
    return tests.stream();
  }

  private static void check(String sample, String name, String shop) {
    ProjectFolder folder = ProjectFolder.sample(sample).with(SHOP, shop);
    for (Request request :
        Lessons.combinations(folder, new Request(SHOP, List.of(), Set.of(), ""))) {
      Checked<Lesson> lesson = Lessons.workOut(folder, request);
      String expected = CANNOT.get(sample + " " + name);
      boolean isAsked = !name.contains("hammer") || request.options().contains("brads");
      if (expected != null && isAsked) {
        assertThat(lesson.findings())
            .filteredOn(Finding::isError)
            .as(request.toString())
            .extracting(Finding::code)
            .containsOnly(expected);
      } else {
        assertThat(lesson.findings()).filteredOn(Finding::isError).as(request.toString()).isEmpty();
        assertThat(tools(lesson.value()))
            .as(request.toString())
            .allMatch(lesson.value().shop()::has);
      }
    }
  }

  private static Set<MachineKind> tools(Lesson lesson) {
    Set<MachineKind> tools = new TreeSet<>();
    for (OperationRun run : lesson.run().operations()) {
      MachineKind tool = run.tool();
      if (tool != null) {
        tools.add(tool);
      }
    }
    return tools;
  }

  /** Profiles by what they lack. */
  private static Map<String, String> shops(String sample) {
    Map<String, String> shops = new LinkedHashMap<>();
    String own = ProjectFolder.sample(sample).text("shop.yaml").value();
    String builtIn = ShopReader.profile(ShopReader.BUILT_IN);
    shops.put("in its own shop", own);
    shops.put("in the built-in shop", builtIn);
    shops.put("with hand tools", ShopReader.profile(ShopReader.HAND_TOOLS));
    for (String base : List.of(own, builtIn)) {
      String which = base.equals(own) ? "own shop without " : "without ";
      for (String lacking :
          List.of(
              "miter_saw",
              "dado_set",
              "dado_set, router_table",
              "nailer",
              "planer",
              "band_saw",
              "jointer",
              "drill_press",
              "planer, jointer, band_saw")) {
        shops.put(which + lacking, without(base, lacking));
      }
    }
    shops.put("without table_saw", without(builtIn, "table_saw, dado_set"));
    shops.put("without nailer, hammer", without(builtIn, "nailer, hammer"));
    shops.put("without drill_press, hand_drill", without(builtIn, "drill_press, hand_drill"));
    shops.put(
        "without dado_set, router_table, chisel",
        without(builtIn, "dado_set, router_table, chisel"));
    return shops;
  }

  private static String without(String shop, String kinds) {
    String less = shop;
    for (String kind : kinds.split(", ", -1)) {
      less =
          less.replaceAll("(?m)^  " + kind + ": .*\\n", "")
              .replaceAll("(?m)^((?:hand_tools|setup_check): .*)\\b" + kind + "(?:, )?", "$1")
              .replace(", ]", "]");
    }
    return less.replaceAll("(?m)^cutters:\\n(?=\\S)", "");
  }

  @Test
  void handWorkIsSetByLinesAndNotByFences() {
    for (String sample : ProjectFolder.samples()) {
      for (OperationRun run : byHand(sample).run().operations()) {
        boolean hasFence = run.tool() == MachineKind.PLOW_PLANE;
        assertThat(run.settings())
            .as(sample + " " + run.step().label())
            .filteredOn(s -> !hasFence)
            .allMatch(s -> !Set.of("fence", "stop", "height", "cutter").contains(s.name()))
            .allMatch(s -> !Set.of("near", "far").contains(s.datum()));
      }
    }
  }

  @Test
  void handWorkHasNoPoweredMachine() {
    for (String sample : ProjectFolder.samples()) {
      assertThat(tools(byHand(sample))).as(sample).isNotEmpty().noneMatch(MachineKind::isPowered);
    }
  }

  /** The built-in profiles are no looser than what our rules say of a machine. */
  @Test
  void builtInShopsAreNeverLooserThanTheRules() {
    for (String profile : ShopReader.profiles()) {
      Shop shop = ShopReader.read(profile, ShopReader.profile(profile)).value();
      assertThat(CautionRules.builtIn().looserLimits(shop)).as(profile).isEmpty();
    }
  }

  private static Lesson byHand(String sample) {
    ProjectFolder folder =
        ProjectFolder.sample(sample).with(SHOP, ShopReader.profile(ShopReader.HAND_TOOLS));
    Checked<Lesson> lesson = Lessons.workOut(folder, new Request(SHOP, List.of(), Set.of(), ""));
    assertThat(lesson.findings()).filteredOn(Finding::isError).as(sample).isEmpty();
    return lesson.value();
  }
}
