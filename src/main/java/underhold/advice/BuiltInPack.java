package underhold.advice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
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
  public static RuleEngine engine() {
    return new CompiledEngine(pack(), BuiltInPack::rules);
  }

  private static KieBase rules() {
    try {
      return Compiled.RULES.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the compiled rules do not load", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the loading of the compiled rules was interrupted", e);
    }
  }

  /** Begins to load the compiled rules beside whatever is done next: an engine is wanted soon. */
  public static void expectEngine() {
    Compiled.begin();
  }

  /** The compiled rules, loaded once by a thread of their own. */
  private static final class Compiled {
    private static final FutureTask<KieBase> RULES = new FutureTask<>(BuiltInPack::compiled);

    static {
      Thread thread = new Thread(RULES, "compiled rules");
      thread.setDaemon(true);
      thread.setContextClassLoader(BuiltInPack.class.getClassLoader());
      thread.start();
    }

    /** Loads this class, and so begins. */
    static void begin() {}
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
