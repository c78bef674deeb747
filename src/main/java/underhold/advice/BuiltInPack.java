package underhold.advice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import underhold.site.FactDictionary;

/** The rule pack inside the program: its texts, and the rules the build compiled from them. */
public final class BuiltInPack {
  private static final String FOLDER = "/underhold/rules/";
  private static final String COMPILED = "/META-INF/kie/underhold/underhold/drools-model";

  private BuiltInPack() {}

  /** The rules as text. */
  public static RulePack pack() {
    return Holder.PACK;
  }

  /** Whether a pack is this one, read from the program itself. */
  public static boolean is(RulePack pack) {
    return pack == pack();
  }

  /** An engine with the compiled rules, which it loads when the first are to fire. */
  public static RuleEngine compiledEngine() {
    return new CompiledEngine(pack(), () -> Compiled.RULES);
  }

  /** The compiled rules, loaded once, when an engine fires the first. */
  private static final class Compiled {
    private static final KieBase RULES = compiled();
  }

  /** The text of a file of the pack. */
  static Optional<String> text(String name) {
    try (InputStream in = BuiltInPack.class.getResourceAsStream(FOLDER + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static KieBase compiled() {
    List<Model> models = new ArrayList<>();
    try (InputStream in = BuiltInPack.class.getResourceAsStream(COMPILED)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its compiled rules");
      }
      for (String line :
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .map(String::strip)
              .toList()) {
        if (!line.isEmpty() && line.indexOf(':') < 0) {
          models.add(
              Class.forName(line).asSubclass(Model.class).getDeclaredConstructor().newInstance());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the compiled rules do not load", e);
    }
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  private static final class Holder {
    private static final RulePack PACK = load();

    private static RulePack load() {
      RulePackReader reader = new RulePackReader(FactDictionary.standard());
      return reader
          .read(BuiltInPack::text)
          .orElseThrow(
              () ->
                  new IllegalStateException(
                      "the built-in rules are not in order: "
                          + reader.problems().stream().map(PackProblem::text).toList()));
    }
  }
}
