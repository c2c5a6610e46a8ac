package packetwright.benchmark;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;

/**
 * How long a warm {@code check} takes: of each sample, and of a generated project with many parts
 * and steps. It prints medians and asserts nothing; a time that a test could fail on would depend
 * on the machine. {@code DEVELOPERS.md} says how to run it.
 */
public final class CheckBenchmark {
  private static final int WARM_UP = 6;
  private static final int RUNS = 11;

  private final PrintStream out;

  private CheckBenchmark(PrintStream out) {
    this.out = out;
  }

  /** Runs all of it; there are no arguments. */
  public static void main(String[] arguments) {
    CheckBenchmark benchmark =
        new CheckBenchmark(new PrintStream(System.out, true, StandardCharsets.UTF_8));
    benchmark.run();
  }

  private void run() {
    out.printf(
        Locale.ROOT,
        "%-26s %6s %6s %12s %12s %14s%n",
        "project",
        "steps",
        "parts",
        "lesson, ms",
        "check, ms",
        "us/operation");
    for (String sample : ProjectFolder.samples()) {
      measure(sample, ProjectFolder.sample(sample));
    }
    ManyParts large = new ManyParts(40, 200);
    measure("40 parts, 200 steps", large.folder());
    measureRefused();
  }

  private void measure(String name, ProjectFolder folder) {
    Checked<Lesson> worked = Lessons.workOut(folder, Request.plain());
    if (!worked.isGood()) {
      throw new IllegalStateException(name + " does not check: " + worked.findings());
    }
    Lesson lesson = worked.value();
    long workOut = median(() -> Lessons.workOut(folder, Request.plain()).value());
    long check =
        median(
            () -> {
              Lesson again = Lessons.workOut(folder, Request.plain()).value();
              Publisher.Output output = new Publisher.Output(Paper.LETTER, "A");
              return new Publisher(folder, Request.plain(), output).check(again);
            });
    int operations = lesson.run().operations().size();
    out.printf(
        Locale.ROOT,
        "%-26s %6d %6d %12.1f %12.1f %14.1f%n",
        name,
        lesson.procedure().steps().size(),
        lesson.parts().stream().mapToInt(part -> part.count()).sum(),
        workOut / 1e6,
        check / 1e6,
        workOut / 1e3 / operations);
  }

  /** The search for ways out, beside the same project with nothing refused. */
  private void measureRefused() {
    ProjectFolder plain = ProjectFolder.sample("sliding-lid-box");
    String project = plain.text("project.yaml").value();
    String without = project.replace(", sections: {front_end: front_section}", "");
    ProjectFolder refused = plain.with("project.yaml", without);
    if (Lessons.workOut(refused, Request.plain()).isGood()) {
      throw new IllegalStateException("nothing is refused");
    }
    long good = median(() -> Lessons.workOut(plain, Request.plain()));
    long searched = median(() -> Lessons.workOut(refused, Request.plain()));
    out.printf(
        Locale.ROOT,
        "%-26s %.1f ms, with nothing refused %.1f ms: %.2f times%n",
        "refused, with ways out",
        searched / 1e6,
        good / 1e6,
        (double) searched / good);
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
}
