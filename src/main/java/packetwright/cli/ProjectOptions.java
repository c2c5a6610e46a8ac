package packetwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.ShopReader;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.NearMiss;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The arguments that say which project is meant, and what this term changes in it. */
final class ProjectOptions {
  /** A shop profile is a page of text; anything longer is not one. */
  private static final int MOST_SHOP_BYTES = 1 << 20;

  @Parameters(
      index = "0",
      paramLabel = "PROJECT",
      description = "A project folder, or the name of a sample.")
  private String project = "";

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "Use this value for a given, such as board_width=5-1/2.")
  private List<String> set = new ArrayList<>();

  @Option(
      names = "--option",
      paramLabel = "NAME",
      description = "Switch on an option of the project.")
  private List<String> options = new ArrayList<>();

  @Option(
      names = "--shop",
      paramLabel = "FILE|NAME",
      description = "The shop profile to use: a file, or built-in or hand-tools.")
  private @Nullable Path shop;

  @Option(
      names = "--term",
      paramLabel = "TEXT",
      description = "Label of this run, such as \"2027 spring\".")
  private String term = "";

  /** What the instructor asks for. */
  Request request() {
    return new Request(shopName(), set, new LinkedHashSet<>(options), term);
  }

  /** As typed, but never like the name of a file in the project. */
  private String shopName() {
    Path file = shop;
    if (file == null) {
      return "";
    }
    String name = file.toString();
    return file.isAbsolute() || name.startsWith(".") ? name : "./" + name;
  }

  /**
   * The project's files, with the shop profile and the text of {@code --set} under the names that
   * findings use for them.
   *
   * @throws IOException when a folder or file named on the command line cannot be read
   */
  Checked<ProjectFolder> folder() throws IOException {
    Path path = Path.of(project);
    Checked<ProjectFolder> folder;
    if (Files.isDirectory(path)) {
      folder = ProjectFolder.read(path);
    } else if (ProjectFolder.samples().contains(project)) {
      folder = Checked.of(ProjectFolder.sample(project));
    } else {
      String hint = NearMiss.hint(project, ProjectFolder.samples());
      throw new UnreadableException(
          "`"
              + project
              + "` is neither a folder nor a sample"
              + (hint.isEmpty() ? "" : "; " + hint));
    }
    String shopText = shop == null ? "" : readShop(shop);
    return folder.map(
        files -> {
          ProjectFolder more =
              set.isEmpty() ? files : files.with(Lessons.SET, String.join("\n", set));
          return shop == null ? more : more.with(shopName(), shopText);
        });
  }

  /** The text of a file, or of the profile of that name where there is no such file. */
  private static String readShop(Path shop) throws IOException {
    String name = shop.toString();
    if (!Files.exists(shop) && ShopReader.profiles().contains(name)) {
      return ShopReader.profile(name);
    }
    if (!Files.exists(shop)) {
      String hint = NearMiss.hint(name, ShopReader.profiles());
      throw new UnreadableException(
          "`"
              + name
              + "` is neither a file nor one of the shop profiles "
              + String.join(", ", ShopReader.profiles())
              + (hint.isEmpty() ? "" : "; " + hint));
    }
    if (!Files.isRegularFile(shop) || Files.size(shop) > MOST_SHOP_BYTES) {
      throw new UnreadableException("`" + shop + "` is no shop profile that can be read");
    }
    return new String(Files.readAllBytes(shop), StandardCharsets.UTF_8);
  }
}
