package padwright.workup.checks.units;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.plan.PlanPackage;
import padwright.model.stock.StockPackage;

/** What is plausible for each length in a document. */
final class PlausibleLengths {

	private static final Plausible FILM = Plausible.thou("a shim film", "0.1", "20");
	private static final Plausible PLAY = Plausible.thou("play of a mechanism", "0.1", "60");
	private static final Plausible DISC = Plausible.millimetres("a pad or disc", "4", "60");

	private static final Map<EStructuralFeature, Plausible> MEASURES = new HashMap<>();
	private static final Map<EReference, Plausible> ROWS = new HashMap<>();

	static {
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__DIAMETER, Plausible.millimetres("a tone hole", "2", "60"));
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__RIM_WIDTH, Plausible.millimetres("a rim", "0.2", "4"));
		MEASURES.put(KeySystemPackage.Literals.PAD_CUP__DIAMETER, Plausible.millimetres("a pad cup", "4", "60"));
		MEASURES.put(KeySystemPackage.Literals.PAD_CUP__DEPTH, Plausible.millimetres("the depth of a cup", "0.5", "12"));
		MEASURES.put(KeySystemPackage.Literals.ADJUSTER__PITCH, Plausible.millimetres("a thread's pitch", "0.05", "2"));
		MEASURES.put(KeySystemPackage.Literals.KEY_FEATURES__POSITION,
				Plausible.millimetres("the place of a hole", "3", "1500"));
		MEASURES.put(StockPackage.Literals.PAD__THICKNESS, Plausible.millimetres("a pad's thickness", "0.4", "8"));
		MEASURES.put(StockPackage.Literals.PAD__TOLERANCE, Plausible.thou("a pad's tolerance", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.PAD__SINKS, Plausible.thou("a rim's sinking", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.LAYER__THICKNESS, Plausible.thou("a layer of a pad", "0.2", "250"));
		MEASURES.put(StockPackage.Literals.STABILISER__THICKNESS, Plausible.thou("a stabiliser", "2", "100"));
		MEASURES.put(StockPackage.Literals.STABILISER__TOLERANCE,
				Plausible.thou("a stabiliser's tolerance", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.FEELER__THICKNESS, Plausible.thou("a feeler", "0.1", "20"));
		MEASURES.put(StockPackage.Literals.ADHESIVE__FILLS, Plausible.thou("a gap that glue fills", "0.1", "100"));
		MEASURES.put(PlanPackage.Literals.PLAN__TOLERANCE, Plausible.thou("a seat's tolerance", "0.05", "10"));
		MEASURES.put(PlanPackage.Literals.PIECE__THICKNESS, FILM);
		MEASURES.put(PlanPackage.Literals.REGULATION__LIGHT, Plausible.thou("light at a coupling", "0.05", "60"));
		MEASURES.put(PlanPackage.Literals.KEY_SERVICE__PLAY, PLAY);
		MEASURES.put(PlanPackage.Literals.INSPECTION__PLAY, PLAY);
		MEASURES.put(PlanPackage.Literals.TENON__GAP, Plausible.thou("what a tenon is loose by", "0.05", "20"));
		ROWS.put(StockPackage.Literals.FILM_SET__THICKNESSES, FILM);
		ROWS.put(StockPackage.Literals.PAD__DIAMETERS, DISC);
		ROWS.put(StockPackage.Literals.STABILISER__DIAMETERS, DISC);
		ROWS.put(PlanPackage.Literals.KEY_SERVICE__STACK, FILM);
		ROWS.put(PlanPackage.Literals.KEY_SERVICE__EMPTY, Plausible.thou("an empty-cup gap", "0", "120"));
	}

	private PlausibleLengths() {
	}

	/** For a single measure. */
	static Optional<Plausible> of(EStructuralFeature measure) {
		return Optional.ofNullable(MEASURES.get(measure));
	}

	/** For the numbers of a row or an assortment, by what contains it. */
	static Optional<Plausible> ofRow(EObject row) {
		return Optional.ofNullable(ROWS.get(row.eContainmentFeature()));
	}
}
