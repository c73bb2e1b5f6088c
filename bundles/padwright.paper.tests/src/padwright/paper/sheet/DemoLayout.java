package padwright.paper.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import padwright.engine.length.Length;
import padwright.paper.page.HeadText;
import padwright.paper.sheet.SheetNote.Opening;

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
					length("2.5"), length("0.4"), "drawn", length("17.5"), length("2.95"), true, length("6"), "screw",
					key == 4 ? "far" : "near", key == 4, length("12"), length("3.2"), "30 grams",
							key == 2 ? "key 2" : "", "body joint", place, key == 5 ? 30 : 0));
		}
		List<SheetCoupling> couplings =
				List.of(new SheetCoupling(0, "closes", 1, "screw UNM 1.00, ratio 1.5"),
						new SheetCoupling(0, "holds", 2, ""));
		List<SheetNote> notes = List.of(
				new SheetNote("D4", "", Set.of("T", "R1"), Set.of("R1"), Map.of("K1", Opening.CLOSED, "K2", Opening.HALF)),
				new SheetNote("E4", "trill", Set.of("L2"), Set.of(), Map.of()));
		SheetList bores = new SheetList("Joints and bores", List.of("joint", "long"),
				List.of(List.of("body joint", "350")));
		return new LayoutSheet(new HeadText("Invented flute", "revision C", "Key layout", List.of()), "Key layout",
				"hinge", keys, couplings, joints(),
				List.of(new SheetRod("body joint", Length.millimetres("5"), Length.millimetres("200"), 60)),
				List.of(new SheetFingerHole("H1", "first hole", "L1", "body joint", Length.millimetres("60"), -60,
						 length("8"), none(), length("4"), length("0.6"))),
				List.of(bores),
				List.of("T", "L2", "R1", "LowC"), List.of(new SheetHole("K1", "2"), new SheetHole("K2", "3")), notes);
	}

	private static List<SheetJoint> joints() {
		SheetEmbouchure blown = new SheetEmbouchure(Length.millimetres("50"), Length.millimetres("12"),
				Length.millimetres("10"), length("5"), length("17"));
		return List.of(new SheetJoint("head joint", length("200"), length("19"), List.of(), Optional.of(blown)),
				new SheetJoint("body joint", length("350"), length("19"), List.of(), Optional.empty()));
	}

	private static Optional<Length> none() {
		return Optional.empty();
	}

	private static Optional<Length> length(String millimetres) {
		return Optional.of(Length.millimetres(millimetres));
	}
}
