package packetwright.text.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Figure;

/** Every phrase that we print, in one language, by key. */
public final class Words {
  private static final Pattern TAG = Pattern.compile("[A-Za-z0-9-]{1,35}");

  private final String language;
  private final Properties phrases;

  private Words(String language, Properties phrases) {
    this.language = language;
    this.phrases = phrases;
  }

  /** The phrases of a language that we have; {@link #has} tells which. */
  public static Words of(String languageTag) {
    try (InputStream in = open(languageTag)) {
      if (in == null) {
        throw new IllegalArgumentException("no phrases in language " + languageTag);
      }
      Properties phrases = new Properties();
      phrases.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return new Words(languageTag, phrases);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether there is a phrase file for a language, {@code en} for one. */
  public static boolean has(String languageTag) {
    try (InputStream in = open(languageTag)) {
      return in != null;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static @Nullable InputStream open(String tag) {
    return TAG.matcher(tag).matches()
        ? Words.class.getResourceAsStream("phrases-" + tag + ".properties")
        : null;
  }

  /** The language's tag, as documents state it. */
  public String language() {
    return language;
  }

  /**
   * A phrase filled in: {@code {0}} and so on become the arguments, each a text, a whole number, a
   * figure or a phrase; {@code **bold**} and {@code *italic*} of the phrase stand out, stars in
   * arguments are only stars.
   */
  public Phrase say(String key, Object... arguments) {
    return new Template(key, template(key)).fill(arguments);
  }

  /** The same as text, figures as {@code 4 1/2 in}. */
  public String plain(String key, Object... arguments) {
    return plain(say(key, arguments));
  }

  /** The phrase {@code key.one} or {@code key.other}; the count is {@code {0}}. */
  public Phrase counted(String key, long count, Object... more) {
    Object[] arguments = new Object[more.length + 1];
    arguments[0] = count;
    System.arraycopy(more, 0, arguments, 1, more.length);
    return say(key + (count == 1 ? ".one" : ".other"), arguments);
  }

  /** Items in a row: {@code A, B and C}. */
  public Phrase list(List<Phrase> items) {
    if (items.isEmpty()) {
      return new Phrase(List.of());
    }
    Phrase row = items.get(0);
    for (int i = 1; i < items.size(); i++) {
      row = say(i < items.size() - 1 ? "words.list.more" : "words.list.last", row, items.get(i));
    }
    return row;
  }

  /** A figure as text: {@code 4 23/32 in full}. */
  public String plain(Figure figure) {
    return graded("words.printed", figure, figure.toString());
  }

  /** A phrase as text, without emphasis. */
  public String plain(Phrase phrase) {
    return Reading.of(phrase, this::plain);
  }

  /** A figure as it is read aloud: {@code 4 and 23 thirty-seconds inches, full}. */
  public String aloud(Figure figure) {
    return graded("words.aloud", figure, new Aloud(this).read(figure));
  }

  /** A phrase as it is read aloud. */
  public String aloud(Phrase phrase) {
    return Reading.of(phrase, this::aloud);
  }

  private String graded(String key, Figure figure, String number) {
    return figure.grade() == Figure.Grade.EXACT
        ? number
        : plain(key + "." + figure.grade().name().toLowerCase(Locale.ROOT), number);
  }

  /** Whether there is such a phrase. */
  public boolean hasKey(String key) {
    return phrases.getProperty(key) != null;
  }

  private String template(String key) {
    String template = phrases.getProperty(key);
    if (template == null) {
      throw new IllegalArgumentException("no phrase " + key + " in language " + language);
    }
    return template;
  }
}
