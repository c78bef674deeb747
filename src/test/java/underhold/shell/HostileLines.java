package underhold.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import underhold.hostile.HostileWords;

/**
 * Command lines with nonsense in every place, made out of sound ones. Whatever a line makes is made
 * in one folder.
 */
final class HostileLines {
  /** Sound lines; {@code @} stands for the folder. The long reckonings are kept small. */
  private static final List<String> SOUND =
      List.of(
          "help",
          "help site set",
          "version --json",
          "facts",
          "facts loadPattern",
          "rules list",
          "rules show PIT-26",
          "rules find water",
          "rules limits",
          "rules differences --rules @/pack",
          "rules use @/pack",
          "site check @/one.site.json",
          "site show @/one.site.json",
          "site schema",
          "site new @/new.site.json --name X",
          "site set lineLoad=200_kN/m --site @/one.site.json",
          "site set gapToExcavation=0.3_m worstSoil=stiff-clay --zone wall --site @/one.site.json",
          "site clear lineLoad --site @/one.site.json",
          "site zone column --site @/one.site.json",
          "site unzone column --site @/one.site.json",
          "site open @/one.site.json",
          "site save @/saved.site.json",
          "site drop",
          "interview @/one.site.json",
          "interview @/two.site.json",
          "advise @/one.site.json",
          "advise @/one.site.json --json --no-colour",
          "advise @/one.site.json --zone wall --limit needle-span=5_m",
          "advise @/one.site.json --save @/new.advice.json",
          "advise @/one.site.json --rules @/pack",
          "why pits @/one.site.json",
          "why-not needles @/one.site.json",
          "compare pits needles @/one.site.json",
          "trace @/one.site.json",
          "what-if gapToExcavation=3_m --site @/one.site.json",
          "size pits @/one.site.json --set widest-pit=1_m --units US",
          "stages @/one.site.json",
          "recheck @/one.advice.json",
          "review start @/one.advice.json --by Ines --role checker",
          "review targets @/one.review.json pits",
          "review comment @/one.review.json some text --on whole --by Ines",
          "review query @/one.review.json some text --by Ines",
          "review answer @/one.review.json 3 some text --by Ines",
          "review override @/one.review.json wall/ranking needles --why because --by Ines",
          "review withdraw @/one.review.json 2 --why because --by Ines",
          "review sign @/one.review.json checked --by Ines",
          "review reopen @/one.review.json --why because --by Ines",
          "review status @/one.review.json --head 0123456789ab",
          "review show @/one.review.json",
          "class list @/cases",
          "class rubric",
          "class start @/new.class.json @/cases --students A,B",
          "class show @/one.class.json",
          "class sheet @/one.class.json --by A",
          "class scores @/one.class.json --csv",
          "class reveal @/one.class.json",
          "class ask @/one.class.json footingWidth --by A",
          "class answer @/one.class.json @/one.answers.json",
          "class sheet @/cases/larch-terrace.case.json --out @/made/sheet.md",
          "class key @/cases/larch-terrace.case.json --out @/made/key.md",
          "screen --template",
          "screen @/one.zones.csv --out @/made/t.csv --draws 0",
          "screen @/one.zones.csv @/one.site.json --out @/made/t.json --draws 0 --seed 7 --anew",
          "screen @ --out @/made/u.csv --draws 0 --rules @/pack");

  /** Lines that reckon long when they are sound; something in them is always unsound. */
  private static final List<String> NEVER_SOUND =
      List.of(
          "ask-next @/one.site.json --zone ?",
          "turning-points @/one.site.json --for ?",
          "firmness @/one.site.json --draws ?",
          "rules audit --section ?",
          "rules audit --tries ?",
          "report @/one.site.json --for ?",
          "report @/one.site.json --out @/?",
          "class mark @/one.class.json --by ?",
          "class make --leader ? --level hard --seed 7 --out @/made/m.case.json",
          "class make --leader needles --teaches ? --seed 7 --out @/made/m.case.json",
          "class make --leader needles --seed ? --out @/made/?");

  /** Where one of these stands a word may become the name of a new file. */
  private static final Set<String> WRITING =
      Set.of("new", "save", "start", "interview", "--save", "--out", "report", "reveal");

  /** Words of a command; whatever stands behind them may be a name. */
  private static final int LONGEST_COMMAND = 2;

  private final Random random;
  private final Path folder;
  private final List<String> vocabulary = new ArrayList<>();

  HostileLines(Random random, Path folder) {
    this.random = random;
    this.folder = folder;
    SOUND.forEach(line -> vocabulary.addAll(words(line)));
    vocabulary.removeIf(word -> WRITING.contains(word) || word.equals("audit"));
  }

  List<List<String>> sound() {
    return SOUND.stream().map(this::words).toList();
  }

  private List<String> words(String line) {
    return Arrays.stream(line.split(" ", -1))
        .map(word -> word.replace('_', ' ').replace("@", folder.toString()))
        .toList();
  }

  /** The next line. */
  List<String> next() {
    if (random.nextInt(8) == 0) {
      return tame(
          words(one(NEVER_SOUND)).stream()
              .map(word -> word.replace("?", HostileWords.text(random) + "?"))
              .toList());
    }
    List<String> line = new ArrayList<>(words(one(SOUND)));
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(line.size());
      switch (random.nextInt(7)) {
        case 0 -> line.set(at, HostileWords.text(random));
        case 1 -> line.add(at, HostileWords.text(random));
        case 2 -> line.add(line.size(), one(vocabulary));
        case 3 -> line.set(at, inside(line.get(at)));
        case 4 -> line.set(at, line.get(at).toUpperCase(Locale.ROOT));
        case 5 -> line.add(at, line.get(random.nextInt(line.size())));
        default -> {
          if (line.size() > 1) {
            line.remove(at);
          }
        }
      }
    }
    return tame(line);
  }

  private String inside(String word) {
    int at = random.nextInt(word.length() + 1);
    return word.substring(0, at) + HostileWords.text(random) + word.substring(at);
  }

  /** New files come to be in our folder, whatever they are called. */
  private List<String> tame(List<String> line) {
    boolean writing = line.stream().map(word -> word.split("=", -1)[0]).anyMatch(WRITING::contains);
    if (!writing) {
      return line;
    }
    List<String> tame = new ArrayList<>();
    for (String word : line) {
      boolean command = tame.size() < LONGEST_COMMAND && (WRITING.contains(word) || plain(word));
      tame.add(command || word.startsWith(folder.toString()) ? word : tame(word));
    }
    return tame;
  }

  /** An option stays one. */
  private String tame(String word) {
    int equals = word.indexOf('=');
    if (!word.startsWith("-")) {
      return inOurs(word, 0);
    }
    return equals < 0 ? word : word.substring(0, equals + 1) + inOurs(word, equals + 1);
  }

  private boolean plain(String word) {
    return Set.of("site", "advise", "class", "review", "screen", "sheet", "key", "make")
        .contains(word);
  }

  private String inOurs(String word, int from) {
    return folder + "/made/" + word.substring(from).replace("..", "").replace("/", "-");
  }

  private String one(List<String> all) {
    return all.get(random.nextInt(all.size()));
  }
}
