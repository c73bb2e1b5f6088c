package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** By simulation: the pitches of a known flute are aimed at from another one. */
class LayoutFitTest {

	private static final Layout TRUE = Tubes.sevenHoles();
	private static final List<TargetNote> NOTES = notes();

	/** Places off by up to 3 mm and diameters by up to 0.3 mm. */
	@Test
	void aFluteOutOfTuneIsBroughtInTune() {
		for (long seed = 1; seed <= 3; seed++) {
			Layout start = spoilt(seed);
			LayoutFit fit = LayoutFit.of(start, Tubes.TWENTY, NOTES, limits(start, 0.006, 0.001));
			assertTrue(worst(fit.before()) > 6, "cents before " + worst(fit.before()));
			assertTrue(worst(fit.after()) < 0.5, "cents after " + worst(fit.after()));
			assertEquals(fit.changes().keySet(), limits(start, 0.006, 0.001).keySet());
			fit.changes().forEach((dimension, change) -> assertEquals(fit.layout().dimensions().get(dimension),
					start.dimensions().get(dimension) + change, 1e-12));
		}
	}

	/** What was not free stays, and nothing goes beyond its limits. */
	@Test
	void limitsAreKept() {
		Layout start = spoilt(4);
		Map<Dimension, Limits> narrow = limits(start, 0.0005, 0.0001);
		LayoutFit fit = LayoutFit.of(start, Tubes.TWENTY, NOTES, narrow);
		assertTrue(worst(fit.after()) < worst(fit.before()) && worst(fit.after()) > 0.5);
		fit.layout().dimensions().forEach((dimension, size) -> {
			Limits within = narrow.get(dimension);
			assertEquals(within == null ? start.dimensions().get(dimension) : within.within(size), size);
		});
		assertTrue(narrow.entrySet().stream().anyMatch(entry -> {
			double size = fit.layout().dimensions().get(entry.getKey());
			return size == entry.getValue().least() || size == entry.getValue().most();
		}));
	}

	/** A flute in tune is left as it is. */
	@Test
	void nothingChangesWithoutNeed() {
		LayoutFit fit = LayoutFit.of(TRUE, Tubes.TWENTY, NOTES, limits(TRUE, 0.006, 0.001));
		fit.changes().values().forEach(change -> assertEquals(0, change, 1e-8));
	}

	/** One size, one note: what halving finds, but for the hundredth that what a change counts takes back. */
	@Test
	void oneHoleForOneNote() {
		Dimension place = new Dimension(Dimension.Part.HOLE, "7", Measure.PLACE);
		TargetNote note = new TargetNote("", 285, Tubes.fingering("xxxxxxo"));
		LayoutFit fit = LayoutFit.of(TRUE, Tubes.TWENTY, List.of(note), Map.of(place, new Limits(0.52, 0.56)));
		double low = 0.52;
		double high = 0.56;
		while (high - low > 1e-7) {
			double middle = (low + high) / 2;
			Layout moved = TRUE.with(Map.of(place, middle));
			double cents = new Instrument(moved, Tubes.TWENTY).sound(note).cents().orElseThrow();
			low = cents > 0 ? middle : low;
			high = cents > 0 ? high : middle;
		}
		assertEquals(low, fit.layout().holes().get(6).place(), 1e-4);
	}

	@Test
	void impossibleLimitsAreRefused() {
		Dimension place = new Dimension(Dimension.Part.HOLE, "2", Measure.PLACE);
		refuses("go past", Map.of(place, new Limits(0.2, 0.32)));
		refuses("must be", Map.of(place, new Limits(0.31, 0.32)));
		refuses("dimensions that the layout has", Map.of(new Dimension(Dimension.Part.HOLE, "8", Measure.PLACE),
				new Limits(0.31, 0.32)));
		refuses("dimensions that the layout has", Map.of());
		assertThrows(IllegalArgumentException.class, () -> new Limits(1, 1));
	}

	private static void refuses(String said, Map<Dimension, Limits> free) {
		String message = assertThrows(IllegalArgumentException.class,
				() -> LayoutFit.of(TRUE, Tubes.TWENTY, NOTES, free)).getMessage();
		assertTrue(message.contains(said), message);
	}

	private static List<TargetNote> notes() {
		Instrument flute = new Instrument(TRUE, Tubes.TWENTY);
		return Stream.of("xxxxxxx 260", "xxxxxxo 283", "xxxxxoo 310", "xxxxooo 345", "xxxoooo 380", "xxooooo 430",
				"xoooooo 480", "ooooooo 535", "xxxxxxx 529", "xxxxxxo 576", "xxxxooo 701").map(text -> {
					Fingering fingering = Tubes.fingering(text.split(" ")[0]);
					double about = Double.parseDouble(text.split(" ")[1]);
					double exact = flute.sound(new TargetNote(text, about, fingering)).played().orElseThrow().hertz();
					return new TargetNote(text, exact, fingering);
				}).toList();
	}

	private static Layout spoilt(long seed) {
		SplittableRandom random = new SplittableRandom(seed);
		Map<Dimension, Double> spoilt = new HashMap<>();
		TRUE.dimensions().forEach((dimension, size) -> {
			if (isFree(dimension)) {
				double most = dimension.measure() == Measure.PLACE ? 0.003 : 0.0003;
				spoilt.put(dimension, size + random.nextDouble(-most, most));
			}
		});
		return TRUE.with(spoilt);
	}

	private static Map<Dimension, Limits> limits(Layout layout, double place, double diameter) {
		Map<Dimension, Limits> limits = new LinkedHashMap<>();
		layout.dimensions().forEach((dimension, size) -> {
			if (isFree(dimension)) {
				double most = dimension.measure() == Measure.PLACE ? place : diameter;
				limits.put(dimension, new Limits(size - most, size + most));
			}
		});
		return limits;
	}

	private static boolean isFree(Dimension dimension) {
		boolean isOfHole = dimension.part() == Dimension.Part.HOLE
				&& List.of(Measure.PLACE, Measure.DIAMETER).contains(dimension.measure());
		return isOfHole || dimension.equals(new Dimension(Dimension.Part.BORE, "3", Measure.PLACE));
	}

	private static double worst(List<NoteSound> sounds) {
		return sounds.stream().mapToDouble(sound -> Math.abs(sound.cents().orElseThrow())).max().orElseThrow();
	}
}
