package padwright.engine.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class LayoutTest {

	private static final List<BorePoint> BORE = List.of(Tubes.point(0, 19), Tubes.point(600, 19));

	@Test
	void aBoreNeedsPointsInOrder() {
		refuses("two points", () -> bore(Tubes.point(0, 19)));
		refuses("no step at its ends", () -> bore(Tubes.point(0, 19), Tubes.point(0, 18), Tubes.point(600, 18)));
		refuses("no step at its ends", () -> bore(Tubes.point(0, 19), Tubes.point(600, 18), Tubes.point(600, 17)));
		refuses("point 3", () -> bore(Tubes.point(0, 19), Tubes.point(300, 19), Tubes.point(200, 19),
				Tubes.point(600, 19)));
		refuses("more than two points", () -> bore(Tubes.point(0, 19), Tubes.point(300, 19), Tubes.point(300, 18),
				Tubes.point(300, 17), Tubes.point(600, 17)));
		refuses("diameter of the bore", () -> Tubes.point(0, 0));
	}

	@Test
	void holesLieWithinTheBoreAndInOrder() {
		refuses("hole 1", () -> holes(Tubes.hole(1, 601, 7, 3)));
		refuses("hole 2", () -> holes(Tubes.hole(1, 300, 7, 3), Tubes.hole(2, 200, 7, 3)));
		refuses("one name", () -> holes(Tubes.hole(1, 300, 7, 3), Tubes.hole(1, 400, 7, 3)));
		refuses("embouchure hole", () -> new Layout(BORE, Optional.of(new Mouth(-0.01, 0.011, 0.005, 0)), List.of()));
		refuses("hole 1", () -> new Layout(BORE, Optional.of(new Mouth(0.3, 0.011, 0.005, 0)),
				List.of(Tubes.hole(1, 200, 7, 3))));
		refuses("a leak", () -> new Layout(BORE, Optional.empty(), List.of(),
				List.of(new Layout.LeakAt(0.7, new Leak.Round(1e-3, 1e-3, 1.6)))));
	}

	@Test
	void aHoleIsNoWiderThanTheBore() {
		Layout wide = holes(Tubes.hole(1, 300, 19.1, 3));
		refuses("hole 1 is wider than the bore", () -> new Instrument(wide, Tubes.TWENTY));
		refuses("diameter of hole 1", () -> Tubes.hole(1, 300, -1, 3));
		refuses("rim of hole a", () -> new Hole("a", 0.1, 0.01, 0.003, 0, Optional.empty()));
		refuses("wider than the hole", () -> Tubes.hole(1, 300, 10, 3).under(new Cup(0.015, 0.003, 0.011, 0.003)));
	}

	@Test
	void sizesOfCupsAndMouthsHaveRanges() {
		refuses("rise", () -> new Cup(0.018, 0, 0, 0));
		refuses("opening", () -> new Cup(0.018, 0.003, 0.02, 0));
		refuses("lip", () -> new Mouth(0, 0.011, 0.005, 1));
		refuses("under a finger", () -> new Cover.Partly(1));
		refuses("gap", () -> new Cover.Leaking(List.of()));
		refuses("frequency of C4", () -> new TargetNote("C4", 0, Fingering.closing(List.of())));
		refuses("no DEPTH here", () -> Tubes.point(0, 19).with(Measure.DEPTH, 1));
		refuses("no DEPTH here", () -> Tubes.hole(1, 300, 10, 3).size(Measure.DEPTH));
	}

	private static Layout bore(BorePoint... points) {
		return new Layout(List.of(points), Optional.empty(), List.of());
	}

	private static Layout holes(Hole... holes) {
		return new Layout(BORE, Optional.empty(), List.of(holes));
	}

	private static void refuses(String said, Executable making) {
		String message = assertThrows(IllegalArgumentException.class, making).getMessage();
		assertTrue(message.contains(said), message);
		assertEquals(message.strip(), message);
	}
}
