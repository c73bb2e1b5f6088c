package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
		List<FilmUse> uses = new ArrayList<>();
		service.jobs().forEach(job -> uses.addAll(in(job)));
		return uses;
	}

	/** The blanks that one row has taken: for its stack, and for the pieces of each round. */
	public static List<FilmUse> in(KeyJob job) {
		List<FilmUse> uses = new ArrayList<>(ofStack(job));
		job.service().getRounds().forEach(round -> uses.addAll(ofPieces(job, Optional.of(round))));
		return uses;
	}

	/** The blanks in the stack of a row. */
	static List<FilmUse> ofStack(KeyJob job) {
		List<FilmUse> uses = new ArrayList<>();
		job.fitting().films().ifPresent(films -> addStack(job.service().getStack(), films, uses));
		return uses;
	}

	/** The blanks that the pieces of a row's last round are cut from. */
	static List<FilmUse> ofLastPieces(KeyJob job) {
		return ofPieces(job, job.lastRound());
	}

	private static List<FilmUse> ofPieces(KeyJob job, Optional<Round> round) {
		List<FilmUse> uses = new ArrayList<>();
		job.fitting().films().ifPresent(films -> round.map(Round::getPieces).stream().flatMap(List<Piece>::stream)
				.forEach(piece -> addPiece(piece, films, uses)));
		return uses;
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
