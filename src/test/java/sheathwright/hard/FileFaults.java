package sheathwright.hard;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Spoils a workbook's file: its bytes, its parts, and what stands in them. */
record FileFaults(Random random) {

  /** The file with one thing spoiled. */
  byte[] spoiled(byte[] file) {
    return switch (random.nextInt(8)) {
      case 0 -> cut(file);
      case 1 -> bytesChanged(file);
      case 2 -> partGone(file);
      default -> partSpoiled(file);
    };
  }

  private byte[] cut(byte[] file) {
    return java.util.Arrays.copyOf(file, random.nextInt(file.length));
  }

  private byte[] bytesChanged(byte[] file) {
    byte[] changed = file.clone();
    for (int times = 1 + random.nextInt(20); times > 0; times--) {
      changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
    }
    return changed;
  }

  private byte[] partGone(byte[] file) {
    Map<String, byte[]> parts = parts(file);
    parts.remove(anyOf(parts));
    return zipped(parts);
  }

  private byte[] partSpoiled(byte[] file) {
    Map<String, byte[]> parts = parts(file);
    String part = anyOf(parts);
    String text = new String(parts.get(part), StandardCharsets.UTF_8);
    parts.put(part, inATag(text).getBytes(StandardCharsets.UTF_8));
    return zipped(parts);
  }

  /** Most faults change what stands between two signs and leave the markup whole. */
  private String inATag(String text) {
    TextFaults faults = new TextFaults(random);
    if (random.nextInt(4) == 0 || text.indexOf('>') < 0) {
      return faults.spoiled(text);
    }
    char open = random.nextBoolean() ? '"' : '>';
    char close = open == '"' ? '"' : '<';
    int from = text.indexOf(open, random.nextInt(text.length())) + 1;
    int to = from == 0 ? -1 : text.indexOf(close, from);
    return to < 0 ? text : text.substring(0, from) + written(faults.nasty()) + text.substring(to);
  }

  private static String written(String value) {
    return value
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace("\"", "&quot;")
        .replaceAll("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F]", "");
  }

  private String anyOf(Map<String, byte[]> parts) {
    List<String> names = new ArrayList<>(parts.keySet());
    return names.get(random.nextInt(names.size()));
  }

  /** The parts of a file, in the order in which they are packed. */
  static Map<String, byte[]> parts(byte[] file) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return parts;
  }

  /** The file of some parts. */
  static byte[] zipped(Map<String, byte[]> parts) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(file)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return file.toByteArray();
  }
}
