package packetwright.paper.publish;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Html;
import packetwright.paper.html.Paper;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.packet.Packets;
import packetwright.paper.pdf.PageRefused;
import packetwright.paper.pdf.PdfInfo;
import packetwright.paper.pdf.PdfWriter;
import packetwright.paper.quiz.Quiz;
import packetwright.paper.quiz.QuizInput;
import packetwright.paper.quiz.QuizMaker;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.words.Words;

/** Makes the files of a packet from a lesson. The same inputs give the same bytes. */
public final class Publisher {
  /** The date that every file bears: dates come from the inputs, and none of them has one yet. */
  private static final LocalDate UNDATED = LocalDate.of(2000, 1, 1);

  private static final String TEMPLATES = "packet-templates/";

  private final ProjectFolder folder;
  private final Request request;
  private final Output output;
  private final Words words = Words.of("en");

  /** For one project and what its instructor asked for. */
  public Publisher(ProjectFolder folder, Request request, Output output) {
    this.folder = folder;
    this.request = request;
    this.output = output;
  }

  /**
   * How the packet is printed.
   *
   * @param paper size of paper
   * @param form label of the quiz's form
   */
  public record Output(Paper paper, String form) {}

  /**
   * Every file of the output folder by its path, or what stands in the way.
   *
   * @param progress is told what is being done
   */
  public Checked<Map<String, byte[]>> files(Lesson lesson, Consumer<String> progress) {
    Findings findings = new Findings();
    progress.accept("writing the quiz");
    Pages pages = pages(lesson, findings);
    if (pages == null) {
      return new Checked<>(null, explained(lesson, findings));
    }
    Map<String, byte[]> files = new LinkedHashMap<>();
    PdfWriter writer = new PdfWriter();
    progress.accept("laying out the student packet");
    try {
      files.put("student-packet.pdf", pdf(writer, pages.student()));
      progress.accept("laying out the answer key");
      files.put("answer-key.pdf", pdf(writer, pages.key()));
    } catch (PageRefused refused) {
      Finding finding = Refusals.explain(refused, folder, pages.templates());
      if (finding == null) {
        throw refused;
      }
      findings.add(finding);
      return findings.checked(null);
    }
    files.put("sizes.json", LessonJson.of(lesson).getBytes(UTF_8));
    Map<String, byte[]> inputs = inputs();
    inputs.forEach((file, bytes) -> files.put("inputs/" + file, bytes));
    files.put("manifest.json", Manifest.of(lesson, inputs, request, files).getBytes(UTF_8));
    return findings.checked(files);
  }

  /** What is found wrong on the way to the pages, without laying them out. */
  public List<Finding> check(Lesson lesson) {
    Findings findings = new Findings();
    pages(lesson, findings);
    return explained(lesson, findings);
  }

  /** With hints that tell of names that an option took away. */
  private List<Finding> explained(Lesson lesson, Findings findings) {
    return findings.list().stream()
        .map(f -> lesson.project().options().explained(f, folder.line(f.at())))
        .toList();
  }

  /** Both documents, ready to be laid out, and the file names of the project's own templates. */
  private record Pages(Html student, Html key, Set<String> templates) {}

  private @Nullable Pages pages(Lesson lesson, Findings findings) {
    Quiz quiz = findings.take(quiz(lesson));
    Packets.Documents documents = documents(lesson, quiz, findings);
    if (documents == null) {
      return null;
    }
    Map<String, String> own = overrides(findings);
    TemplateFiller filler = new TemplateFiller(words, own);
    Html student = findings.take(filler.student(documents.student(), output.paper()));
    Html key = findings.take(filler.key(documents.key(), output.paper()));
    if (student == null || key == null) {
      return null;
    }
    Finding unprintable = Refusals.unprintable(key, folder, request);
    if (unprintable == null) {
      unprintable = Refusals.unprintable(student, folder, request);
    }
    if (unprintable != null) {
      findings.add(unprintable);
      return null;
    }
    return new Pages(student, key, own.keySet());
  }

  /** The project's own templates and style sheets, by file name, which stand in for ours. */
  private Map<String, String> overrides(Findings findings) {
    Map<String, String> overrides = new LinkedHashMap<>();
    for (String file : folder.files()) {
      if (file.startsWith(TEMPLATES)) {
        String text = findings.take(folder.text(file));
        if (text != null) {
          overrides.put(file.substring(TEMPLATES.length()), text);
        }
      }
    }
    return overrides;
  }

  /**
   * What the packet is made from, under names that serve again: a shop profile from elsewhere takes
   * the place of the project's own.
   */
  private SortedMap<String, byte[]> inputs() {
    SortedMap<String, byte[]> inputs = new TreeMap<>();
    for (String file : folder.files()) {
      if (!file.equals(Lessons.SET) && !file.equals(request.shopFile())) {
        inputs.put(file, folder.bytes(file));
      }
    }
    if (!request.shopFile().isEmpty()) {
      inputs.put("shop.yaml", folder.bytes(request.shopFile()));
    }
    return inputs;
  }

  private Checked<Quiz> quiz(Lesson lesson) {
    return QuizMaker.make(
        new QuizInput(
            lesson.project().id(),
            lesson.project().rule(),
            lesson.choices().term(),
            output.form(),
            lesson.project().quiz().questions(),
            lesson.sizes(),
            lesson.project().givens(),
            words));
  }

  private Packets.@Nullable Documents documents(
      Lesson lesson, @Nullable Quiz quiz, Findings findings) {
    return quiz == null ? null : findings.take(Packets.of(lesson, quiz, words));
  }

  private byte[] pdf(PdfWriter writer, Html html) {
    long id = ByteBuffer.wrap(Manifest.digest(html.text().getBytes(UTF_8))).getLong();
    return writer.write(html.text(), html.sheets(), new PdfInfo(UNDATED, id));
  }
}
