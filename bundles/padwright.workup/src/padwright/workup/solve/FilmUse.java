package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.plan.Piece;
import padwright.model.plan.PlanPackage;
import padwright.model.plan.Round;
import padwright.model.plan.ThicknessRow;
import padwright.model.stock.FilmSet;
import padwright.workup.checks.Place;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/**
 * One blank of film that a plan has taken, for a full shim or a partial one.
 *
 * @param place where the plan says so
 */
public record FilmUse(FilmSet films, Length thickness, Place place) {

	/** All the blanks that a plan has taken, in its order; rows without a film set are left out. */
	public static List<FilmUse> in(ServicePlan service) {
		return service.jobs().stream().flatMap(job -> in(job).stream()).toList();
	}

	/** The blanks that one row has taken. */
	public static List<FilmUse> in(KeyJob job) {
		List<FilmUse> uses = new ArrayList<>();
		job.fitting().films().ifPresent(films -> {
			addStack(job.service().getStack(), films, uses);
			for (Round round : job.service().getRounds()) {
				round.getPieces().forEach(piece -> addPiece(piece, films, uses));
			}
		});
		return uses;
	}

	/** Whether a blank of a row is part of its answer: of the stack, or of a piece of the last round. */
	static boolean isAnswer(KeyJob job, FilmUse use) {
		EObject element = use.place().element();
		return element == job.service().getStack()
				|| job.lastRound().filter(round -> round == element.eContainer()).isPresent();
	}

	private static void addStack(ThicknessRow stack, FilmSet films, List<FilmUse> uses) {
		if (stack == null) {
			return;
		}
		LengthUnit unit = Lengths.unit(stack.getUnit(), stack);
		List<BigDecimal> values = stack.getValues();
		for (int index = 0; index < values.size(); index++) {
			Place place = new Place(stack, PlanPackage.Literals.THICKNESS_ROW__VALUES, index);
			Lengths.exact(values.get(index), unit)
					.ifPresent(thickness -> uses.add(new FilmUse(films, thickness, place)));
		}
	}

	private static void addPiece(Piece piece, FilmSet films, List<FilmUse> uses) {
		Place place = Place.of(piece, PlanPackage.Literals.PIECE__THICKNESS);
		Lengths.of(piece.getThickness(), piece)
				.ifPresent(thickness -> uses.add(new FilmUse(films, thickness, place)));
	}
}
