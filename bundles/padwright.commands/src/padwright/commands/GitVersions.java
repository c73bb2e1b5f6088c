package padwright.commands;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;
import padwright.workup.compare.PlanComparison;

/**
 * Two versions of one plan as git hands them to a diff driver.
 *
 * @param path of the plan in the working tree, whether or not it is there
 * @param old a file with the earlier text; not a regular one where the plan is new
 * @param current a file with the later text; not a regular one where the plan was taken away
 */
record GitVersions(Path path, Path old, Path current) {

	/** Behind path and old version: its name and mode in git, the new version, its name and mode. */
	private static final int BEHIND = 5;
	private static final int CURRENT = 2;

	static GitVersions of(Path path, Path old, List<String> behind) {
		if (behind.size() < BEHIND) {
			throw new InputException("--git goes with the seven arguments that git gives a diff driver");
		}
		return new GitVersions(path, old, Path.of(behind.get(CURRENT)));
	}

	/** Never fails: git would stop showing what else differs. */
	int print(PrintWriter out) {
		out.println("padwright compare " + path);
		if (!Files.isRegularFile(old) || !Files.isRegularFile(current)) {
			out.println(Files.isRegularFile(old) ? "- taken away" : "+ new");
			return ExitStatus.CLEAN;
		}
		try {
			PrintWriter nobody = new PrintWriter(new StringWriter());
			ComparisonText.print(out, PlanComparison.of(solved(old, nobody).solution(),
					solved(current, nobody).solution()));
		} catch (UnreadableException | InputException reason) {
			out.println("cannot be compared as a plan: " + reason.getMessage() + "; see git diff --no-ext-diff");
		}
		return ExitStatus.CLEAN;
	}

	private SolvedPlan solved(Path version, PrintWriter err) throws UnreadableException {
		Path place = ShopFolder.real(path);
		return SolvedPlan.in(LoadedShop.around(List.of(place), Map.of(place, SourceText.read(version))).get(0), err);
	}
}
