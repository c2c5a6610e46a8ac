package packetwright.drawing.setup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.ShopReader;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;

/** The samples as they are done in their own shops, in the built-in shop and by hand. */
public final class SampleRuns {
  private static final String SHOP = "another-shop.yaml";

  private static final String OWN = "own shop";

  private SampleRuns() {}

  /** Every sample in every shop and with every set of options, by a name for reports. */
  public static Map<String, Lesson> all() {
    return Held.ALL;
  }

  /** Every sample in its own shop, with nothing chosen. */
  public static Map<String, Lesson> inOwnShops() {
    return workOut(true);
  }

  /** Worked out once for all tests. */
  private static final class Held {
    private static final Map<String, Lesson> ALL = workOut(false);
  }

  private static Map<String, Lesson> workOut(boolean isOwnOnly) {
    Map<String, Lesson> lessons = new LinkedHashMap<>();
    for (String sample : ProjectFolder.samples()) {
      for (Map.Entry<String, String> shop : shops(sample).entrySet()) {
        ProjectFolder folder = ProjectFolder.sample(sample).with(SHOP, shop.getValue());
        for (Request request :
            Lessons.combinations(folder, new Request(SHOP, List.of(), Set.of(), ""))) {
          if (isOwnOnly && !(shop.getKey().equals(OWN) && request.options().isEmpty())) {
            continue;
          }
          Checked<Lesson> lesson = Lessons.workOut(folder, request);
          lessons.put(sample + " " + shop.getKey() + " " + request.options(), lesson.value());
        }
      }
    }
    return lessons;
  }

  private static Map<String, String> shops(String sample) {
    Map<String, String> shops = new LinkedHashMap<>();
    String own = ProjectFolder.sample(sample).text("shop.yaml").value();
    shops.put(OWN, own);
    shops.put("built-in shop", ShopReader.profile(ShopReader.BUILT_IN));
    shops.put("hand tools", ShopReader.profile(ShopReader.HAND_TOOLS));
    shops.put(
        "routers",
        List.of("miter_saw", "dado_set").stream()
            .reduce(ShopReader.profile(ShopReader.BUILT_IN), SampleRuns::without));
    return shops;
  }

  private static String without(String shop, String kind) {
    return shop.replaceAll("(?m)^  " + kind + ": .*\\n", "")
        .replaceAll("(?m)^((?:hand_tools|setup_check): .*)\\b" + kind + "(?:, )?", "$1")
        .replace(", ]", "]")
        .replaceAll("(?m)^cutters:\\n(?=\\S)", "");
  }
}
