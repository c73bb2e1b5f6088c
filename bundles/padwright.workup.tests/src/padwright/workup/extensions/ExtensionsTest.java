package padwright.workup.extensions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jars of others, made of classes of this test that the loader of their kind does not know. */
class ExtensionsTest {

	private static final String SERVICE = "META-INF/services/java.util.function.Supplier";

	@TempDir
	private Path folder;
	private final List<String> told = new ArrayList<>();

	/** What the jars of this test add. */
	public static final class Greeting implements Supplier<String> {

		@Override
		public String get() {
			return "hello";
		}
	}

	/** Works until it is used. */
	public static final class Quarrel implements Supplier<String> {

		@Override
		public String get() {
			throw new IllegalStateException("not today");
		}
	}

	/** Does not even begin. */
	public static final class Refusal implements Supplier<String> {

		private final String refused = refuse();

		private static String refuse() {
			throw new IllegalStateException("never");
		}

		@Override
		public String get() {
			return refused;
		}
	}

	private void jar(String name, Class<?>... classes) throws IOException {
		try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(folder.resolve(name)))) {
			jar.putNextEntry(new JarEntry(SERVICE));
			for (Class<?> one : classes) {
				jar.write((one.getName() + "\n").getBytes(StandardCharsets.UTF_8));
			}
			for (Class<?> one : classes) {
				String path = one.getName().replace('.', '/') + ".class";
				jar.putNextEntry(new JarEntry(path));
				try (InputStream bytes = one.getClassLoader().getResourceAsStream(path)) {
					bytes.transferTo(jar);
				}
			}
		}
	}

	private Extensions extensions() {
		Extensions extensions = new Extensions(List.of(folder.resolve("none"), folder));
		extensions.onLeftOut(left -> told.add(left.jar().getFileName() + ": " + left.why()));
		return extensions;
	}

	private static List<String> answers(Extensions extensions) {
		return extensions.of(Supplier.class).stream()
				.map(added -> String.valueOf(extensions.ask(added, added.thing()::get, "?"))).toList();
	}

	@Test
	void whatAJarAddsIsUsedInTheOrderOfNames() throws IOException {
		jar("b.jar", Greeting.class);
		jar("a.jar", Greeting.class);
		jar("c.txt", Greeting.class);
		Extensions extensions = extensions();
		assertEquals(List.of("a.jar", "b.jar"), extensions.of(Supplier.class).stream()
				.map(added -> added.jar().getFileName().toString()).toList());
		assertEquals(List.of("hello", "hello"), answers(extensions));
		assertEquals(List.of(), extensions.of(Runnable.class));
		assertEquals(List.of(), told);
	}

	@Test
	void oneThatFailsIsNamedAndLeftOutAndTheOthersGoOn() throws IOException {
		jar("a.jar", Greeting.class, Refusal.class);
		jar("b.jar", Greeting.class);
		Files.writeString(folder.resolve("c.jar"), "no jar at all");
		assertEquals(List.of("hello"), answers(extensions()));
		assertEquals(2, told.size(), told.toString());
		assertTrue(told.get(0).startsWith("a.jar: ") && told.get(1).startsWith("c.jar: "), told.toString());
	}

	@Test
	void oneThatFailsWhenItIsUsedIsNotAskedAgain() throws IOException {
		jar("a.jar", Quarrel.class);
		Extensions extensions = extensions();
		assertEquals(List.of("?"), answers(extensions));
		assertEquals(List.of("a.jar: java.lang.IllegalStateException: not today"), told);
		assertEquals(List.of(), answers(extensions));
		assertEquals(1, told.size());
	}

	@Test
	void whoListensLaterIsToldToo() throws IOException {
		jar("a.jar", Quarrel.class);
		Extensions extensions = extensions();
		answers(extensions);
		List<String> later = new ArrayList<>();
		extensions.onLeftOut(left -> later.add(left.inWords()));
		assertEquals(1, later.size());
		assertTrue(later.get(0).contains("a.jar") && later.get(0).contains("not today")
				&& later.get(0).contains(folder.toString()), later.toString());
	}
}
