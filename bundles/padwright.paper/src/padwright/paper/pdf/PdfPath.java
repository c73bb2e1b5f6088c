package padwright.paper.pdf;

import org.apache.pdfbox.pdmodel.PDPageContentStream;

import padwright.drawing.scene.PathSink;

/** Traces outlines into the content of a page. */
final class PdfPath implements PathSink {

	private final PDPageContentStream content;

	PdfPath(PDPageContentStream content) {
		this.content = content;
	}

	@Override
	public void moveTo(double x, double y) {
		PdfStep.run(() -> content.moveTo((float) x, (float) y));
	}

	@Override
	public void lineTo(double x, double y) {
		PdfStep.run(() -> content.lineTo((float) x, (float) y));
	}

	@Override
	public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		PdfStep.run(() -> content.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x, (float) y));
	}

	@Override
	public void close() {
		PdfStep.run(content::closePath);
	}
}
