package padwright.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import padwright.drawing.scene.Ink;

class PaletteTest {

	static Stream<Palette> palettes() {
		return Stream.of(Palette.light(), Palette.dark());
	}

	/** Contrast ratio and its least for text, 4.5 : 1: W3C, Web Content Accessibility Guidelines 2.1, 1.4.3. */
	@ParameterizedTest
	@MethodSource("palettes")
	void everyColourIsReadOnItsGround(Palette palette) {
		for (Ink ink : List.of(palette.ink(), palette.quiet(), palette.unread(), palette.read(), palette.solved(),
				palette.done(), palette.warning(), palette.error(), palette.accent(), palette.proposal())) {
			double one = luminance(ink);
			double other = luminance(palette.ground());
			double contrast = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
			assertTrue(contrast >= 4.5, ink + " has " + contrast);
		}
	}

	private static double luminance(Ink ink) {
		return 0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
	}

	private static double linear(int component) {
		double share = component / 255.0;
		return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
	}

	@ParameterizedTest
	@MethodSource("palettes")
	void drawingsForPaperFollowTheTheme(Palette palette) {
		assertEquals(palette.ink(), palette.shown(Ink.BLACK));
		assertEquals(palette.ground(), palette.shown(Ink.WHITE));
		assertEquals(new Ink(200, 0, 0), palette.shown(new Ink(200, 0, 0)));
		assertEquals(palette.ground(), palette.tint(palette.error(), 0));
		assertEquals(palette.error(), palette.tint(palette.error(), 1));
	}

	@Test
	void darkIsLightOnDark() {
		assertTrue(Palette.dark().isDark());
		assertFalse(Palette.light().isDark());
	}
}
