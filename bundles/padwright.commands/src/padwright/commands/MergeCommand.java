package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import padwright.language.files.SafeFile;
import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;
import padwright.language.merge.DocumentMerge;
import padwright.language.merge.MergeResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Merges two edited copies of a document. */
@Command(name = "merge", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:merged", "1:merged, with conflicts marked in OURS",
				"2:a file cannot be used at all; OURS is as it was" },
		description = "Merges two edited copies of a document by its rows and their clauses, not by its lines, and "
				+ "writes the result over OURS. For git: git config merge.padwright.driver "
				+ "'padwright merge %%O %%A %%B %%P', and in .gitattributes: *.plan merge=padwright")
final class MergeCommand implements Callable<Integer> {

	@Parameters(index = "0", paramLabel = "BASE", description = "What both copies were made from.")
	private Path base;

	@Parameters(index = "1", paramLabel = "OURS", description = "The first copy, which is written over.")
	private Path ours;

	@Parameters(index = "2", paramLabel = "THEIRS", description = "The second copy.")
	private Path theirs;

	@Parameters(index = "3", arity = "0..1", paramLabel = "NAME", description = "What the document is called in "
			+ "messages, since git hands over copies by other names.")
	private Path name;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		String old = read(ours, "");
		MergeResult merged = Language.services().getInstance(DocumentMerge.class).merge(read(base, " as it was before"), old,
				read(theirs, " of the other side"));
		if (!merged.text().equals(old)) {
			write(merged.text());
		}
		tell(merged);
		return merged.conflicts() == 0 ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private String read(Path file, String which) {
		try {
			return SourceText.read(file);
		} catch (UnreadableException reason) {
			throw name == null ? new InputException(file, reason.getMessage())
					: new InputException(ShownPath.of(name) + which + " " + reason.getMessage());
		}
	}

	private String shown() {
		return ShownPath.of(name == null ? ours : name);
	}

	private void write(String merged) {
		try {
			SafeFile.write(ours, merged.getBytes(StandardCharsets.UTF_8));
		} catch (IOException failed) {
			throw new InputException(ours, "was not written: " + Reasons.of(failed));
		}
	}

	private void tell(MergeResult merged) {
		PrintWriter err = spec.commandLine().getErr();
		if (merged.byLine()) {
			err.println(shown() + " was merged by lines, since a copy has text that cannot be read");
		}
		if (merged.conflicts() > 0) {
			err.println(shown() + (merged.conflicts() == 1 ? " has a place" : " has " + merged.conflicts()
					+ " places") + " that both copies changed differently; check shows where");
		}
	}
}
