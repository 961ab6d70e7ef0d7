package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FailureTest {

  static Stream<Arguments> thrown() {
    return Stream.of(
        Arguments.of(new OutOfMemoryError("Java heap space"), 3, "there is not memory enough"),
        Arguments.of(
            new CompletionException(new OutOfMemoryError("Java heap space")),
            3,
            "there is not memory enough"),
        Arguments.of(new StackOverflowError(), 1, "this is nested too deeply"),
        Arguments.of(
            new UncheckedIOException(new IOException("Is a directory")),
            3,
            "input cannot be read: Is a directory"),
        Arguments.of(
            new FileSystemException("out", null, "Read-only file system"),
            3,
            "out: cannot be written or read: Read-only file system"),
        Arguments.of(
            new AccessDeniedException("out"),
            3,
            "out: cannot be written or read: permission is denied"),
        Arguments.of(new IllegalStateException("odd"), 1, "a fault of sheathwright's own"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("thrown")
  void failure_isOneLineAndAStatus(Throwable thrown, int status, String begin) {
    Failure failure = Failure.of(thrown);
    assertThat(failure.status()).isEqualTo(status);
    assertThat(failure.line()).startsWith(begin).hasLineCount(1);
  }
}
