package padwright.paper.pdf;

import java.io.IOException;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

import padwright.drawing.scene.Anchor;
import padwright.drawing.scene.Text;

/**
 * Marks the content of one page: lines of text as paragraphs and headings, drawings with a description as figures, and
 * all other drawings as what carries no meaning. Lines of one face and size that follow one another at one left edge
 * are one paragraph.
 */
final class PdfMarks {

	private static final COSName PARAGRAPH = COSName.getPDFName("P");
	private static final COSName TITLE = COSName.getPDFName("H1");
	private static final COSName HEADING = COSName.getPDFName("H2");
	private static final COSName FIGURE = COSName.getPDFName("Figure");
	/** Bold text from these sizes on, mm, is a heading. */
	private static final double TITLE_SIZE = 6;
	private static final double HEADING_SIZE = 4;

	private final PDPageContentStream content;
	private final PdfTags tags;
	private Text lineBefore;
	private PDStructureElement paragraph;
	private boolean insideFigure;

	PdfMarks(PDPageContentStream content, PdfTags tags) {
		this.content = content;
		this.tags = tags;
	}

	/** Writes a line of text. */
	void text(Text line, PdfStep writing) throws IOException {
		if (insideFigure) {
			writing.write();
			return;
		}
		COSName type = type(line);
		if (lineBefore == null || !continues(line)) {
			paragraph = tags.element(type);
		}
		lineBefore = line;
		content.beginMarkedContent(type, tags.mark(paragraph));
		writing.write();
		content.endMarkedContent();
	}

	private boolean continues(Text line) {
		return line.anchor() == Anchor.START && line.x() == lineBefore.x() && line.size() == lineBefore.size()
				&& line.face() == lineBefore.face() && line.baseline() > lineBefore.baseline()
				&& line.baseline() < lineBefore.baseline() + 2 * line.size();
	}

	private static COSName type(Text line) {
		if (!line.face().isBold() || line.size() < HEADING_SIZE) {
			return PARAGRAPH;
		}
		return line.size() < TITLE_SIZE ? HEADING : TITLE;
	}

	/** Writes a drawing that says nothing by itself. */
	void artifact(PdfStep writing) throws IOException {
		if (insideFigure) {
			writing.write();
			return;
		}
		content.beginMarkedContent(COSName.ARTIFACT);
		writing.write();
		content.endMarkedContent();
	}

	/** Writes a drawing with the words that stand for it. */
	void figure(String description, PdfStep writing) throws IOException {
		if (insideFigure) {
			writing.write();
			return;
		}
		insideFigure = true;
		lineBefore = null;
		PDStructureElement figure = tags.element(FIGURE);
		figure.setAlternateDescription(description);
		content.beginMarkedContent(FIGURE, tags.mark(figure));
		writing.write();
		content.endMarkedContent();
		insideFigure = false;
	}

	/** Text after this begins a paragraph. */
	void endParagraph() {
		lineBefore = null;
	}
}
