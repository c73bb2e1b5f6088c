package padwright.workup.solve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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
 * One blank of film that a plan has taken, for a full shim or a partial one, or that came back whole with a change of the
 * full shims. Pieces that were taken out are waste.
 *
 * @param back whether it goes back into the stock
 * @param place where the plan says so
 */
public record FilmUse(FilmSet films, Length thickness, boolean back, Place place) {

	/** All the blanks that a plan has taken, in its order; rows without a film set are left out. */
	public static List<FilmUse> in(ServicePlan service) {
		List<FilmUse> uses = new ArrayList<>();
		service.jobs().forEach(job -> uses.addAll(in(job)));
		return uses;
	}

	/** The blanks that one row has taken: for its stack, and for the pieces of each round. */
	public static List<FilmUse> in(KeyJob job) {
		List<FilmUse> uses = new ArrayList<>(ofStack(job));
		FullShims full = new FullShims(job.stack());
		for (Round round : job.service().getRounds()) {
			uses.addAll(ofRound(job, round, full));
			full = full.after(round, FilmStore.thicknesses(job));
		}
		return uses;
	}

	/** Takes the blank or puts it back; false where none was left to take. */
	public boolean drawFrom(FilmStore store) {
		if (back) {
			store.giveBack(thickness);
			return true;
		}
		return store.take(thickness);
	}

	/** The contrary of {@link #drawFrom}. */
	void undoIn(FilmStore store) {
		new FilmUse(films, thickness, !back, place).drawFrom(store);
	}

	/** The blanks in the stack of a row. */
	static List<FilmUse> ofStack(KeyJob job) {
		List<FilmUse> uses = new ArrayList<>();
		job.fitting().films().ifPresent(films -> addStack(job.service().getStack(), films, uses));
		return uses;
	}

	/** The blanks that what was done after a row's last readings took and gave back. */
	static List<FilmUse> ofLastRound(KeyJob job) {
		FullShims full = new FullShims(job.stack());
		List<FilmUse> uses = List.of();
		for (Round round : job.service().getRounds()) {
			uses = ofRound(job, round, full);
			full = full.after(round, FilmStore.thicknesses(job));
		}
		return uses;
	}

	private static List<FilmUse> ofRound(KeyJob job, Round round, FullShims full) {
		List<FilmUse> uses = new ArrayList<>();
		job.fitting().films().ifPresent(films -> {
			full.swap(FullShims.change(round), FilmStore.thicknesses(job))
					.ifPresent(swap -> addSwap(round, swap, films, uses));
			round.getPieces().forEach(piece -> addPiece(piece, films, uses));
		});
		return uses;
	}

	private static void addSwap(Round round, FullShims.Swap swap, FilmSet films, List<FilmUse> uses) {
		Place place = Place.of(round, PlanPackage.Literals.ROUND__FULL);
		swap.out().forEach(shim -> uses.add(new FilmUse(films, shim, true, place)));
		swap.in().forEach(film -> uses.add(new FilmUse(films, film, false, place)));
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
					.ifPresent(thickness -> uses.add(new FilmUse(films, thickness, false, place)));
		}
	}

	private static void addPiece(Piece piece, FilmSet films, List<FilmUse> uses) {
		Place place = Place.of(piece, PlanPackage.Literals.PIECE__THICKNESS);
		Lengths.of(piece.getThickness(), piece)
				.ifPresent(thickness -> uses.add(new FilmUse(films, thickness, false, place)));
	}
}
