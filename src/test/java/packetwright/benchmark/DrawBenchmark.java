package packetwright.benchmark;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.Side;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.part.SampleParts;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * How long warm drawings take: all of a sample, and a part with many features, each beside the
 * first of its kind. It prints medians and asserts nothing; a time that a test could fail on would
 * depend on the machine. It is run like {@link CheckBenchmark}.
 */
public final class DrawBenchmark {
  private static final int WARM_UP = 8;
  private static final int RUNS = 11;
  private static final Words WORDS = Words.of("en");
  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);

  private final PrintStream out;

  private DrawBenchmark(PrintStream out) {
    this.out = out;
  }

  /** Runs all of it; there are no arguments. */
  public static void main(String[] arguments) {
    new DrawBenchmark(new PrintStream(System.out, true, StandardCharsets.UTF_8)).run();
  }

  private void run() {
    Map<String, Work> samples = new LinkedHashMap<>();
    for (String sample : ProjectFolder.samples()) {
      Lesson lesson = Lessons.workOut(ProjectFolder.sample(sample), Request.plain()).value();
      samples.put("all drawings of " + sample, () -> new Drawings(lesson, WORDS).all());
    }
    print(samples);
    Map<String, Work> parts = new LinkedHashMap<>();
    for (int features : new int[] {15, 30, 60}) {
      Part part = part(features);
      parts.put(
          "a part with " + features + " features",
          () -> PartSheet.draw(part, Phrase.of("poplar"), RULE, WORDS));
    }
    print(parts);
  }

  private void print(Map<String, Work> works) {
    double first = 0;
    for (Map.Entry<String, Work> work : works.entrySet()) {
      double time = median(work.getValue()) / 1e6;
      first = first == 0 ? time : first;
      out.printf(Locale.ROOT, "%-36s %9.1f ms %7.2f times%n", work.getKey(), time, time / first);
    }
  }

  private interface Work {
    Object result();
  }

  /** In nanoseconds. */
  private static long median(Work work) {
    for (int i = 0; i < WARM_UP; i++) {
      work.result();
    }
    long[] times = new long[RUNS];
    for (int i = 0; i < RUNS; i++) {
      long begin = System.nanoTime();
      work.result();
      times[i] = System.nanoTime() - begin;
    }
    Arrays.sort(times);
    return times[RUNS / 2];
  }

  /** Pockets and holes anywhere, over and into one another: the same each time. */
  private static Part part(int count) {
    Random random = new Random(count);
    Solid block = Solid.block(Length.ofInches(40), Length.ofInches(8), Length.ofInches(3, 2));
    List<Feature> features = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean isHole = i % 4 == 0;
      Removal removal = isHole ? hole(random) : pocket(random);
      features.add(
          new Feature(
              (isHole ? "hole_" : "pocket_") + i,
              isHole ? FeatureKind.HOLE : FeatureKind.GROOVE,
              isHole ? "through" : "along",
              Side.INSIDE,
              Side.LEFT,
              isHole ? Map.of("diameter", Length.ofInches(1, 2)) : Map.of(),
              List.of(removal)));
    }
    return SampleParts.part("piece", "Q", 1, block, features);
  }

  private static Length sixteenths(Random random, int least, int most) {
    return Length.ofInches(least + random.nextInt(most - least + 1), 16);
  }

  private static Removal hole(Random random) {
    Point centre = new Point(sixteenths(random, 16, 620), sixteenths(random, 16, 112), Length.ZERO);
    return new Removal.Bore(2, centre, Length.ofInches(3, 2), Length.ofInches(1, 2));
  }

  private static Removal pocket(Random random) {
    Length x = sixteenths(random, 16, 560);
    Length y = sixteenths(random, 8, 96);
    Length depth = sixteenths(random, 4, 16);
    return new Removal.Trough(
        new Box(
            new Point(x, y, Length.ofInches(3, 2).minus(depth)),
            new Point(
                x.plus(sixteenths(random, 8, 64)),
                y.plus(sixteenths(random, 4, 24)),
                Length.ofInches(3, 2))));
  }
}
