package padwright.drawing.font;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

import padwright.drawing.scene.Face;
import padwright.drawing.scene.PathSink;
import padwright.drawing.scene.Text;

/**
 * Text as outlines (nonzero winding), for screens that cannot be given a font file. Needs no display; safe for threads.
 */
public final class DejaVuOutlines {

	private static final Map<Face, DejaVuOutlines> FACES = new EnumMap<>(Face.class);

	private final TrueTypeFont font;
	private final CmapLookup characters;
	private final double unitsPerEm;
	private final Map<Integer, GeneralPath> glyphs = new HashMap<>();

	private DejaVuOutlines(Face face) {
		try {
			font = DejaVu.parse(face);
			characters = font.getUnicodeCmapLookup();
			unitsPerEm = font.getUnitsPerEm();
		} catch (IOException broken) {
			throw unreadable(broken);
		}
	}

	private static UncheckedIOException unreadable(IOException broken) {
		return new UncheckedIOException("a font of the installation cannot be read", broken);
	}

	/** Traces a line of text where it stands, its anchor taken into account. */
	public static void trace(Text text, PathSink sink) {
		double left = text.x() - text.anchor().fraction() * new DejaVuMetrics().width(text);
		synchronized (FACES) {
			FACES.computeIfAbsent(text.face(), DejaVuOutlines::new).trace(text, left, sink);
		}
	}

	private void trace(Text text, double left, PathSink sink) {
		double scale = text.size() / unitsPerEm;
		double x = left;
		for (int character : text.text().codePoints().toArray()) {
			int glyph = characters.getGlyphId(character);
			new Placed(sink, scale, x, text.baseline()).trace(glyphs.computeIfAbsent(glyph, this::outline));
			x += new DejaVuMetrics().width(Character.toString(character), text.face(), text.size());
		}
	}

	private GeneralPath outline(int glyph) {
		try {
			GlyphData data = font.getGlyph().getGlyph(glyph);
			return data == null ? new GeneralPath() : data.getPath();
		} catch (IOException broken) {
			throw unreadable(broken);
		}
	}

	/** One glyph at its place; its y runs up, the drawing's down. */
	private record Placed(PathSink sink, double scale, double left, double baseline) {

		void trace(GeneralPath outline) {
			double[] point = new double[6];
			double fromX = 0;
			double fromY = 0;
			for (PathIterator steps = outline.getPathIterator(null); !steps.isDone(); steps.next()) {
				int kind = steps.currentSegment(point);
				int last = switch (kind) {
				case PathIterator.SEG_CUBICTO -> 4;
				case PathIterator.SEG_QUADTO -> 2;
				default -> 0;
				};
				step(kind, point, fromX, fromY);
				if (kind != PathIterator.SEG_CLOSE) {
					fromX = point[last];
					fromY = point[last + 1];
				}
			}
		}

		private void step(int kind, double[] point, double fromX, double fromY) {
			switch (kind) {
			case PathIterator.SEG_MOVETO -> sink.moveTo(x(point[0]), y(point[1]));
			case PathIterator.SEG_LINETO -> sink.lineTo(x(point[0]), y(point[1]));
			case PathIterator.SEG_QUADTO -> sink.curveTo(x(third(fromX, point[0])), y(third(fromY, point[1])),
					x(third(point[2], point[0])), y(third(point[3], point[1])), x(point[2]), y(point[3]));
			case PathIterator.SEG_CUBICTO -> sink.curveTo(x(point[0]), y(point[1]), x(point[2]), y(point[3]),
					x(point[4]), y(point[5]));
			default -> sink.close();
			}
		}

		/** A cubic curve equals a quadratic one with its handles two thirds of the way to the control point. */
		private static double third(double end, double control) {
			return end + (control - end) * 2 / 3;
		}

		private double x(double units) {
			return left + units * scale;
		}

		private double y(double units) {
			return baseline - units * scale;
		}
	}
}
