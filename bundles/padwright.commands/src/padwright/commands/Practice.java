package padwright.commands;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Runs most commands once on the example shop beside the program, so that Java has seen what they need. */
final class Practice {

	private static final PrintStream NOWHERE = new PrintStream(OutputStream.nullOutputStream());

	private Practice() {
	}

	public static void main(String[] arguments) throws IOException {
		Path scratch = Files.createTempDirectory("padwright-practice");
		try {
			Path shop = scratch.resolve("shop");
			copy(ClassArchive.home().resolve("examples").resolve("shop"), shop);
			commands(shop, scratch.resolve("papers")).forEach(command -> Main.run(command, NOWHERE, NOWHERE));
		} finally {
			delete(scratch);
		}
		System.exit(ExitStatus.CLEAN);
	}

	private static List<List<String>> commands(Path shop, Path papers) {
		String plan = shop.resolve("plans/first.plan").toString();
		String out = papers.toString();
		List<List<String>> commands = new ArrayList<>(List.of(List.of("--version"), List.of("--help"), List.of("check", "--help"),
				List.of("check", "--afresh", shop.toString()), List.of("check", "--json", "--afresh", plan),
				List.of("solve", plan), List.of("solve", "--json", plan), List.of("card", plan, "-o", out),
				List.of("film", plan, "-o", out), List.of("handback", plan, "-o", out), List.of("regulate", plan),
				List.of("leak", plan), List.of("drift", plan), List.of("quote", plan), List.of("compare", plan, plan),
				List.of("merge", plan, plan, plan), List.of("notes", shop.resolve("systems/one-key.keys").toString()),
				List.of("format", plan)));
		Stream.of("json", "csv", "xmi").forEach(form -> commands.add(List.of("export", plan, "--to", form, "-o", out)));
		return commands;
	}

	private static void copy(Path from, Path to) throws IOException {
		try (Stream<Path> files = Files.walk(from)) {
			for (Path file : files.toList()) {
				Files.copy(file, to.resolve(from.relativize(file).toString()));
			}
		}
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(file);
			}
		}
	}
}
