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

	private static final Plausible FILM = Plausible.thou("film", "0.1", "20");
	private static final Plausible PLAY = Plausible.thou("play", "0.1", "60");
	private static final Plausible LEFT = Plausible.thou("play", "0", "60");
	private static final Plausible UNEVEN = Plausible.thou("uneven", "0", "40");
	private static final Plausible PAD = Plausible.millimetres("padThickness", "0.4", "8");
	private static final Plausible DISC = Plausible.millimetres("disc", "4", "60");

	private static final Map<EStructuralFeature, Plausible> MEASURES = new HashMap<>();
	private static final Map<EReference, Plausible> ROWS = new HashMap<>();

	static {
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__DIAMETER, Plausible.millimetres("hole", "2", "60"));
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__RIM_WIDTH, Plausible.millimetres("rim", "0.2", "4"));
		MEASURES.put(KeySystemPackage.Literals.PAD_CUP__DIAMETER, Plausible.millimetres("cup", "4", "60"));
		MEASURES.put(KeySystemPackage.Literals.PAD_CUP__DEPTH, Plausible.millimetres("cupDepth", "0.5", "12"));
		MEASURES.put(KeySystemPackage.Literals.ADJUSTER__PITCH, Plausible.millimetres("pitch", "0.05", "2"));
		MEASURES.put(KeySystemPackage.Literals.PLACED__POSITION,
				Plausible.millimetres("position", "3", "4000"));
		putInstrument();
		MEASURES.put(StockPackage.Literals.LEVELLING__FEEL, Plausible.thou("feel", "0.01", "2"));
		MEASURES.put(StockPackage.Literals.PAD__THICKNESS, PAD);
		MEASURES.put(StockPackage.Literals.PAD__TOLERANCE, Plausible.thou("padTolerance", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.PAD__SINKS, Plausible.thou("sinking", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.LAYER__THICKNESS, Plausible.thou("layer", "0.2", "250"));
		MEASURES.put(StockPackage.Literals.BACKING__THICKNESS, Plausible.thou("backing", "2", "100"));
		MEASURES.put(StockPackage.Literals.BACKING__TOLERANCE,
				Plausible.thou("backingTolerance", "0.01", "20"));
		MEASURES.put(StockPackage.Literals.FEELER__THICKNESS, Plausible.thou("feeler", "0.1", "20"));
		MEASURES.put(StockPackage.Literals.ADHESIVE__FILLS, Plausible.thou("gluedGap", "0.1", "100"));
		MEASURES.put(PlanPackage.Literals.PLAN__TOLERANCE, Plausible.thou("seatTolerance", "0.05", "10"));
		MEASURES.put(PlanPackage.Literals.PIECE__THICKNESS, FILM);
		MEASURES.put(PlanPackage.Literals.ROUND__FULL, FILM);
		MEASURES.put(PlanPackage.Literals.KEY_SERVICE__MEASURED, PAD);
		MEASURES.put(PlanPackage.Literals.REGULATION__LIGHT, Plausible.thou("light", "0.05", "60"));
		MEASURES.put(PlanPackage.Literals.KEY_SERVICE__PLAY, PLAY);
		MEASURES.put(PlanPackage.Literals.INSPECTION__PLAY, PLAY);
		putJob();
		MEASURES.put(PlanPackage.Literals.TENON__GAP, Plausible.thou("tenonGap", "0.05", "20"));
		ROWS.put(StockPackage.Literals.FILM_SET__THICKNESSES, FILM);
		ROWS.put(StockPackage.Literals.PAD__DIAMETERS, DISC);
		ROWS.put(StockPackage.Literals.BACKING__DIAMETERS, DISC);
		ROWS.put(PlanPackage.Literals.KEY_SERVICE__STACK, FILM);
		ROWS.put(PlanPackage.Literals.KEY_SERVICE__EMPTY, Plausible.thou("emptyGap", "0", "120"));
	}

	private static void putJob() {
		MEASURES.put(PlanPackage.Literals.KEY_SERVICE__WEAR, PLAY);
		MEASURES.put(PlanPackage.Literals.INSPECTION__WEAR, PLAY);
		MEASURES.put(PlanPackage.Literals.REGULATION__LEFT, LEFT);
		MEASURES.put(PlanPackage.Literals.MECHANISM_NOTE__FOUND, PLAY);
		MEASURES.put(PlanPackage.Literals.MECHANISM_NOTE__LEFT, LEFT);
		MEASURES.put(PlanPackage.Literals.RIM_NOTE__AMOUNT, UNEVEN);
		MEASURES.put(PlanPackage.Literals.RIM_NOTE__LEFT, UNEVEN);
		MEASURES.put(PlanPackage.Literals.CUP_NOTE__AMOUNT, UNEVEN);
		MEASURES.put(PlanPackage.Literals.CUP_NOTE__LEFT, UNEVEN);
		MEASURES.put(PlanPackage.Literals.GAUGE__DISC, PAD);
		MEASURES.put(PlanPackage.Literals.BUMPER_NOTE__THICKNESS, Plausible.millimetres("bumper", "0.1", "6"));
		MEASURES.put(PlanPackage.Literals.TENON_NOTE__GAP, Plausible.thou("tenonGap", "0.05", "20"));
		MEASURES.put(PlanPackage.Literals.HEAD_CORK_NOTE__POSITION, Plausible.millimetres("cork", "3", "80"));
	}

	private static void putInstrument() {
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__CHIMNEY, Plausible.millimetres("chimney", "0.3", "60"));
		MEASURES.put(KeySystemPackage.Literals.TONE_HOLE__UNDERCUT, Plausible.millimetres("undercut", "0.05", "12"));
		MEASURES.put(KeySystemPackage.Literals.PAD_CUP__PERFORATION, Plausible.millimetres("perforation", "1", "20"));
		MEASURES.put(KeySystemPackage.Literals.KEY_FEATURES__ARM, Plausible.millimetres("arm", "3", "120"));
		MEASURES.put(KeySystemPackage.Literals.KEY_FEATURES__RISE, Plausible.millimetres("rise", "0.3", "25"));
		MEASURES.put(KeySystemPackage.Literals.COUPLING__PLAY, PLAY);
		MEASURES.put(KeySystemPackage.Literals.JOINT_FEATURES__LENGTH, Plausible.millimetres("joint", "15", "4000"));
		MEASURES.put(KeySystemPackage.Literals.JOINT_FEATURES__CORK, Plausible.millimetres("cork", "3", "80"));
		MEASURES.put(KeySystemPackage.Literals.BORE_POINT__DIAMETER, Plausible.millimetres("bore", "2", "300"));
		MEASURES.put(KeySystemPackage.Literals.BORE_POINT__POSITION, Plausible.millimetres("along", "0", "4000"));
		MEASURES.put(KeySystemPackage.Literals.EMBOUCHURE__LENGTH, Plausible.millimetres("embouchure", "4", "40"));
		MEASURES.put(KeySystemPackage.Literals.EMBOUCHURE__WIDTH, Plausible.millimetres("embouchure", "4", "40"));
		MEASURES.put(KeySystemPackage.Literals.EMBOUCHURE__CHIMNEY, Plausible.millimetres("chimney", "0.3", "60"));
		MEASURES.put(KeySystemPackage.Literals.EMBOUCHURE__POSITION, Plausible.millimetres("along", "0", "4000"));
		MEASURES.put(KeySystemPackage.Literals.ROD_FEATURES__FROM, Plausible.millimetres("along", "0", "4000"));
		MEASURES.put(KeySystemPackage.Literals.ROD_FEATURES__TO, Plausible.millimetres("along", "0", "4000"));
		MEASURES.put(StockPackage.Literals.PAD_KIND__SINKS, Plausible.thou("sinking", "0.01", "20"));
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
