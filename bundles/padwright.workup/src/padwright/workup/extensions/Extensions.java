package padwright.workup.extensions;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.jar.JarFile;

/**
 * What others add to the program: every jar in the folders of extensions, with the kinds of things that its
 * {@code META-INF/services} name. One that fails, when it is looked at or later, is named and left out from then on; the
 * program goes on without it. For many threads.
 */
public final class Extensions {

	private static final class OfThisProcess {
		private static final Extensions ALL = new Extensions(ExtensionFolders.ofThisProcess());
	}

	private final List<Path> jars;
	private final Map<Path, LeftOut> leftOut = new LinkedHashMap<>();
	private Consumer<LeftOut> onLeftOut = none -> {
	};

	/** @param folders where jars may lie; need not be there */
	public Extensions(List<Path> folders) {
		jars = folders.stream().flatMap(folder -> jars(folder).stream()).toList();
	}

	/** Those that this process uses. */
	public static Extensions installed() {
		return OfThisProcess.ALL;
	}

	private static List<Path> jars(Path folder) {
		if (!Files.isDirectory(folder)) {
			return List.of();
		}
		List<Path> jars = new ArrayList<>();
		try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.jar")) {
			found.forEach(jars::add);
		} catch (IOException | DirectoryIteratorException unreadable) {
			return List.of();
		}
		return jars.stream().sorted().toList();
	}

	/**
	 * What they add of a kind, in the order of their folders and names. Each kind has classes of its own: the classes of the
	 * program that it can use are those which the kind itself can.
	 */
	public <T> List<Added<T>> of(Class<T> kind) {
		List<Added<T>> added = new ArrayList<>();
		for (Path jar : jars) {
			run(jar, () -> added.addAll(in(jar, kind)));
		}
		return added;
	}

	/** A loader of classes passes silently over a file that is no jar. */
	private static <T> List<Added<T>> in(Path jar, Class<T> kind) throws IOException {
		new JarFile(jar.toFile()).close();
		List<Added<T>> added = new ArrayList<>();
		Iterator<T> found = ServiceLoader.load(kind, new JarLoader(jar, kind.getClassLoader())).iterator();
		while (found.hasNext()) {
			added.add(new Added<>(jar, found.next()));
		}
		return added;
	}

	/** What they add of a kind that has names, by these: of two of one name that of the first jar. */
	public <T extends NamedExtension> Map<String, Added<T>> byName(Class<T> kind) {
		Map<String, Added<T>> named = new LinkedHashMap<>();
		for (Added<T> added : of(kind)) {
			use(added, () -> named.putIfAbsent(added.thing().name(), added));
		}
		return named;
	}

	/** Something that may fail as any code of others may. */
	private interface Work {

		void run() throws IOException;
	}

	/** Does something with what a jar added, unless that was left out; if it fails, it is left out. */
	public void use(Added<?> added, Runnable work) {
		run(added.jar(), work::run);
	}

	/** As {@link #use}, for an answer: {@code otherwise} where there is none. */
	public <T> T ask(Added<?> added, Supplier<T> question, T otherwise) {
		List<T> answers = new ArrayList<>();
		use(added, () -> answers.add(question.get()));
		return answers.isEmpty() || answers.get(0) == null ? otherwise : answers.get(0);
	}

	/** Something that others answer, or refuse in the user's words. */
	public interface Question<T, E extends Exception> {

		T answer() throws E;
	}

	/**
	 * What something answers that the user asked for.
	 *
	 * @param refusal what it throws where it refuses in the user's words, which is passed on
	 * @return nothing if it failed, and is left out
	 */
	public <T, E extends Exception> Optional<T> answer(Added<?> added, Class<E> refusal, Question<T, E> question) throws E {
		try {
			return isLeftOut(added.jar()) ? Optional.empty() : Optional.ofNullable(question.answer());
		} catch (Exception | LinkageError failed) {
			if (refusal.isInstance(failed)) {
				throw refusal.cast(failed);
			}
			leaveOut(new LeftOut(added.jar(), failed.toString()));
			return Optional.empty();
		}
	}

	private void run(Path jar, Work work) {
		if (isLeftOut(jar)) {
			return;
		}
		try {
			work.run();
		} catch (IOException | RuntimeException | LinkageError | ServiceConfigurationError failed) {
			leaveOut(new LeftOut(jar, failed.toString()));
		}
	}

	private synchronized boolean isLeftOut(Path jar) {
		return leftOut.containsKey(jar);
	}

	private synchronized void leaveOut(LeftOut failed) {
		if (leftOut.putIfAbsent(failed.jar(), failed) == null) {
			onLeftOut.accept(failed);
		}
	}

	/** Tells of each extension that is left out, also of those that are already; one listener at a time. */
	public synchronized void onLeftOut(Consumer<LeftOut> listener) {
		onLeftOut = listener;
		leftOut.values().forEach(listener);
	}
}
