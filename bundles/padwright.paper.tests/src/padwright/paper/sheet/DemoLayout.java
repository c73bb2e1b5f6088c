package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import padwright.engine.length.Length;
import padwright.paper.page.HeadText;

/** A key layout; all invented. */
public final class DemoLayout {

	private DemoLayout() {
	}

	/** Ten keys 33 mm apart and one without a place. */
	public static LayoutSheet sheet() {
		List<SheetKey> keys = new ArrayList<>();
		for (int key = 0; key < 11; key++) {
			Optional<Length> place = key == 10 ? Optional.empty()
					: Optional.of(Length.millimetres("10").plus(Length.millimetres("33").times(key)));
			keys.add(new SheetKey("K" + key, "key " + (key + 1), key == 3, key == 0 ? "R1" : "", length("14"), length("1"),
					"drawn", length("17.5"), length("2.95"), "french", key == 4 ? "far" : "near", "body", place));
		}
		List<SheetCoupling> couplings =
				List.of(new SheetCoupling(0, 1, "screw UNM 1.00, ratio 1.5"), new SheetCoupling(0, 2, ""));
		List<SheetNote> notes = List.of(
				new SheetNote("D4", Set.of("T", "R1"), List.of("low C"), Optional.of(Set.of("K1"))),
				new SheetNote("E4", Set.of("L2"), List.of(), Optional.empty()));
		return new LayoutSheet(new HeadText("Invented flute", "revision C", "Key layout", List.of()), "Key layout",
				"hinge", keys, couplings, notes);
	}

	private static Optional<Length> length(String millimetres) {
		return Optional.of(Length.millimetres(millimetres));
	}
}
