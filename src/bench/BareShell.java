package bare;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.shell.core.NonInteractiveShellRunner;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.DefaultCommandParser;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.EnableCommand;

/** The least program on Spring Shell: one command that prints one line. What ours is measured by. */
@SpringBootApplication
@EnableCommand(BareShell.class)
public class BareShell {
  public static void main(String[] args) throws Exception {
    try (ConfigurableApplicationContext context = SpringApplication.run(BareShell.class, args)) {
      CommandRegistry registry = context.getBean(CommandRegistry.class);
      new NonInteractiveShellRunner(new DefaultCommandParser(registry), registry).run(args);
    }
  }

  /** Prints the line. */
  @Command(name = "hello", description = "prints one line")
  public void hello() {
    System.out.println("hello");
  }
}
