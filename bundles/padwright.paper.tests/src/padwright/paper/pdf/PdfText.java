package padwright.paper.pdf;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

import padwright.drawing.scene.Scene;

/** Documents read back, for tests. */
public final class PdfText {

	private PdfText() {
	}

	public static byte[] write(String title, List<Scene> pages) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try {
			PdfWriter.write(out, title, pages);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return out.toByteArray();
	}

	/** The text of one page, from 1, as a reader extracts it. */
	public static String ofPage(byte[] pdf, int page) throws IOException {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			PDFTextStripper stripper = new PDFTextStripper();
			stripper.setStartPage(page);
			stripper.setEndPage(page);
			return stripper.getText(document);
		}
	}

	/** Every glyph that lies partly outside the printable part of its page, {@code margin} mm from its edges. */
	public static List<String> outside(byte[] pdf, double margin) throws IOException {
		double edge = margin * 72 / 25.4;
		List<String> strays = new ArrayList<>();
		for (List<TextPosition> page : glyphs(pdf)) {
			for (TextPosition glyph : page) {
				boolean inside = glyph.getX() >= edge && glyph.getY() - glyph.getHeight() >= edge
						&& glyph.getX() + glyph.getWidth() <= glyph.getPageWidth() - edge
						&& glyph.getY() <= glyph.getPageHeight() - edge;
				if (!inside) {
					strays.add(describe(glyph));
				}
			}
		}
		return strays;
	}

	/** From the start of the first glyph to the end of the last of a document of one line, in points. */
	public static double lengthOfLine(byte[] pdf) throws IOException {
		List<TextPosition> line = glyphs(pdf).get(0);
		TextPosition last = line.get(line.size() - 1);
		return last.getX() + last.getWidth() - line.get(0).getX();
	}

	/** Every pair of glyphs, blanks aside, that lie over one another by more than a side bearing. */
	public static List<String> overlapping(byte[] pdf) throws IOException {
		List<String> pairs = new ArrayList<>();
		for (List<TextPosition> page : glyphs(pdf)) {
			for (int i = 0; i < page.size(); i++) {
				for (int j = i + 1; j < page.size(); j++) {
					if (core(page.get(i)).intersects(core(page.get(j)))) {
						pairs.add(describe(page.get(i)) + " and " + describe(page.get(j)));
					}
				}
			}
		}
		return pairs;
	}

	private static Rectangle2D core(TextPosition glyph) {
		double width = glyph.getWidth() * 0.8;
		double height = glyph.getHeight() * 0.9;
		return new Rectangle2D.Double(glyph.getX() + glyph.getWidth() * 0.1, glyph.getY() - height, width, height);
	}

	private static String describe(TextPosition glyph) {
		return glyph + " at " + glyph.getX() + ", " + glyph.getY();
	}

	private static List<List<TextPosition>> glyphs(byte[] pdf) throws IOException {
		List<List<TextPosition>> pages = new ArrayList<>();
		try (PDDocument document = Loader.loadPDF(pdf)) {
			new PDFTextStripper() {
				@Override
				protected void startPage(PDPage page) {
					pages.add(new ArrayList<>());
				}

				@Override
				protected void processTextPosition(TextPosition glyph) {
					if (!glyph.getUnicode().isBlank()) {
						pages.get(pages.size() - 1).add(glyph);
					}
				}
			}.getText(document);
		}
		return pages;
	}
}
