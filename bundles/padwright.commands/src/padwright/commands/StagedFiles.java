package padwright.commands;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.commands.Git.Change;
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
	/** Git's letters for what is there now, what is gone, and what was there before. */
	private static final String THERE = "ACMT";
	private static final String GONE = "D";
	private static final String WAS_THERE = "MDT";
	private static final String WORKED_ON = "MD";

	/** Those of the repository around a folder. */
	static StagedFiles around(Path folder) {
		Git git = new Git(ShopFolder.real(new Git(folder).top()));
		List<Change> staged = documents(git.changes("--cached"));
		List<Change> differing = of(documents(git.changes()), WORKED_ON);
		Map<String, String> contents = git.texts(named(staged, differing));
		Map<Path, String> texts = new LinkedHashMap<>();
		differing.forEach(change -> texts.put(change.path(), contents.get(change.before())));
		of(staged, THERE).forEach(change -> texts.put(change.path(), contents.get(change.after())));
		of(staged, GONE).forEach(change -> texts.put(change.path(), NOTHING));
		Map<Path, String> before = new LinkedHashMap<>(texts);
		of(staged, THERE).forEach(change -> before.put(change.path(), NOTHING));
		of(staged, WAS_THERE).forEach(change -> before.put(change.path(), contents.get(change.before())));
		return new StagedFiles(paths(of(staged, THERE)), paths(of(staged, GONE)), texts, before);
	}

	/** All files with changes that are staged. */
	List<Path> changed() {
		return Stream.concat(chosen.stream(), removed.stream()).toList();
	}

	private static Set<String> named(List<Change> staged, List<Change> differing) {
		return Stream.of(of(staged, THERE).stream().map(Change::after), of(staged, WAS_THERE).stream().map(Change::before),
				differing.stream().map(Change::before)).flatMap(names -> names).collect(Collectors.toSet());
	}

	private static List<Change> documents(List<Change> changes) {
		return changes.stream().filter(change -> ShopFolder.isDocument(change.path())).toList();
	}

	private static List<Change> of(List<Change> changes, String kinds) {
		return changes.stream().filter(change -> kinds.indexOf(change.kind()) >= 0).toList();
	}

	private static List<Path> paths(List<Change> changes) {
		return changes.stream().map(Change::path).toList();
	}
}
