package padwright.commands;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import padwright.drawing.dxf.DxfWriter;
import padwright.drawing.scene.Scene;
import padwright.drawing.svg.SvgWriter;
import padwright.language.files.SafeFile;
import padwright.paper.pdf.PdfWriter;

/**
 * Writes pages as one PDF and an SVG for each, and tells the files.
 *
 * @param folder for the files, made if missing
 * @param out told each file
 */
record PageFiles(Path folder, PrintWriter out) {

	/** What a file is to hold. */
	private interface Content {

		byte[] bytes() throws IOException;
	}

	/**
	 * Writes {@code NAME.pdf}, {@code NAME-1.svg} and so on.
	 *
	 * @param title of the document
	 */
	void write(String name, String title, List<Scene> pages) {
		writePdf(name, title, pages);
		writeSvg(name, pages);
	}

	/** Writes {@code NAME.pdf}. */
	void writePdf(String name, String title, List<Scene> pages) {
		save(name + ".pdf", () -> pdf(title, pages));
	}

	/** Writes {@code NAME-1.svg} and so on. */
	void writeSvg(String name, List<Scene> pages) {
		for (int page = 0; page < pages.size(); page++) {
			Scene scene = pages.get(page);
			save(String.format(Locale.ROOT, "%s-%d.svg", name, page + 1), () -> svg(scene));
		}
	}

	/** Writes {@code NAME.dxf}. */
	void writeDxf(String name, Scene drawing) {
		save(name + ".dxf", () -> DxfWriter.write(drawing).getBytes(StandardCharsets.US_ASCII));
	}

	private void save(String name, Content content) {
		try {
			Files.createDirectories(folder);
			Path target = folder.resolve(name);
			SafeFile.write(target, content.bytes());
			out.println(ShownPath.of(target));
		} catch (IOException failed) {
			throw new InputException(folder, "cannot take the files: " + Reasons.of(failed));
		}
	}

	private static byte[] pdf(String title, List<Scene> pages) throws IOException {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfWriter.write(pdf, title, pages);
		return pdf.toByteArray();
	}

	private static byte[] svg(Scene page) {
		StringWriter svg = new StringWriter();
		SvgWriter.write(svg, page);
		return svg.toString().getBytes(StandardCharsets.UTF_8);
	}
}
