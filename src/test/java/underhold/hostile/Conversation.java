package underhold.hostile;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An interview with the whole program, through pipes or at a terminal, which {@code script} makes.
 */
final class Conversation {
  private static final long MOST_WAITED = TimeUnit.SECONDS.toNanos(600);
  private static final long HANG_UP_SECONDS = 600;
  private static final String NOBODY_KNOWS = "unknown";
  private static final Pattern QUESTION = Pattern.compile("Question (\\d+)");
  private static final Pattern PROMPT = Pattern.compile("\n>[^\n]*$");
  private static final Pattern OFFER = Pattern.compile("(?m)^ +1  (\\S+)");
  private static final String ESCAPES = "\u001b(\\[[0-9;?]*[A-Za-z]|[=>]|\\][^\u0007]*\u0007)|\r";

  private final Process process;
  private final boolean terminal;
  private int lastQuestion;

  private Conversation(Process process, boolean terminal) {
    this.process = process;
    this.terminal = terminal;
  }

  /** What the program shows on its error stream, where messages and questions go, goes to us. */
  static Conversation byPipe(List<String> program, Path file) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(line(program, file));
    return new Conversation(builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).start(), false);
  }

  static Conversation atTerminal(List<String> program, Path file) throws IOException {
    String line = line(program, file).stream().collect(Collectors.joining("' '", "exec '", "'"));
    ProcessBuilder builder = new ProcessBuilder("script", "-qefc", line, "/dev/null");
    builder.environment().put("TERM", "xterm");
    return new Conversation(builder.redirectErrorStream(true).start(), true);
  }

  private static List<String> line(List<String> program, Path file) {
    List<String> line = new ArrayList<>(program);
    line.addAll(List.of("interview", file.toString()));
    return line;
  }

  /** Answers questions and gives back the last answer after which another question came. */
  String converse(int answers, String name) throws IOException {
    OutputStream typed = process.getOutputStream();
    String sent = "";
    String kept = "";
    for (int i = 0; i < answers; i++) {
      String question = untilPrompt();
      Matcher number = QUESTION.matcher(question);
      if (!number.find()) {
        return kept;
      }
      int now = Integer.parseInt(number.group(1));
      kept = now > lastQuestion && !sent.equals(NOBODY_KNOWS) ? sent : kept;
      lastQuestion = now;
      sent = answerTo(question.substring(number.start()), name + "-" + i);
      typed.write((sent + (terminal ? "\r" : "\n")).getBytes(StandardCharsets.UTF_8));
      typed.flush();
    }
    return kept;
  }

  /** How many questions were shown. */
  int questions() {
    return lastQuestion;
  }

  /** A name where one is wanted, else what is offered. */
  private static String answerTo(String question, String name) {
    if (question.contains("called?")
        || question.contains("ame it")
        || question.contains("its name")) {
      return "Yard " + name;
    }
    Matcher offer = OFFER.matcher(question);
    return offer.find() ? offer.group(1) : NOBODY_KNOWS;
  }

  private String untilPrompt() throws IOException {
    InputStream shown = terminal ? process.getInputStream() : process.getErrorStream();
    StringBuilder text = new StringBuilder();
    long began = System.nanoTime();
    while (System.nanoTime() - began < MOST_WAITED) {
      if (shown.available() > 0) {
        text.append((char) shown.read());
        continue;
      }
      String plain = text.toString().replaceAll(ESCAPES, "");
      if (QUESTION.matcher(plain).find() && PROMPT.matcher(plain).find()) {
        return plain;
      }
      if (!process.isAlive()) {
        return "";
      }
      goOn();
      LockSupport.parkNanos(1_000_000);
    }
    return "";
  }

  /** {@code script} stops where the program is stopped, but does not go on when that goes on. */
  private void goOn() throws IOException {
    if (terminal
        && stopped(process.toHandle())
        && process.descendants().noneMatch(Conversation::stopped)) {
      new ProcessBuilder("kill", "-CONT", String.valueOf(process.pid())).start();
      LockSupport.parkNanos(MOST_WAITED / 600);
    }
  }

  private static boolean stopped(ProcessHandle one) {
    try {
      String state = Files.readString(Path.of("/proc/" + one.pid() + "/stat"));
      return state.charAt(state.lastIndexOf(')') + 2) == 'T';
    } catch (IOException e) {
      return false; // it is over, or this system tells it otherwise
    }
  }

  boolean over() {
    return !process.isAlive();
  }

  /** Kills the program, and at a terminal then the terminal. */
  void kill() throws InterruptedException {
    List<ProcessHandle> below = process.descendants().toList();
    below.forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly().waitFor();
    below.forEach(one -> one.onExit().orTimeout(HANG_UP_SECONDS, TimeUnit.SECONDS).join());
  }

  /** Closes the terminal, and waits for the program to end by itself; false where it does not. */
  boolean hangUp() throws InterruptedException {
    List<ProcessHandle> below = process.descendants().toList();
    process.destroyForcibly().waitFor();
    boolean ended = true;
    for (ProcessHandle one : below) {
      try {
        one.onExit().orTimeout(HANG_UP_SECONDS, TimeUnit.SECONDS).join();
      } catch (java.util.concurrent.CompletionException e) {
        one.destroyForcibly();
        ended = false;
      }
    }
    return ended;
  }
}
