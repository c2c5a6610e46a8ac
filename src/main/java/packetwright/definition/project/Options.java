package packetwright.definition.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

/**
 * The named switches of a project, and what they took out of it.
 *
 * @param all in the order written
 * @param on those that are chosen
 * @param mentioned names that a row of {@code project.yaml} or {@code quiz.yaml} asks for
 * @param absent names that stand nowhere with these options, with what each waits for; a feature as
 *     {@code lid.notch}
 */
public record Options(
    List<Option> all, Set<String> on, Set<String> mentioned, Map<String, Condition> absent) {
  /** Of a project that has none. */
  public static final Options NONE = new Options(List.of(), Set.of(), Set.of(), Map.of());

  /** Keeps its own copies, in order. */
  public Options {
    all = List.copyOf(all);
    on = Collections.unmodifiableSet(new LinkedHashSet<>(on));
    mentioned = Set.copyOf(mentioned);
    absent = Collections.unmodifiableMap(new LinkedHashMap<>(absent));
  }

  /**
   * One switch.
   *
   * @param name as {@code if} and {@code unless} use it
   * @param about what it does
   * @param excludes options that cannot be on beside it
   * @param needs machines and tools that the shop must have
   */
  public record Option(
      Located<String> name,
      String about,
      List<Located<String>> excludes,
      List<Located<MachineKind>> needs) {
    /** Keeps its own copies. */
    public Option {
      excludes = List.copyOf(excludes);
      needs = List.copyOf(needs);
    }

    /** Whether this option or another says that they cannot both be on. */
    public boolean clashesWith(Option other) {
      return names(excludes).contains(other.name.value())
          || names(other.excludes).contains(name.value());
    }

    private static List<String> names(List<Located<String>> located) {
      return located.stream().map(Located::value).toList();
    }
  }

  /** Their names, in the order written. */
  public Set<String> names() {
    return namesOf(all);
  }

  private static Set<String> namesOf(List<Option> options) {
    return options.stream()
        .map(option -> option.name().value())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Those that are on, in the order written. */
  public List<Option> chosen() {
    return all.stream().filter(option -> on.contains(option.name().value())).toList();
  }

  /** Every set of options that can be on together in a shop; none at all comes first. */
  public List<Set<String>> combinations(Shop shop) {
    List<List<Option>> sets = new ArrayList<>(List.of(List.of()));
    for (Option option : all) {
      if (option.needs().stream().allMatch(machine -> shop.has(machine.value()))) {
        for (List<Option> set : List.copyOf(sets)) {
          if (set.stream().noneMatch(option::clashesWith)) {
            List<Option> more = new ArrayList<>(set);
            more.add(option);
            sets.add(more);
          }
        }
      }
    }
    return sets.stream().map(Options::namesOf).toList();
  }

  /** Whether a condition holds with no options that can be on together. */
  boolean isNever(Condition condition) {
    List<Option> needed =
        all.stream().filter(option -> condition.allOf().contains(option.name().value())).toList();
    return !Collections.disjoint(condition.allOf(), condition.noneOf())
        || needed.stream().anyMatch(one -> needed.stream().anyMatch(one::clashesWith));
  }

  /**
   * The same finding; but a name that an option took away is not misspelt, and the hint says so.
   *
   * @param line the line that the finding is in
   */
  public Finding explained(Finding finding, String line) {
    int from = finding.at().column() - 1;
    int to = from + finding.at().length();
    if (!finding.isError() || to > line.length()) {
      return finding;
    }
    // A piece is there when its part is; a substitution is all that was written.
    String name = line.substring(from, to).replaceFirst(" [0-9]+$|=.*$", "");
    Condition condition = absent.get(name);
    return condition == null
        ? finding
        : finding.hinting(
            "`" + name + "` stands only " + waitsFor(condition) + ": " + mend(condition, finding));
  }

  private static String waitsFor(Condition condition) {
    List<String> words = new ArrayList<>();
    condition.allOf().forEach(option -> words.add("with the option `" + option + "`"));
    condition.noneOf().forEach(option -> words.add("without the option `" + option + "`"));
    return String.join(" and ", words);
  }

  private static String mend(Condition condition, Finding finding) {
    String file = finding.at().file();
    if (file.startsWith("--")) {
      return "choose the options so, or leave it out";
    }
    boolean inSteps = file.endsWith(".md");
    List<String> words = new ArrayList<>();
    condition.allOf().forEach(o -> words.add(inSteps ? "### If " + o : "if: " + o));
    condition.noneOf().forEach(o -> words.add(inSteps ? "### Unless " + o : "unless: " + o));
    String list = "`" + String.join("` and `", words) + "`";
    return inSteps
        ? "write " + list + " above this"
        : "write " + list + " at this row too, and an alternative without it if one is needed";
  }
}
