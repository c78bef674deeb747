package underhold.classroom.making;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.Level;
import underhold.consult.Consultant;

class ExploreTest {
  @Test
  void explore() throws Exception {
    CaseMaker maker = new CaseMaker(Consultant.standard());
    Path out = Path.of("/tmp/made");
    Files.createDirectories(out);
    int tries = Integer.getInteger("tries", 1000);
    String only = System.getProperty("only", "");
    for (SupportOption option : SupportOption.values()) {
      for (Theme theme : Theme.values()) {
        for (Level level : Level.values()) {
          Wish wish = new Wish(option, level, theme, Integer.getInteger("seed", 1));
          if (!(option.id() + " " + theme.word() + " " + level.word()).matches(".*" + only + ".*"))
            continue;
          long t = System.nanoTime();
          Making making = maker.make(wish, tries);
          long ms = (System.nanoTime() - t) / 1000000;
          if (making instanceof Making.Found f) {
            System.out.println(
                "FOUND "
                    + option.id()
                    + " "
                    + theme.word()
                    + " "
                    + level.word()
                    + " tries "
                    + f.tries()
                    + " ms "
                    + ms);
            Files.writeString(
                out.resolve(
                    option.id()
                        + "_"
                        + theme.word()
                        + "_"
                        + level.word()
                        + "_"
                        + wish.seed()
                        + ".case.json"),
                CaseFile.FILES.text(f.file()));
          } else if (making instanceof Making.Nothing n) {
            System.out.println(
                "NONE  "
                    + option.id()
                    + " "
                    + theme.word()
                    + " "
                    + level.word()
                    + " ms "
                    + ms
                    + " "
                    + String.join(" ", n.says()));
          }
        }
      }
    }
  }
}
