package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

import padwright.drawing.scene.Scene;
import padwright.paper.page.PaperSize;
import picocli.CommandLine.Option;

/** What every command that draws pages is asked: where to, and on which paper. */
final class PaperOptions {

	@Option(names = { "-o", "--output" }, paramLabel = "DIR", defaultValue = ".",
			description = "Folder for the files, made if missing (default: the working directory).")
	private Path folder;

	@Option(names = "--paper", defaultValue = "A4", description = "A4 or Letter (default ${DEFAULT-VALUE}).")
	private PaperSize paper;

	PaperSize paper() {
		return paper;
	}

	/** Writes the pages as {@code NAME.pdf} and an SVG for each, and tells the files. */
	void write(String name, String title, List<Scene> pages, PrintWriter out) {
		files(out).write(name, title, pages);
	}

	PageFiles files(PrintWriter out) {
		return new PageFiles(folder, out);
	}
}
