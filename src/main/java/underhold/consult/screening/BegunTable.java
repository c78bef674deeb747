package underhold.consult.screening;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;
import underhold.site.PlainText;

/**
 * A table under way. Its lines stand in a file beside the table, added in order and each in one
 * piece; the table itself is only ever written whole, when the last zone is done. A begun table
 * found is gone on with from its last whole line.
 */
public final class BegunTable implements Closeable {
  private static final int BLOCK = 8192;
  private static final String LINE_END = "\r\n";

  private final Path table;
  private final Path begun;
  private final TableForm form;
  private final FileChannel channel;

  private BegunTable(Path table, Path begun, TableForm form, FileChannel channel) {
    this.table = table;
    this.begun = begun;
    this.form = form;
    this.channel = channel;
  }

  /** What became of opening a table: it is open, or why it is not. */
  public record Opened(Optional<BegunTable> table, String problem) {}

  /** The file in which a table stands while it is under way. */
  public static Path begun(Path table, TableForm form) {
    String name = String.valueOf(table.getFileName());
    String stem = name.substring(0, Math.max(0, name.lastIndexOf('.')));
    return table.resolveSibling(stem + form.begunEnding());
  }

  /**
   * Goes on with a begun table, or begins one.
   *
   * @param anew whether a begun table is let go
   */
  public static Opened open(Path table, TableForm form, boolean anew) {
    Path begun = begun(table, form);
    try {
      FileChannel channel =
          FileChannel.open(
              begun,
              StandardOpenOption.CREATE,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      String problem =
          lock(channel) ? "" : begun + " is being written by another run; wait for it.";
      BegunTable opened = new BegunTable(table, begun, form, channel);
      if (problem.isEmpty()) {
        channel.truncate(anew ? 0 : opened.wholeLines());
        problem = opened.readHead();
      }
      if (problem.isEmpty()) {
        return new Opened(Optional.of(opened), "");
      }
      channel.close();
      return new Opened(Optional.empty(), problem);
    } catch (IOException | SecurityException e) {
      return new Opened(
          Optional.empty(),
          begun + " cannot be written: " + PlainText.shown(String.valueOf(e.getMessage())));
    }
  }

  private static boolean lock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** The length of the lines that are whole. */
  private long wholeLines() throws IOException {
    ByteBuffer block = ByteBuffer.allocate(BLOCK);
    for (long end = channel.size(); end > 0; ) {
      long from = Math.max(0, end - BLOCK);
      block.clear().limit((int) (end - from));
      while (block.hasRemaining() && channel.read(block, from + block.position()) >= 0) {}
      for (int i = block.position() - 1; i >= 0; i--) {
        if (block.get(i) == '\n') {
          return from + i + 1;
        }
      }
      end = from;
    }
    return 0;
  }

  /** Writes the head of a new table, or looks whether it is that of a begun one. */
  private String readHead() throws IOException {
    if (channel.size() == 0) {
      add(form.head());
      return "";
    }
    try (BufferedReader lines = lines()) {
      return form.head().equals(lines.readLine()) ? "" : otherwise("its first line");
    }
  }

  /** Says that a begun table was not made as this one is. */
  private String otherwise(String what) {
    return begun
        + " is a table begun earlier, but not with this program, these rules and these draws ("
        + what
        + " differs); run as it was begun, begin again with --anew, or name another --out.";
  }

  /** The file in which the table stands while it is under way. */
  public Path begun() {
    return begun;
  }

  /** The ids of the rows that are done, in order. */
  Rows rows() throws IOException {
    return new Rows(lines());
  }

  private BufferedReader lines() throws IOException {
    return new BufferedReader(
        Channels.newReader(
            FileChannel.open(begun, StandardOpenOption.READ), StandardCharsets.UTF_8));
  }

  /** The rows of a begun table, one at a time. */
  final class Rows implements Closeable {
    private final BufferedReader lines;
    private int line = 1;
    private String problem = "";

    Rows(BufferedReader lines) throws IOException {
      this.lines = lines;
      lines.readLine(); // the head
    }

    /** The id of the next row; empty at the end, or at a row that was made otherwise. */
    Optional<String> next() throws IOException {
      String row = lines.readLine();
      line++;
      if (row == null) {
        return Optional.empty();
      }
      Optional<String> id = form.id(row);
      if (id.isEmpty()) {
        problem = otherwise("line " + line);
      }
      return id;
    }

    /** The line read last. */
    int line() {
      return line;
    }

    /** Why a row could not be used; empty if all could. */
    String problem() {
      return problem;
    }

    @Override
    public void close() throws IOException {
      lines.close();
    }
  }

  /** Adds a line. */
  void add(String line) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap((line + LINE_END).getBytes(StandardCharsets.UTF_8));
    channel.position(channel.size());
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** Writes the table whole, and lets the begun one go. */
  void finish() throws IOException {
    channel.force(true);
    Path temporary = table.resolveSibling("." + table.getFileName() + "." + UUID.randomUUID());
    try {
      try (FileChannel out =
              FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
          Writer writer = new BufferedWriter(Channels.newWriter(out, StandardCharsets.UTF_8));
          BufferedReader lines = lines()) {
        form.whole(lines, writer);
        writer.flush();
        out.force(true);
      }
      Files.move(
          temporary, table, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(temporary);
    }
    channel.close();
    Files.deleteIfExists(begun);
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      channel.force(true);
      channel.close();
    }
  }
}
