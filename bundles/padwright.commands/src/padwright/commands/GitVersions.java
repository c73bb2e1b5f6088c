package padwright.commands;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import padwright.language.merge.ChangedLines;
import padwright.language.shop.ShopFolder;
import padwright.workup.compare.PlanComparison;

/**
 * Two versions of one plan as git hands them to a diff driver.
 *
 * @param path of the plan in the working tree, whether or not it is there
 * @param old a file with the earlier text; not a regular one where the plan is new
 * @param current a file with the later text; not a regular one where the plan was taken away
 * @param newPath of the plan by its new name; the same where it was not renamed
 */
record GitVersions(Path path, Path old, Path current, Path newPath) {

	/** Behind path and old version: its name and mode in git, the new version, its name and mode, and a new path. */
	private static final int BEHIND = 5;
	private static final int CURRENT = 2;
	private static final int NEW_PATH = 5;

	static GitVersions of(Path path, Path old, List<String> behind) {
		if (behind.size() < BEHIND) {
			throw new InputException("--git goes with the seven arguments that git gives a diff driver");
		}
		return new GitVersions(path, old, Path.of(behind.get(CURRENT)),
				behind.size() > NEW_PATH ? Path.of(behind.get(NEW_PATH)) : path);
	}

	/** Never fails: git would stop showing what else differs. */
	int print(PrintWriter out) {
		out.println("padwright compare " + path + (newPath.equals(path) ? "" : " renamed to " + newPath));
		if (!Files.isRegularFile(old) || !Files.isRegularFile(current)) {
			out.println(Files.isRegularFile(old) ? "taken away" : "new");
			return ExitStatus.CLEAN;
		}
		try {
			PrintWriter nobody = new PrintWriter(new StringWriter());
			ComparisonText.print(out, PlanComparison.of(solved(old, path, nobody).solution(),
					solved(current, newPath, nobody).solution()));
		} catch (UnreadableException | InputException reason) {
			out.println("cannot be compared as a plan: " + reason.getMessage());
		}
		printLines(out);
		return ExitStatus.CLEAN;
	}

	/** Not all that is written in a plan is compared in trade words, and none of it must change unseen. */
	private void printLines(PrintWriter out) {
		try {
			String before = SourceText.read(old);
			String after = SourceText.read(current);
			if (!before.equals(after)) {
				List<String> lines = ChangedLines.of(before, after);
				out.println(lines.isEmpty() ? "only the ends of lines differ" : "Lines of the text, - as it was, + as it is:");
				lines.forEach(out::println);
			}
		} catch (UnreadableException noText) {
			out.println("see git diff --no-ext-diff");
		}
	}

	private static SolvedPlan solved(Path version, Path path, PrintWriter err) throws UnreadableException {
		Path place = ShopFolder.real(path);
		return SolvedPlan.in(LoadedShop.around(List.of(place), Map.of(place, SourceText.read(version))).get(0), err);
	}
}
