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

	@ParameterizedTest
	@MethodSource("palettes")
	void everyColourIsReadOnItsGround(Palette palette) {
		for (Ink ink : List.of(palette.ink(), palette.quiet(), palette.unread(), palette.read(), palette.solved(),
				palette.done(), palette.warning(), palette.error(), palette.accent(), palette.proposal())) {
			double contrast = Contrast.between(ink, palette.ground());
			assertTrue(contrast >= Contrast.OF_TEXT, ink + " has " + contrast);
		}
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
