package padwright.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import padwright.language.shop.ShopFolder;

/**
 * The documents of a git working tree as they would be committed.
 *
 * @param chosen the files with changes that are staged
 * @param texts what is staged of these, and of all other files whose working copy differs from what is staged
 */
record StagedFiles(List<Path> chosen, Map<Path, String> texts) {

	/** Those of the repository around a folder. */
	static StagedFiles around(Path folder) {
		Path top = ShopFolder.real(Path.of(git(folder, "rev-parse", "--show-toplevel").strip()));
		List<Path> chosen = documents(top, "diff", "--cached", "--name-only", "--diff-filter=ACMR", "-z");
		List<Path> differing = documents(top, "diff", "--name-only", "--diff-filter=MD", "-z");
		Map<Path, String> texts = new LinkedHashMap<>();
		differing.forEach(file -> texts.put(file, staged(top, file)));
		chosen.forEach(file -> texts.computeIfAbsent(file, missing -> staged(top, missing)));
		return new StagedFiles(chosen, texts);
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
		return git(top, "show", ":" + top.relativize(file).toString().replace('\\', '/'));
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
