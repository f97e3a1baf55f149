package strickle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A studio lies where each system keeps such things (Known Folders, Apple's, XDG 0.8). */
class DataFolderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Linux||/home/lea/.local/share/strickle",
        "Linux|XDG_DATA_HOME=/data|/data/strickle",
        "Linux|XDG_DATA_HOME=relative|/home/lea/.local/share/strickle",
        "Linux|APPDATA=/elsewhere|/home/lea/.local/share/strickle",
        "FreeBSD||/home/lea/.local/share/strickle",
        "Mac OS X||/home/lea/Library/Application Support/Strickle",
        "Mac OS X|XDG_DATA_HOME=/data|/home/lea/Library/Application Support/Strickle",
        "Windows 11|APPDATA=/roaming|/roaming/Strickle",
        "Windows 11||/home/lea/AppData/Roaming/Strickle",
      })
  void aStudioLiesWhereTheSystemKeepsSuch(String system, String variable, String folder) {
    Map<String, String> variables =
        variable == null ? Map.of() : Map.of(variable.split("=", 2)[0], variable.split("=", 2)[1]);
    assertEquals(Path.of(folder), DataFolder.usual(system, Path.of("/home/lea"), variables));
  }
}
