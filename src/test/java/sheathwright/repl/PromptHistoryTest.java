package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PromptHistoryTest {

  @TempDir Path home;

  private Path sessions() {
    return Autosave.folder(Map.of(), home);
  }

  @Test
  void history_isWhereTheDesktopKeepsSuchFiles() {
    assertThat(Autosave.history(sessions(), home))
        .isEqualTo(home.resolve(".local/state/sheathwright/history"));
    Path state = home.resolve("state");
    assertThat(
            Autosave.history(
                Autosave.folder(Map.of("XDG_STATE_HOME", state.toString()), home), home))
        .isEqualTo(state.resolve("sheathwright/history"));
  }

  @Test
  void history_takesTheOldPlaceOver() throws IOException {
    Path old = Files.writeString(home.resolve(".sheathwright_history"), "1:deck = 12 ft\n");
    Path own = Autosave.history(sessions(), home);
    assertThat(own).hasContent("1:deck = 12 ft\n");
    assertThat(old).doesNotExist();
  }

  @Test
  void history_keepsWhatIsThere() throws IOException {
    Path old = Files.writeString(home.resolve(".sheathwright_history"), "1:old\n");
    Files.createDirectories(sessions());
    Files.writeString(sessions().resolve("history"), "2:new\n");
    assertThat(Autosave.history(sessions(), home)).hasContent("2:new\n");
    assertThat(old).exists();
  }

  @Test
  void history_staysWithTheOldPlaceWhereItCannotBeMoved() throws IOException {
    Path old = Files.writeString(home.resolve(".sheathwright_history"), "1:old\n");
    Files.createDirectories(sessions().getParent());
    Files.writeString(sessions(), "a file in the folder's place");
    assertThat(Autosave.history(sessions(), home)).isEqualTo(old).hasContent("1:old\n");
  }
}
