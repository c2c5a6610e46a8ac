package packetwright.paper.packet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import packetwright.definition.shop.MachineKind;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/** What to look at before power goes on. */
record Looks(Naming naming) {
  /** On any machine of a kind; nothing for one that we say nothing of. */
  Phrase machine(MachineKind kind) {
    Words words = naming.words();
    String key = "packet.guard." + kind.word();
    return words.hasKey(key) ? words.say(key) : Naming.nothing();
  }

  /** The bound settings, then the controls, each once. */
  Phrase settings(List<OperationRun> runs) {
    Words words = naming.words();
    Set<Phrase> look = new LinkedHashSet<>();
    for (OperationRun run : runs) {
      for (Setting setting : run.settings()) {
        if (setting.kind() == Setting.Kind.BOUND) {
          look.add(
              words.say(
                  "packet.look.setting",
                  naming.setting(run, setting),
                  naming.exactly(setting.value())));
        }
      }
    }
    for (OperationRun run : runs) {
      run.operation().with().stream()
          .sorted()
          .map(c -> words.say("packet.control." + c.name().toLowerCase(Locale.ROOT)))
          .forEach(look::add);
    }
    return words.list(List.copyOf(look));
  }
}
