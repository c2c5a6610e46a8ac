package packetwright.paper.publish;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
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
    Quiz quiz = findings.take(quiz(lesson));
    Packets.Documents documents = documents(lesson, quiz, findings);
    if (documents == null) {
      return findings.checked(null);
    }
    Map<String, byte[]> files = new LinkedHashMap<>();
    Map<String, String> own = overrides(findings);
    TemplateFiller filler = new TemplateFiller(words, own);
    Html student = findings.take(filler.student(documents.student(), output.paper()));
    Html key = findings.take(filler.key(documents.key(), output.paper()));
    if (student == null || key == null) {
      return findings.checked(null);
    }
    PdfWriter writer = new PdfWriter();
    progress.accept("laying out the student packet");
    try {
      files.put("student-packet.pdf", pdf(writer, student));
      progress.accept("laying out the answer key");
      files.put("answer-key.pdf", pdf(writer, key));
    } catch (PageRefused refused) {
      Finding finding = Refusals.explain(refused, folder, own.keySet());
      if (finding == null) {
        throw refused;
      }
      findings.add(finding);
      return findings.checked(null);
    }
    files.put("sizes.json", LessonJson.of(lesson).getBytes(UTF_8));
    for (String file : folder.files()) {
      if (!file.equals(Lessons.SET)) {
        files.put("inputs/" + inputName(file), folder.bytes(file));
      }
    }
    files.put("manifest.json", Manifest.of(lesson, folder, request, files).getBytes(UTF_8));
    return findings.checked(files);
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

  /** A shop profile from elsewhere is kept as the project's own, so that it serves again. */
  private String inputName(String file) {
    return file.equals(request.shopFile()) ? "shop.yaml" : file;
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
