package padwright.paper.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import padwright.drawing.scene.Circle;
import padwright.drawing.scene.Rectangle;
import padwright.drawing.scene.Scene;
import padwright.engine.pitch.NoteName;
import padwright.paper.page.HeadText;
import padwright.paper.page.PageFact;
import padwright.paper.page.PaperSize;
import padwright.paper.page.PlacedShapes;
import padwright.paper.pdf.PdfText;

class SoundPagesTest {

	/** Three octaves, each note a cent higher than the one before, and one further fingering. */
	private static SoundSheet sheet() {
		List<SoundMark> marks = new ArrayList<>();
		for (int step = 0; step < 36; step++) {
			marks.add(mark(60 + step, true, step - 18));
		}
		marks.add(mark(70, false, 30));
		return new SoundSheet(new HeadText("A flute", "", "How it sounds", List.of(new PageFact("Pitch", "A 440 Hz"))),
				"How it sounds", marks);
	}

	private static SoundMark mark(int midi, boolean usual, double cents) {
		return new SoundMark(NoteName.ofMidi(midi).toString(), midi, midi / 12 - 4, usual, Optional.of(cents),
				Optional.of(6.0));
	}

	@Test
	void aDotForEachFingeringRisesWithItsCents() {
		List<Scene> pages = new SoundPages(sheet(), PaperSize.A4).pages();
		assertEquals(1, pages.size());
		List<PlacedShapes.Placed<Circle>> dots = PlacedShapes.in(pages.get(0), Circle.class);
		assertEquals(37, dots.size());
		List<PlacedShapes.Placed<Circle>> usual = dots.stream().filter(dot -> dot.shape().radius() > 1)
				.sorted(Comparator.comparingDouble(SoundPagesTest::x)).toList();
		assertEquals(36, usual.size());
		double rise = y(usual.get(0)) - y(usual.get(1));
		assertTrue(rise > 0.5, "a cent is seen: " + rise);
		for (int index = 1; index < usual.size(); index++) {
			assertEquals(rise, y(usual.get(index - 1)) - y(usual.get(index)), 1e-9);
			assertEquals(x(usual.get(1)) - x(usual.get(0)), x(usual.get(index)) - x(usual.get(index - 1)), 1e-9);
		}
		PlacedShapes.Placed<Circle> other = dots.stream().filter(dot -> dot.shape().radius() <= 1).findFirst().orElseThrow();
		assertEquals(x(usual.get(10)), x(other), 1e-9);
		assertEquals(30 - (10 - 18), (y(usual.get(10)) - y(other)) / rise, 1e-6);
		assertEquals(36 + 1, PlacedShapes.in(pages.get(0), Rectangle.class).size(), "a bar for each, and the band");
	}

	private static double x(PlacedShapes.Placed<Circle> dot) {
		return dot.x(dot.shape().x(), dot.shape().y());
	}

	private static double y(PlacedShapes.Placed<Circle> dot) {
		return dot.y(dot.shape().x(), dot.shape().y());
	}

	@ParameterizedTest
	@EnumSource(PaperSize.class)
	void everyNoteIsNamedWithinThePage(PaperSize paper) throws IOException {
		byte[] pdf = PdfText.write("Sound", new SoundPages(sheet(), paper).pages());
		String text = PdfText.ofPage(pdf, 1);
		for (String expected : List.of("C4", "A♯5", "B6", "octave 3", "+30", "-30", "without a player", "page 1 of 1")) {
			assertTrue(text.contains(expected), expected + " in " + text);
		}
		assertEquals(List.of(), PdfText.outside(pdf, 9.9).stream().limit(5).toList());
		assertEquals(List.of(), PdfText.overlapping(pdf).stream().limit(5).toList());
	}

	@Test
	void nothingToShowIsRefused() {
		assertThrows(IllegalArgumentException.class,
				() -> new SoundSheet(new HeadText("A flute", "", "", List.of()), "", List.of()));
	}
}
