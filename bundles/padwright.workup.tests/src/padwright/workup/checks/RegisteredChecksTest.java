package padwright.workup.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** Every check is one of those that models are judged by. */
class RegisteredChecksTest {

	/** Seen from the folder of any test bundle, which tests run in. */
	private static final Path SOURCES = Path.of("..", "padwright.workup", "src");
	private static final String ENTRIES = "/META-INF/services/" + Check.class.getName();

	private static List<String> registered() throws IOException {
		try (var reader = new BufferedReader(
				new InputStreamReader(Check.class.getResourceAsStream(ENTRIES), StandardCharsets.UTF_8))) {
			return reader.lines().toList();
		}
	}

	private static List<String> written() throws IOException {
		try (Stream<Path> sources = Files.walk(SOURCES)) {
			return sources.filter(source -> source.toString().endsWith(".java")).filter(RegisteredChecksTest::isCheck)
					.map(source -> SOURCES.relativize(source).toString().replaceAll("[/\\\\]", ".")
							.replaceAll("\\.java$", ""))
					.toList();
		}
	}

	private static boolean isCheck(Path source) {
		try {
			return Files.readString(source).contains(" extends Check<");
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}

	@Test
	void everyCheckIsRegistered() throws IOException {
		assertTrue(written().size() > 30, "checks are looked for in a wrong place");
		assertEquals(new TreeSet<>(written()), new TreeSet<>(registered()));
	}

	@Test
	void noCheckIsRegisteredTwice() throws IOException {
		assertEquals(registered().stream().distinct().toList(), registered());
	}
}
