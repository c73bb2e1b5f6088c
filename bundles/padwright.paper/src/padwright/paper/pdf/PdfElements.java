package padwright.paper.pdf;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Drawn;
import padwright.drawing.scene.ElementVisitor;
import padwright.drawing.scene.Fill;
import padwright.drawing.scene.Geometry;
import padwright.drawing.scene.Group;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.Line;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.drawing.scene.Text;
import padwright.drawing.scene.Transform;

/** Writes each element into the content of a page whose unit is the millimetre, y down. */
final class PdfElements implements ElementVisitor {

	private static final int ROUND_JOIN = 1;

	private final PDDocument document;
	private final PDPageContentStream content;
	private final PdfFonts fonts;
	private final PdfMarks marks;

	PdfElements(PDDocument document, PDPageContentStream content, PdfFonts fonts, PdfTags tags) {
		this.document = document;
		this.content = content;
		this.fonts = fonts;
		this.marks = new PdfMarks(content, tags);
	}

	@Override
	public void visit(Drawn drawn) {
		PdfStep.run(() -> marks.artifact(() -> draw(drawn)));
	}

	private void draw(Drawn drawn) throws IOException {
		if (drawn.style().fill().isPresent()) {
			fill(drawn.style().fill().get(), drawn.geometry());
		}
		if (drawn.style().stroke().isPresent()) {
			stroke(drawn.style().stroke().get(), drawn.geometry());
		}
	}

	private void fill(Fill fill, Geometry geometry) throws IOException {
		if (fill instanceof SolidFill solid) {
			fill(solid.ink(), geometry);
		} else if (fill instanceof Hatch hatch) {
			hatch(hatch, geometry);
		}
	}

	private void fill(Ink ink, Geometry geometry) throws IOException {
		content.setNonStrokingColor(part(ink.red()), part(ink.green()), part(ink.blue()));
		geometry.trace(new PdfPath(content));
		content.fillEvenOdd();
	}

	private void hatch(Hatch hatch, Geometry geometry) throws IOException {
		fill(Ink.WHITE, geometry);
		content.saveGraphicsState();
		geometry.trace(new PdfPath(content));
		content.clipEvenOdd();
		pen(hatch.lines());
		for (Line line : hatch.over(geometry.bounds())) {
			line.trace(new PdfPath(content));
		}
		content.stroke();
		content.restoreGraphicsState();
	}

	private void stroke(Stroke stroke, Geometry geometry) throws IOException {
		pen(stroke);
		geometry.trace(new PdfPath(content));
		content.stroke();
	}

	private void pen(Stroke stroke) throws IOException {
		Ink ink = stroke.ink();
		content.setStrokingColor(part(ink.red()), part(ink.green()), part(ink.blue()));
		content.setLineWidth((float) stroke.width());
		content.setLineJoinStyle(ROUND_JOIN);
		content.setLineDashPattern(stroke.dashArray(), 0);
	}

	private static float part(int component) {
		return component / 255f;
	}

	@Override
	public void visit(Text text) {
		if (text.text().isEmpty()) {
			return;
		}
		PdfStep.run(() -> marks.text(text, () -> write(text)));
	}

	private void write(Text text) throws IOException {
		double left = text.x() - text.anchor().fraction() * fonts.metrics().width(text);
		Ink ink = text.ink();
		content.setNonStrokingColor(part(ink.red()), part(ink.green()), part(ink.blue()));
		content.beginText();
		content.setFont(fonts.of(text.face()), (float) text.size());
		content.setTextMatrix(new Matrix(1, 0, 0, -1, (float) left, (float) text.baseline()));
		content.showText(fonts.drawable(text.text(), text.face()));
		content.endText();
	}

	@Override
	public void visit(Picture picture) {
		PdfStep.run(() -> marks.artifact(() -> draw(picture)));
	}

	/** The page's y goes down and an image's up. */
	private void draw(Picture picture) throws IOException {
		Bounds bounds = picture.bounds();
		PDImageXObject image = PDImageXObject.createFromByteArray(document, picture.data().file(), "");
		content.drawImage(image, new Matrix((float) bounds.width(), 0, 0, (float) -bounds.height(),
				(float) bounds.left(), (float) bounds.bottom()));
	}

	@Override
	public void visit(Group group) {
		PdfStep.run(() -> {
			if (group.tooltip().isPresent()) {
				marks.figure(group.tooltip().get(), () -> draw(group));
			} else {
				draw(group);
			}
		});
	}

	private void draw(Group group) throws IOException {
		Transform map = group.transform();
		content.saveGraphicsState();
		content.transform(new Matrix((float) map.xx(), (float) map.yx(), (float) map.xy(), (float) map.yy(),
				(float) map.dx(), (float) map.dy()));
		marks.endParagraph();
		group.elements().forEach(element -> element.accept(this));
		marks.endParagraph();
		content.restoreGraphicsState();
	}
}
