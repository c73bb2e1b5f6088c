package padwright.workbench.papers;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import padwright.drawing.scene.Scene;
import padwright.paper.pdf.PdfWriter;

/**
 * A drawn paper.
 *
 * @param name of its file, without an ending
 * @param title as the paper says
 * @param scenes one a page, in millimetres
 */
record Pages(String name, String title, List<Scene> scenes) {

	Pages {
		scenes = List.copyOf(scenes);
	}

	byte[] pdf() throws IOException {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfWriter.write(pdf, title, scenes);
		return pdf.toByteArray();
	}
}
