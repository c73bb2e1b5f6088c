package padwright.paper.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;

/** Something written into a page by a visitor, which cannot throw checked exceptions. */
interface PdfStep {

	void write() throws IOException;

	/** @throws UncheckedIOException if the step fails */
	static void run(PdfStep step) {
		try {
			step.write();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
