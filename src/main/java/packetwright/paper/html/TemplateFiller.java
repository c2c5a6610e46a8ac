package packetwright.paper.html;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StringTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.SimpleHash;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import packetwright.paper.packet.AnswerKey;
import packetwright.paper.packet.StudentPacket;
import packetwright.text.words.Words;

/**
 * Fills the templates of {@code packet-templates/}, which stand on the class path and may be
 * overridden file by file. Templates see plain data and can neither call code nor read a file.
 */
public final class TemplateFiller {
  private final Configuration configuration;
  private final Words words;

  /**
   * @param words language of what the templates themselves say
   * @param overrides texts of a project's own templates and style sheets, by file name
   */
  public TemplateFiller(Words words, Map<String, String> overrides) {
    this.words = words;
    this.configuration = configuration(overrides);
  }

  /** The student packet. */
  public Html student(StudentPacket packet, Paper paper) {
    return fill("student-packet.ftlh", packet, paper);
  }

  /** The answer key. */
  public Html key(AnswerKey key, Paper paper) {
    return fill("answer-key.ftlh", key, paper);
  }

  private Html fill(String template, Record document, Paper paper) {
    Models models = new Models(words);
    SimpleHash root = new SimpleHash(models);
    root.put("document", document);
    root.put("words", new Models.Headings(words));
    root.put("language", new SimpleScalar(words.language()));
    root.put("paper", new SimpleScalar(paper.word()));
    StringWriter out = new StringWriter();
    try {
      configuration.getTemplate(template).process(root, out, models);
    } catch (TemplateException | IOException e) {
      throw new IllegalStateException("template " + template + ": " + e.getMessage(), e);
    }
    return new Html(out.toString(), models.sheets());
  }

  private static Configuration configuration(Map<String, String> overrides) {
    StringTemplateLoader own = new StringTemplateLoader();
    overrides.forEach((name, text) -> own.putTemplate(name, text, 0));
    Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(
        new MultiTemplateLoader(
            new TemplateLoader[] {
              own, new ClassTemplateLoader(TemplateFiller.class, "/packet-templates")
            }));
    configuration.setLocalizedLookup(false);
    configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    configuration.setDefaultEncoding("UTF-8");
    configuration.setLocale(Locale.ROOT);
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setNumberFormat("computer");
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    return configuration;
  }
}
