package padwright.drawing.font;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalMetricsTable;
import org.apache.fontbox.ttf.TrueTypeFont;

import padwright.drawing.scene.Face;
import padwright.drawing.scene.FontMetrics;

/** Widths read from the font files themselves: the same on every machine, with a display or without. */
public final class DejaVuMetrics implements FontMetrics {

	private static final Map<Face, Advances> ADVANCES = new EnumMap<>(Face.class);

	@Override
	public double width(String text, Face face, double size) {
		Advances advances = advances(face);
		long units = text.codePoints().mapToLong(advances::of).sum();
		return size * units / advances.unitsPerEm();
	}

	@Override
	public boolean hasGlyph(int codePoint, Face face) {
		return advances(face).glyphs().getGlyphId(codePoint) != 0;
	}

	private static Advances advances(Face face) {
		synchronized (ADVANCES) {
			return ADVANCES.computeIfAbsent(face, DejaVuMetrics::read);
		}
	}

	private static Advances read(Face face) {
		try (TrueTypeFont font = DejaVu.parse(face)) {
			return new Advances(font.getUnicodeCmapLookup(), font.getHorizontalMetrics(), font.getUnitsPerEm());
		} catch (IOException e) {
			throw new UncheckedIOException("the font of face " + face + " cannot be read", e);
		}
	}

	private record Advances(CmapLookup glyphs, HorizontalMetricsTable table, int unitsPerEm) {

		int of(int codePoint) {
			return table.getAdvanceWidth(glyphs.getGlyphId(codePoint));
		}
	}
}
