package padwright.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import padwright.language.shop.ShopFolder;

/**
 * The documents of a git working tree as they would be committed. One that is to be removed is empty: it gives nothing.
 *
 * @param chosen the files with changes that are staged
 * @param removed the files that are staged to be removed
 * @param texts what is staged of these, and of all other files whose working copy differs from what is staged
 * @param before as texts, but with what was committed last of the files with staged changes
 */
record StagedFiles(List<Path> chosen, List<Path> removed, Map<Path, String> texts, Map<Path, String> before) {

	private static final String NOTHING = "";
	private static final String STAGED = "--cached";

	/** Those of the repository around a folder. */
	static StagedFiles around(Path folder) {
		Path top = ShopFolder.real(Path.of(git(folder, "rev-parse", "--show-toplevel").strip()));
		List<Path> chosen = differing(top, "ACMT", STAGED);
		List<Path> removed = differing(top, "D", STAGED);
		List<Path> differing = differing(top, "MD");
		Map<Path, String> texts = new LinkedHashMap<>();
		differing.forEach(file -> texts.put(file, staged(top, file)));
		chosen.forEach(file -> texts.computeIfAbsent(file, missing -> staged(top, missing)));
		removed.forEach(file -> texts.put(file, NOTHING));
		Map<Path, String> before = new LinkedHashMap<>(texts);
		chosen.forEach(file -> before.put(file, NOTHING));
		differing(top, "MDT", STAGED).forEach(file -> before.put(file, shown(top, "HEAD", file)));
		return new StagedFiles(chosen, removed, texts, before);
	}

	/** All files with changes that are staged. */
	List<Path> changed() {
		return Stream.concat(chosen.stream(), removed.stream()).toList();
	}

	/** @param kinds of difference, in git's letters */
	private static List<Path> differing(Path top, String kinds, String... more) {
		List<String> command =
				new ArrayList<>(List.of("diff", "--name-only", "--no-renames", "-z", "--diff-filter=" + kinds));
		command.addAll(List.of(more));
		return documents(top, command.toArray(String[]::new));
	}

	private static List<Path> documents(Path top, String... command) {
		List<Path> documents = new ArrayList<>();
		for (String name : git(top, command).split("\0")) {
			if (!name.isEmpty() && ShopFolder.isDocument(Path.of(name))) {
				documents.add(top.resolve(name));
			}
		}
		return documents;
	}

	private static String staged(Path top, Path file) {
		return shown(top, NOTHING, file);
	}

	private static String shown(Path top, String commit, Path file) {
		return git(top, "show", commit + ":" + top.relativize(file).toString().replace('\\', '/'));
	}

	private static String git(Path folder, String... command) {
		List<String> words = new ArrayList<>(List.of("git"));
		words.addAll(List.of(command));
		try {
			Process git = new ProcessBuilder(words).directory(folder.toAbsolutePath().toFile())
					.redirectError(ProcessBuilder.Redirect.DISCARD).start();
			String answer = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
			if (git.waitFor() == 0) {
				return answer;
			}
		} catch (IOException noGit) {
			throw new InputException("git cannot be run, and --staged asks it what is staged; install git");
		} catch (InterruptedException stopped) {
			Thread.currentThread().interrupt();
		}
		throw new InputException("git does not know what is staged here; use --staged inside a working tree of git");
	}
}
