package padwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

import padwright.exchange.DocumentFormat;
import padwright.exchange.readings.ReadingsFormat;
import padwright.paper.plan.PaperExtension;
import padwright.workup.checks.Check;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.report.ReportExtension;
import padwright.workup.rules.PropertyExtension;

/** The extension of the examples among the modules of the window, where each sees only what it asks for. */
class ExtensionTest {

	private static final Path SOURCES = Path.of("../../examples/plugin/src");

	@TempDir
	private Path folder;

	@Test
	void eachKindOfThingIsFoundAndSeesTheClassesItNeeds() throws Exception {
		Path classes = Files.createDirectory(folder.resolve("classes"));
		compile(classes);
		pack(classes, SOURCES, folder.resolve("example.jar"));
		List<String> leftOut = new ArrayList<>();
		Extensions extensions = new Extensions(List.of(folder));
		extensions.onLeftOut(left -> leftOut.add(left.why()));
		for (Class<?> kind : List.of(Check.class, PropertyExtension.class, ReportExtension.class, PaperExtension.class,
				DocumentFormat.class, ReadingsFormat.class)) {
			List<? extends Added<?>> added = extensions.of(kind);
			assertEquals(1, added.size(), kind + " " + leftOut);
			assertTrue(Arrays.stream(added.get(0).thing().getClass().getDeclaredMethods()).count() > 0, "its classes resolve");
		}
		assertEquals(List.of(), leftOut);
	}

	private static void compile(Path classes) throws IOException {
		JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
		StringWriter words = new StringWriter();
		try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
			boolean done = compiler.getTask(words, files, null, List.of("-proc:none", "-d", classes.toString(), "-cp",
					classPath()), null, files.getJavaFileObjectsFromPaths(sources())).call();
			assertTrue(done, words::toString);
		}
	}

	private static List<Path> sources() throws IOException {
		try (Stream<Path> all = Files.list(SOURCES.resolve("example"))) {
			return all.sorted().toList();
		}
	}

	/** All bundles that run; those of this build lie beside their classes. */
	private static String classPath() {
		Bundle[] bundles = FrameworkUtil.getBundle(Platform.class).getBundleContext().getBundles();
		return Arrays.stream(bundles).flatMap(bundle -> FileLocator.getBundleFileLocation(bundle).stream())
				.flatMap(place -> Stream.of(place, new File(place, "target/classes"), new File(place, "bin")))
				.filter(File::exists).map(File::getPath).collect(Collectors.joining(File.pathSeparator));
	}

	private static void pack(Path classes, Path sources, Path target) throws IOException {
		try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(target))) {
			add(classes, classes, jar);
			add(sources, sources.resolve("META-INF"), jar);
		}
	}

	private static void add(Path root, Path below, JarOutputStream jar) throws IOException {
		try (Stream<Path> all = Files.walk(below)) {
			for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
				jar.putNextEntry(new JarEntry(root.relativize(file).toString().replace(File.separatorChar, '/')));
				Files.copy(file, jar);
			}
		}
	}
}
