package underhold.shell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.shell.core.autoconfigure.JLineShellAutoConfiguration;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.config.UserConfigPathProvider;
import org.springframework.shell.jline.CommandCompleter;
import org.springframework.shell.jline.CommandHighlighter;
import org.springframework.shell.jline.PromptProvider;
import underhold.report.Look;

/** The interactive shell: Spring Shell's terminal, line reader and history, our commands. */
@SpringBootConfiguration(proxyBeanMethods = false)
@ImportAutoConfiguration(JLineShellAutoConfiguration.class)
class ShellConfiguration {
  private static final Map<String, Object> SETTINGS =
      Map.of(
          "spring.main.lazy-initialization", "true",
          "logging.level.root", "OFF",
          "spring.shell.history.name", ShellHistory.NAME,
          "spring.shell.command.history.enabled", "false",
          "spring.shell.interactive.enabled", "false");

  /** Starts the shell and returns when the user leaves. */
  static int start() {
    System.setProperty("org.springframework.boot.logging.LoggingSystem", "none");
    Path history = ShellHistory.folder(System.getenv()).resolve(ShellHistory.NAME);
    Optional<String> fault = ShellHistory.fault(history);
    try (ConfigurableApplicationContext context =
        new SpringApplicationBuilder(ShellConfiguration.class)
            .web(WebApplicationType.NONE)
            .bannerMode(Banner.Mode.OFF)
            .logStartupInfo(false)
            .properties(SETTINGS)
            .properties("spring.shell.history.enabled=" + fault.isEmpty())
            .run()) {
      fault.ifPresent(context.getBean(Session.class).output()::say);
      context.getBean(ShellLoop.class).run(context.getBean(Lines.class));
      return Exit.DONE;
    }
  }

  @Bean
  Session session(Terminal terminal) {
    return new Session(true, new TerminalLines(terminal), output(terminal));
  }

  private static Output output(Terminal terminal) {
    Look look = new Look(terminal.getWidth(), Console.colour(System.getenv()), terminal.encoding());
    PrintWriter writer = terminal.writer();
    return new Output(writer, writer, writer, look, false);
  }

  @Bean
  CommandRegistry commandRegistry(Session session) {
    return Commands.registry(session);
  }

  @Bean
  CommandCompleter commandCompleter(CommandRegistry registry) {
    return new WordCompleter(registry);
  }

  /** A line is shown as it is typed. */
  @Bean
  CommandHighlighter commandHighlighter(CommandRegistry registry) {
    return new CommandHighlighter(registry) {
      @Override
      public AttributedString highlight(LineReader reader, String buffer) {
        return new AttributedString(buffer);
      }
    };
  }

  @Bean
  PromptProvider promptProvider() {
    return () -> new AttributedString(ShellLoop.PROMPT);
  }

  @Bean
  UserConfigPathProvider userConfigPathProvider() {
    return () -> ShellHistory.folder(System.getenv());
  }

  @Bean
  ShellLoop shellLoop(CommandRegistry registry, Session session, Terminal terminal) {
    return new ShellLoop(new Dispatcher(registry, session, () -> output(terminal)), session);
  }

  @Bean
  Lines commandLines(LineReader reader, Terminal terminal) {
    reader.option(LineReader.Option.DISABLE_EVENT_EXPANSION, true);
    return (prompt, words) -> {
      try {
        return Optional.of(reader.readLine(prompt));
      } catch (EndOfFileException end) {
        return Optional.empty();
      } catch (UserInterruptException interrupt) {
        throw new Lines.Interrupted();
      }
    };
  }
}
