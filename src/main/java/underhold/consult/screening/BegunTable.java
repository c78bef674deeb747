package underhold.consult.screening;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.site.PlainText;
import underhold.site.WholeFile;

/**
 * A table under way. Its lines stand in a file beside the table, added in order and each in one
 * piece; the table itself is only ever written whole, when the last zone is done. A begun table
 * found is gone on with from its last whole line.
 */
public final class BegunTable implements Closeable {
  private static final int BLOCK = 8192;

  /** A row names its input, its zone and its rules, each many times at most. */
  private static final int LONGEST_ROW = 8 * CsvRecords.LONGEST_ROW;

  private static final String LINE_END = "\r\n";

  private final Path table;
  private final Path begun;
  private final TableForm form;
  private final FileChannel channel;
  private final @Nullable List<Object> before;

  private BegunTable(
      Path table, Path begun, TableForm form, FileChannel channel, @Nullable List<Object> before) {
    this.before = before;
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
      boolean ours = lock(channel) && Files.exists(begun); // not let go by a run that just ended
      String problem = ours ? "" : begun + " is being written by another run; wait for it.";
      BegunTable opened = new BegunTable(table, begun, form, channel, stands(table));
      if (problem.isEmpty()) {
        problem = opened.begin(anew);
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

  /** Cuts the file to its whole lines, or begins it; says why it does neither. */
  private String begin(boolean anew) throws IOException {
    byte[] head = form.head().getBytes(UTF_8);
    byte[] found = beginning(head.length + 1);
    if (!form.isBegun(new String(found, 0, Math.min(found.length, head.length), UTF_8))) {
      return begun
          + " is there already and is no table under way, so nothing was written. Move it away, or"
          + " name another --out.";
    }
    long whole = anew ? 0 : wholeLines();
    boolean same = found.length > head.length && "\r\n".indexOf(found[head.length]) >= 0;
    if (whole > 0 && !(same && Arrays.equals(head, Arrays.copyOf(found, head.length)))) {
      return otherwise("its first line differs");
    }
    channel.truncate(whole);
    if (whole == 0) {
      add(form.head());
    }
    return "";
  }

  private byte[] beginning(int length) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(length);
    while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) > 0) {}
    return Arrays.copyOf(bytes.array(), bytes.position());
  }

  /** Says that a begun table was not made as this one is. */
  private String otherwise(String what) {
    return begun
        + " is a table begun earlier, but not with this program, these rules and these draws ("
        + what
        + "); run as it was begun, begin again with --anew, or name another --out.";
  }

  /** The file in which the table stands while it is under way. */
  public Path begun() {
    return begun;
  }

  /** The ids of the rows that are done, in order. */
  Rows rows() {
    return new Rows(lines());
  }

  private BufferedReader lines() {
    return new BufferedReader(new InputStreamReader(new FromStart(channel), UTF_8.newDecoder()));
  }

  /** Reads through the one channel: to open and close the file once more would end the lock. */
  private static final class FromStart extends InputStream {
    private final FileChannel channel;
    private long at;

    FromStart(FileChannel channel) {
      this.channel = channel;
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
      int taken = channel.read(ByteBuffer.wrap(bytes, from, length), at);
      at += Math.max(0, taken);
      return taken;
    }
  }

  /** The rows of a begun table, one at a time. */
  final class Rows implements Closeable {
    private final BufferedReader lines;
    private int line;
    private String problem = "";

    Rows(BufferedReader lines) {
      this.lines = lines;
    }

    /** The id of the next row; empty at the end, or at a row that was made otherwise. */
    Optional<String> next() throws IOException {
      String row;
      try {
        if (line == 0) {
          text(); // the head
          line++;
        }
        row = text();
        line++;
      } catch (CharacterCodingException e) {
        problem = otherwise("after line " + line + " something is no UTF-8 text");
        return Optional.empty();
      }
      if (row == null) {
        return Optional.empty();
      }
      Optional<String> id = form.id(row);
      if (id.isEmpty()) {
        problem = otherwise("line " + line + " differs");
      }
      return id;
    }

    /** A line without its end, cut where it is longer than any row; null at the end. */
    private @Nullable String text() throws IOException {
      StringBuilder row = new StringBuilder();
      int sign = lines.read();
      if (sign < 0) {
        return null;
      }
      while (sign >= 0 && sign != '\n' && row.length() < LONGEST_ROW) {
        row.append((char) sign);
        sign = lines.read();
      }
      boolean pair = sign == '\n' && row.length() > 0 && row.charAt(row.length() - 1) == '\r';
      return pair ? row.substring(0, row.length() - 1) : row.toString();
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
    ByteBuffer bytes = ByteBuffer.wrap((line + LINE_END).getBytes(UTF_8));
    channel.position(channel.size());
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** Writes the table whole, and lets the begun one go. */
  void finish() throws IOException {
    channel.force(true);
    Path target = Files.exists(table) ? table.toRealPath() : table.toAbsolutePath();
    if (!Objects.equals(stands(table), before)) {
      throw new IOException(table + " was changed by another program while this one ran");
    }
    if (before != null && !Files.isWritable(target)) {
      throw new IOException(table + " may not be written to");
    }
    Path temporary = WholeFile.temporary(target);
    try {
      try (FileChannel out =
              FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
          Writer writer = new BufferedWriter(Channels.newWriter(out, UTF_8));
          BufferedReader lines = lines()) {
        form.whole(lines, writer);
        writer.flush();
        out.force(true);
      }
      Files.move(
          temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(temporary);
    }
    Files.deleteIfExists(begun); // while it is still ours
    channel.close();
  }

  /** What tells a file from what it was before; null where there is none. */
  private static @Nullable List<Object> stands(Path file) throws IOException {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      Object key = found.fileKey();
      return List.of(key == null ? "" : key, found.size(), found.lastModifiedTime());
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  @Override
  public void close() throws IOException {
    if (channel.isOpen()) {
      channel.force(true);
      channel.close();
    }
  }
}
