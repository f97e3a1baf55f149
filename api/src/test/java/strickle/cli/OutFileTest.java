package strickle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutFileTest {

  @TempDir Path folder;

  @Test
  void theFileHoldsWhatWasWrittenInUtf8() throws IOException {
    Path file = folder.resolve("plan.json");
    OutFile.at(file.toString()).write("Schiefer, gefüllt\n");
    assertEquals("Schiefer, gefüllt\n", Files.readString(file));
    assertEquals(List.of(file), files());
  }

  @Test
  void aPlainNameIsAFileOfTheCurrentFolder() {
    assertEquals("plan.json", OutFile.at("plan.json").text());
  }

  @Test
  void aLinkStaysAndItsFileIsReplaced() throws IOException {
    Path file = Shell.file(folder, "real.json", "old");
    Path link = folder.resolve("link.json");
    assumeTrue(canLink(link, file));
    OutFile.at(link.toString()).write("new");
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new", Files.readString(file));
  }

  @Test
  void anOldFileKeepsItsPermissions() throws IOException {
    Path file = Shell.file(folder, "plan.json", "old");
    assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
    OutFile.at(file.toString()).write("new");
    assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void whatIsNoOrdinaryFileIsNeverReplaced() {
    assumeTrue(Files.exists(Path.of("/dev/null")));
    assertTrouble("/dev/null", "something that is no ordinary file");
  }

  @Test
  void aFileIsNoFolder() {
    Path file = Shell.file(folder, "plan.json", "old");
    assertTrouble(file.resolve("other.json").toString(), "no folder");
  }

  @Test
  void theEmptyPathAndTheRootAreFolders() {
    assertTrouble("", "a folder");
    assertTrouble("/", "a folder");
  }

  @Test
  void whenWritingFailsTheOldFileStaysAndNothingElseIsLeft() throws IOException {
    Path file = folder.resolve("plan.json");
    OutFile out = OutFile.at(file.toString());
    // A folder that has come in between cannot be replaced by a file.
    Files.createDirectory(file);
    Path inside = Shell.file(file, "precious.txt", "kept");
    Trouble trouble = assertThrows(Trouble.class, () -> out.write("new"));
    assertTrue(trouble.getMessage().contains("could not be written"), trouble.getMessage());
    assertEquals("kept", Files.readString(inside));
    assertEquals(List.of(file), files());
  }

  @Test
  void whenTheFolderIsGoneThatIsTold() throws IOException {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    OutFile out = OutFile.at(inner.resolve("plan.json").toString());
    Files.delete(inner);
    Trouble trouble = assertThrows(Trouble.class, () -> out.write("new"));
    assertTrue(trouble.getMessage().contains("could not be written"), trouble.getMessage());
  }

  private static void assertTrouble(String given, String found) {
    Trouble trouble = assertThrows(Trouble.class, () -> OutFile.at(given));
    assertTrue(trouble.getMessage().contains("found " + found), trouble.getMessage());
  }

  private static boolean canLink(Path link, Path file) {
    try {
      Files.createSymbolicLink(link, file);
      return true;
    } catch (IOException | UnsupportedOperationException noLinksHere) {
      return false;
    }
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
