package packetwright.text.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every key that the code says exists, and every phrase is said somewhere. */
class PhraseFileTest {
  private static final Path FILE =
      Path.of("src/main/resources/packetwright/text/words/phrases-en.properties");
  private static final List<Path> SOURCES =
      List.of(Path.of("src/main/java/packetwright"), Path.of("packet-templates"));

  /** A whole key as a literal argument: {@code say("a.b"}, {@code plain("a.b"}. */
  private static final Pattern SAID =
      Pattern.compile("\\b(?:say|plain)\\(\\s*\"([^\"]+)\"\\s*[,)]");

  private static final Pattern COUNTED = Pattern.compile("\\bcounted\\(\\s*\"([^\"]+)\"\\s*[,)]");

  /** Any literal that looks like a key or, ending with a dot, like the beginning of one. */
  private static final Pattern KEY = Pattern.compile("[\"']([a-z_]+\\.[a-z0-9_.]*)[\"']");

  @Test
  void everyKeySaidInCodeExists() throws IOException {
    Properties phrases = phrases();
    TreeSet<String> missing = new TreeSet<>();
    for (String source : sources()) {
      SAID.matcher(source).results().map(r -> r.group(1)).forEach(missing::add);
      COUNTED.matcher(source).results().map(r -> r.group(1) + ".one").forEach(missing::add);
      COUNTED.matcher(source).results().map(r -> r.group(1) + ".other").forEach(missing::add);
    }
    assertThat(missing).as("keys seen in code").contains("words.minus", "words.mixed");
    missing.removeAll(phrases.stringPropertyNames());
    assertThat(missing).isEmpty();
  }

  /** A key may be put together at run time: then code holds a literal that it begins with. */
  @Test
  void everyPhraseIsSaidSomewhere() throws IOException {
    TreeSet<String> known = new TreeSet<>();
    for (String source : sources()) {
      KEY.matcher(source).results().map(r -> r.group(1)).forEach(known::add);
    }
    List<String> orphans =
        phrases().stringPropertyNames().stream()
            .filter(key -> !isSaid(key, known))
            .sorted()
            .toList();
    assertThat(orphans).isEmpty();
  }

  private static boolean isSaid(String key, Set<String> known) {
    return known.contains(key)
        || known.stream().anyMatch(k -> key.startsWith(k.endsWith(".") ? k : k + "."));
  }

  @Test
  void noKeyIsWrittenTwice() throws IOException {
    List<String> keys =
        Files.readAllLines(FILE).stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .map(line -> line.split("[=:\\s]", 2)[0])
            .toList();
    assertThat(keys).doesNotHaveDuplicates();
  }

  private static Properties phrases() throws IOException {
    Properties phrases = new Properties();
    try (Reader reader = Files.newBufferedReader(FILE)) {
      phrases.load(reader);
    }
    return phrases;
  }

  private static List<String> sources() throws IOException {
    List<String> sources = new ArrayList<>();
    for (Path root : SOURCES) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
          if (file.toString().matches(".*\\.(java|ftlh?)")) {
            sources.add(Files.readString(file));
          }
        }
      }
    }
    return sources;
  }
}
