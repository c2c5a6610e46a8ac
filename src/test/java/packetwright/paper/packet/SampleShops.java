package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.ShopReader;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;

/** Every sample in its own shop and in the built-in ones, with every set of options. */
public final class SampleShops {
  private static final String SHOP = "other-shop.yaml";
  private static final Map<String, List<Case>> KNOWN = new ConcurrentHashMap<>();

  private SampleShops() {}

  /**
   * One of them, worked out.
   *
   * @param name for reports
   * @param lesson without findings
   */
  public record Case(String name, Lesson lesson) {
    /** Both documents. */
    public Packets.Documents documents() {
      return Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
    }

    @Override
    public String toString() {
      return name;
    }
  }

  /** All cases of a sample; each proves, so that none is passed over. Worked out once. */
  public static List<Case> of(String sample) {
    return KNOWN.computeIfAbsent(sample, SampleShops::workedOut);
  }

  private static List<Case> workedOut(String sample) {
    ProjectFolder own = ProjectFolder.sample(sample);
    List<Case> cases = new ArrayList<>(of(sample + " in its own shop", own, ""));
    for (String profile : List.of(ShopReader.BUILT_IN, ShopReader.HAND_TOOLS)) {
      ProjectFolder folder = own.with(SHOP, ShopReader.profile(profile));
      cases.addAll(of(sample + " in " + profile, folder, SHOP));
    }
    return cases;
  }

  private static List<Case> of(String name, ProjectFolder folder, String shop) {
    Request plain = new Request(shop, List.of(), Set.of(), "2027 spring");
    List<Case> cases = new ArrayList<>();
    for (Request request : Lessons.combinations(folder, plain)) {
      Checked<Lesson> lesson = Lessons.workOut(folder, request);
      String which = name + " " + request.options();
      assertThat(lesson.findings()).as(which).isEmpty();
      cases.add(new Case(which, lesson.value()));
    }
    return cases;
  }
}
