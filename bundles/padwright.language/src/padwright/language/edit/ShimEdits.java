package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;

import padwright.engine.film.PartialShim;
import padwright.engine.length.Length;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.plan.KeyService;
import padwright.model.plan.Piece;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.workup.solve.FullShims;
import padwright.workup.solve.PlacedPieces;

/** Puts full and partial shims into the text of a row. The rest of the text stays as it is, remarks included. */
public final class ShimEdits {

	private static final String STACK = "stack";
	private static final String FULL = "full";
	private static final String OUT = "out";
	private static final String SHIM = "shim";

	private ShimEdits() {
	}

	/** Makes {@code pieces} the full shims of a row, in this order; none takes the clause away. */
	public static List<TextEdit> stack(KeyService service, List<Length> pieces) {
		String clause = pieces.isEmpty() ? "" : STACK + " " + LengthText.row(pieces, service);
		if (service.getStack() != null) {
			return Lengths.of(service.getStack()).equals(pieces) ? List.of()
					: List.of(ClauseEdits.replacement(ClauseEdits.node(service), STACK, ClauseEdits.node(service.getStack()),
							clause));
		}
		return pieces.isEmpty() ? List.of() : List.of(ClauseEdits.insertion(ClauseEdits.beforeStack(service), " " + clause));
	}

	/**
	 * Makes this what was done after the readings of a round; nothing at all says that the pad is level.
	 *
	 * @param full by what the full shims are changed, below zero for less
	 * @param out earlier pieces that are taken out
	 * @param pieces that are placed
	 */
	public static List<TextEdit> done(Round round, Length full, List<PartialShim> out, List<PartialShim> pieces) {
		if (full.equals(FullShims.change(round)) && out.equals(PlacedPieces.takenOut(round))) {
			return pieces(round, pieces);
		}
		List<String> clauses = new ArrayList<>();
		if (full.signum() != 0) {
			clauses.add(FULL + " " + (full.signum() > 0 ? "+" : "-") + LengthText.measure(full.abs(), round));
		}
		if (!out.isEmpty()) {
			clauses.add(OUT + " " + words(round, out));
		}
		if (!pieces.isEmpty() || clauses.isEmpty()) {
			clauses.add(clause(round, pieces));
		}
		INode node = ClauseEdits.node(round);
		String text = String.join(" ", clauses);
		return List.of(PlacedPieces.isAnswered(round) ? ClauseEdits.replacement(node, firstWord(round), node, text)
				: ClauseEdits.insertion(node, " " + text));
	}

	/** The word that what was done begins with. */
	private static String firstWord(Round round) {
		return round.getFull() != null ? FULL : round.getRemoved().isEmpty() ? SHIM : OUT;
	}

	/**
	 * Makes {@code pieces} the partial shims after the readings of a round; none, where nothing else was done, says that the
	 * pad is level. Where only arcs or thicknesses change, only their figures do.
	 */
	public static List<TextEdit> pieces(Round round, List<PartialShim> pieces) {
		INode node = ClauseEdits.node(round);
		if (pieces.isEmpty() && (round.getFull() != null || !round.getRemoved().isEmpty())) {
			return round.getPieces().isEmpty() ? List.of() : List.of(ClauseEdits.replacement(node, SHIM, node, ""));
		}
		if (!round.isLevel() && round.getPieces().isEmpty()) {
			return List.of(ClauseEdits.insertion(node, " " + clause(round, pieces)));
		}
		if (!pieces.isEmpty() && round.getPieces().size() == pieces.size()
				&& round.getPieces().stream().allMatch(ShimEdits::isWhole)) {
			return changes(round, pieces);
		}
		return round.isLevel() && pieces.isEmpty() ? List.of()
				: List.of(ClauseEdits.replacement(node, SHIM, node, clause(round, pieces)));
	}

	/** Whether a piece is not half typed. */
	private static boolean isWhole(Piece piece) {
		return piece.getThickness() != null && piece.getFrom() != null && piece.getTo() != null;
	}

	private static String clause(Round round, List<PartialShim> pieces) {
		return SHIM + " " + (pieces.isEmpty() ? "none" : words(round, pieces));
	}

	private static String words(Round round, List<PartialShim> pieces) {
		return pieces.stream().map(piece -> LengthText.measure(piece.thickness(), round) + " " + piece.arc())
				.collect(Collectors.joining(", "));
	}

	private static List<TextEdit> changes(Round round, List<PartialShim> pieces) {
		List<TextEdit> edits = new ArrayList<>();
		for (int index = 0; index < pieces.size(); index++) {
			Piece old = round.getPieces().get(index);
			PartialShim piece = pieces.get(index);
			if (!Lengths.of(old.getThickness(), old).filter(piece.thickness()::equals).isPresent()) {
				edits.add(change(old, PlanPackage.Literals.PIECE__THICKNESS,
						LengthText.measure(piece.thickness(), round)));
			}
			if (!piece.arc().from().equals(old.getFrom())) {
				edits.add(change(old, PlanPackage.Literals.PIECE__FROM, piece.arc().from().toString()));
			}
			if (!piece.arc().to().equals(old.getTo())) {
				edits.add(change(old, PlanPackage.Literals.PIECE__TO, piece.arc().to().toString()));
			}
		}
		return edits;
	}

	private static TextEdit change(Piece piece, EStructuralFeature feature, String text) {
		return ClauseEdits.replaced(ClauseEdits.nodes(piece, feature).get(0), text);
	}
}
