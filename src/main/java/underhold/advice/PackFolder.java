package underhold.advice;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.site.FactDictionary;
import underhold.site.PlainText;

/**
 * The files of a rule pack in a folder. Only ordinary files of usual size below the folder are
 * read, as UTF-8; a link is never followed.
 */
public final class PackFolder implements RulePackReader.Files {
  static final String NOT_THERE = "is not there";

  private static final int LARGEST_FILE = 1024 * 1024;
  private static final int LARGEST_PACK = 8 * LARGEST_FILE;
  private static final int DEEPEST = 4;
  private static final int MOST_ENTRIES = 5000;
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final Path folder;
  private final Map<String, String> reasons = new HashMap<>();
  private int room = LARGEST_PACK;

  private PackFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Reads the pack that stands in a folder, whole or as changes to the pack built in.
   *
   * @param typed the folder as the user named it
   */
  public static PackReading read(Path folder, String typed) {
    if (!Files.isDirectory(folder)) {
      return new PackReading.Refused(
          List.of(
              new PackProblem(
                  PlainText.shown(typed),
                  0,
                  Files.exists(folder)
                      ? "a rule pack is a folder with a " + PackManifest.FILE + ", not a file"
                      : "there is no such folder")));
    }
    RulePackReader reader = new RulePackReader(FactDictionary.standard(), BuiltInPack.pack());
    Optional<RulePack> pack = reader.read(new PackFolder(folder), typed);
    return pack.isPresent()
        ? new PackReading.Read(pack.get())
        : new PackReading.Refused(reader.problems());
  }

  /** The files of a folder, each looked at when it is asked for. */
  public static RulePackReader.Files files(Path folder) {
    return new PackFolder(folder);
  }

  @Override
  public String whyNot(String name) {
    return reasons.getOrDefault(name, NOT_THERE);
  }

  @Override
  public Optional<String> text(String name) {
    try {
      Path file = folder;
      for (String part : name.split("/", -1)) {
        file = file.resolve(part);
        if (Files.isSymbolicLink(file)) {
          return refuse(name, "is a link, or lies behind one; links are not followed");
        }
      }
      BasicFileAttributes attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (!attributes.isRegularFile()) {
        return refuse(name, attributes.isDirectory() ? "is a folder" : "is a device or pipe");
      }
      byte[] bytes = bytes(file);
      if (bytes.length > LARGEST_FILE) {
        return refuse(name, "is larger than " + LARGEST_FILE / (1024 * 1024) + " MiB");
      }
      room -= bytes.length;
      if (room < 0) {
        return refuse(name, "makes the pack larger than " + LARGEST_PACK / (1024 * 1024) + " MiB");
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      return refuse(name, "is not UTF-8 text: save it as UTF-8");
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (AccessDeniedException e) {
      return refuse(name, "may not be read: there is no permission");
    } catch (IOException | SecurityException e) {
      return refuse(name, "cannot be read: " + PlainText.shown(String.valueOf(e.getMessage())));
    }
  }

  /** The bytes, at most one more than a file may have: some files claim to be small. */
  private static byte[] bytes(Path file) throws IOException {
    try (InputStream in =
        Channels.newInputStream(
            Files.newByteChannel(
                file, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)))) {
      return in.readNBytes(LARGEST_FILE + 1);
    }
  }

  private Optional<String> refuse(String name, String why) {
    reasons.put(name, why);
    return Optional.empty();
  }

  /** A rule file that nobody names would be a rule that its author believes to be in force. */
  @Override
  public List<String> unnamed(List<String> named) {
    Set<String> known = new HashSet<>(named);
    List<String> unnamed = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder, DEEPEST)) {
      walk.limit(MOST_ENTRIES)
          .map(path -> folder.relativize(path).toString().replace('\\', '/'))
          .filter(name -> name.endsWith(".drl") && !known.contains(name))
          .sorted()
          .forEach(name -> unnamed.add(PlainText.shown(name)));
    } catch (IOException | java.io.UncheckedIOException | SecurityException e) {
      return List.of(); // what cannot be listed cannot be named either
    }
    return unnamed;
  }
}
