import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Finishes the products in a folder, so that commands start without the module framework: writes beside the plug-ins a
 * {@code commands.jar} that names all plug-ins that commands need, and takes off signatures, since Java keeps no signed
 * class in an archive of classes and proves each one at every start. What is fetched was compared with its checksum before.
 * FinishProduct FOLDER
 */
final class FinishProduct {

	private static final String COMMANDS = "padwright.commands";
	private static final String MAIN = "padwright.commands.Main";
	private static final String PLUGINS = "plugins";
	private static final LocalDateTime TIME = LocalDateTime.of(2026, 1, 1, 0, 0);

	/** A plug-in with what its manifest says. */
	private record Plugin(Path file, Attributes headers) {

		static Plugin of(Path file) throws IOException {
			try (JarFile jar = new JarFile(file.toFile(), false)) {
				return new Plugin(file, jar.getManifest().getMainAttributes());
			}
		}

		String name() {
			return clauses("Bundle-SymbolicName").get(0);
		}

		/** What a header lists, without what it says of each; what may be missing is left out. */
		List<String> clauses(String header) {
			String value = headers.getValue(header);
			return value == null ? List.of() : Stream.of(value.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
					.filter(clause -> !clause.contains("resolution:=optional")).map(clause -> clause.split(";")[0].strip())
					.toList();
		}
	}

	public static void main(String[] arguments) throws IOException {
		List<Path> products;
		try (Stream<Path> folders = Files.walk(Path.of(arguments[0]))) {
			products = folders.filter(folder -> Files.isDirectory(folder.resolve(PLUGINS))).sorted().toList();
		}
		if (products.isEmpty()) {
			throw new IOException("no product in " + arguments[0]);
		}
		for (Path product : products) {
			finish(product);
		}
	}

	private static void finish(Path product) throws IOException {
		List<Path> jars;
		try (Stream<Path> files = Files.list(product.resolve(PLUGINS))) {
			jars = files.filter(file -> file.toString().endsWith(".jar")).sorted().toList();
		}
		List<Plugin> plugins = new ArrayList<>();
		for (Path jar : jars) {
			takeOffSignatures(jar);
			plugins.add(Plugin.of(jar));
		}
		writeCommands(product.resolve("commands.jar"), needed(plugins));
	}

	/** All that commands require, by names of plug-ins and packages, nearest first, each with its fragments. */
	private static List<Plugin> needed(List<Plugin> plugins) throws IOException {
		Map<String, Plugin> byName = new HashMap<>();
		Map<String, Plugin> byPackage = new HashMap<>();
		Map<String, List<Plugin>> fragments = new HashMap<>();
		for (Plugin plugin : plugins) {
			byName.put(plugin.name(), plugin);
			plugin.clauses("Export-Package").forEach(exported -> byPackage.putIfAbsent(exported, plugin));
			plugin.clauses("Fragment-Host").forEach(host ->
					fragments.computeIfAbsent(host, unknown -> new ArrayList<>()).add(plugin));
		}
		if (!byName.containsKey(COMMANDS)) {
			throw new IOException("no plug-in " + COMMANDS);
		}
		Set<Plugin> needed = new LinkedHashSet<>();
		Deque<Plugin> open = new ArrayDeque<>(List.of(byName.get(COMMANDS)));
		while (!open.isEmpty()) {
			Plugin plugin = open.remove();
			if (needed.add(plugin)) {
				plugin.clauses("Require-Bundle").stream().filter(byName::containsKey).map(byName::get).forEach(open::add);
				plugin.clauses("Import-Package").stream().filter(byPackage::containsKey).map(byPackage::get)
						.forEach(open::add);
				open.addAll(fragments.getOrDefault(plugin.name(), List.of()));
			}
		}
		return List.copyOf(needed);
	}

	private static void writeCommands(Path file, List<Plugin> path) throws IOException {
		Manifest manifest = new Manifest();
		Attributes main = manifest.getMainAttributes();
		main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
		main.put(Attributes.Name.MAIN_CLASS, MAIN);
		main.put(Attributes.Name.CLASS_PATH, path.stream().map(plugin -> PLUGINS + "/" + plugin.file().getFileName())
				.collect(Collectors.joining(" ")));
		try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(file))) {
			put(jar, JarFile.MANIFEST_NAME, TIME);
			manifest.write(jar);
		}
	}

	private static void takeOffSignatures(Path jar) throws IOException {
		Path unsigned = jar.resolveSibling(jar.getFileName() + ".unsigned");
		try (ZipFile old = new ZipFile(jar.toFile())) {
			List<? extends ZipEntry> entries = old.stream().toList();
			if (entries.stream().noneMatch(FinishProduct::isSignature)) {
				return;
			}
			try (ZipOutputStream copy = new ZipOutputStream(Files.newOutputStream(unsigned))) {
				for (ZipEntry entry : entries) {
					if (!isSignature(entry)) {
						copy(old, entry, copy);
					}
				}
			}
		}
		Files.move(unsigned, jar, StandardCopyOption.REPLACE_EXISTING);
	}

	private static boolean isSignature(ZipEntry entry) {
		return entry.getName().matches("META-INF/[^/]*\\.(SF|RSA|DSA|EC)");
	}

	private static void copy(ZipFile from, ZipEntry entry, ZipOutputStream to) throws IOException {
		put(to, entry.getName(), entry.getTimeLocal());
		try (InputStream content = from.getInputStream(entry)) {
			if (entry.getName().equals(JarFile.MANIFEST_NAME)) {
				writeWithoutDigests(new Manifest(content), to);
			} else {
				content.transferTo(to);
			}
		}
	}

	private static void put(ZipOutputStream jar, String name, LocalDateTime time) throws IOException {
		ZipEntry entry = new ZipEntry(name);
		entry.setTimeLocal(time);
		jar.putNextEntry(entry);
	}

	private static void writeWithoutDigests(Manifest manifest, OutputStream to) throws IOException {
		manifest.getEntries().values().forEach(entry -> entry.keySet().removeIf(name -> name.toString().endsWith("-Digest")));
		manifest.getEntries().values().removeIf(Attributes::isEmpty);
		manifest.write(to);
	}
}
