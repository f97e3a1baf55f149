package strickle.bench;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;
import strickle.book.Fault;
import strickle.book.Faulty;

/** The files of problems in a folder and the folders in it. */
final class Folder {

  private Folder() {}

  /**
   * The files whose names have an ending, in small letters or large, and match a pattern, in the
   * order of their paths.
   *
   * @param pattern as of {@link java.nio.file.FileSystem#getPathMatcher}, without "glob:"
   * @throws Faulty when there is no such folder or no such file
   */
  static List<Path> files(String folder, String ending, String pattern) {
    PathMatcher matcher = matcher(pattern);
    try (Stream<Path> all = Files.walk(path(folder))) {
      List<Path> files =
          all.filter(Files::isRegularFile)
              .filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(ending))
              .filter(file -> matcher.matches(file.getFileName()))
              .sorted()
              .toList();
      must(!files.isEmpty(), folder, "no file " + pattern, "a folder with " + ending + " files");
      return files;
    } catch (IOException unreadable) {
      throw faulty(folder, "nothing that can be read", "a folder with " + ending + " files");
    }
  }

  /** Reads all files, and tells everything that is wrong with any of them at once. */
  static <T> List<T> read(List<Path> files, Function<Path, T> reader) {
    List<T> read = new ArrayList<>();
    List<Fault> faults = new ArrayList<>();
    for (Path file : files) {
      try {
        read.add(reader.apply(file));
      } catch (Faulty faulty) {
        faults.addAll(faulty.faults());
      }
    }
    if (!faults.isEmpty()) {
      throw new Faulty(faults);
    }
    return read;
  }

  /** A path as written on the command line. */
  static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException none) {
      throw faulty(text, "no path", "the path of a file or folder");
    }
  }

  private static PathMatcher matcher(String pattern) {
    try {
      return FileSystems.getDefault().getPathMatcher("glob:" + pattern);
    } catch (PatternSyntaxException wrong) {
      throw faulty("--only", '"' + pattern + '"', "a pattern such as '*_1.sm' or '{ft,la}*.jss'");
    }
  }

  private static void must(boolean holds, String path, String found, String right) {
    if (!holds) {
      throw faulty(path, found, right);
    }
  }

  private static Faulty faulty(String path, String found, String right) {
    return new Faulty(List.of(new Fault(path, found, right)));
  }
}
