package padwright.workbench.papers;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import padwright.drawing.dxf.DxfWriter;
import padwright.drawing.scene.Scene;
import padwright.paper.pdf.PdfWriter;

/**
 * A drawn paper.
 *
 * @param name of its file, without an ending
 * @param title as the paper says
 * @param scenes one a page, in millimetres
 * @param drawing in life size for drawing programs, if it has one
 */
record Pages(String name, String title, List<Scene> scenes, Optional<Scene> drawing) {

	/** A paper for print alone. */
	Pages(String name, String title, List<Scene> scenes) {
		this(name, title, scenes, Optional.empty());
	}

	Pages {
		scenes = List.copyOf(scenes);
	}

	byte[] pdf() throws IOException {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfWriter.write(pdf, title, scenes);
		return pdf.toByteArray();
	}

	/** @throws java.util.NoSuchElementException if it has no drawing */
	byte[] dxf() {
		return DxfWriter.write(drawing.orElseThrow()).getBytes(StandardCharsets.US_ASCII);
	}
}
