package padwright.workup.parts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import padwright.engine.length.Length;
import padwright.model.plan.PadState;
import padwright.model.stock.FilmSet;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.FilmUse;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PlanSolution;

/**
 * One article that a plan takes from the stock for one key.
 *
 * @param noted whether the plan notes it as taken; else it would be, once the plan's answers are written
 */
public record Withdrawal(Article article, KeyJob job, boolean noted) {

	/**
	 * All that a solved plan takes, in its order: for each key a pad with its backing disc and glue, a blank of film for
	 * each full shim and each partial one. A pad that was found sound stays, with its disc. Pad, backing disc and
	 * glue count as taken with the full shims, since they go into the cup together. A key that has two rows by mistake
	 * gets one pad.
	 */
	public static List<Withdrawal> of(PlanSolution solution) {
		List<Withdrawal> takes = new ArrayList<>();
		Set<String> padded = new HashSet<>();
		for (KeySolution key : solution.keys()) {
			RowWork row = RowWork.of(key);
			if (row.job().key().isPresent() && padded.add(row.job().name())) {
				addPad(row, takes);
			}
			row.job().fitting().films().ifPresent(films -> addFilm(key, row, films, takes));
		}
		return takes;
	}

	private static void addPad(RowWork row, List<Withdrawal> takes) {
		if (keepsPad(row.job())) {
			return;
		}
		Article.pad(row.job()).ifPresent(pad -> takes.add(new Withdrawal(pad, row.job(), row.stackNoted())));
		Article.backing(row.job()).ifPresent(disc -> takes.add(new Withdrawal(disc, row.job(), row.stackNoted())));
		Article.glue(row.job()).ifPresent(glue -> takes.add(new Withdrawal(glue, row.job(), row.stackNoted())));
	}

	/** Whether a row leaves the pad that is in the cup. */
	public static boolean keepsPad(KeyJob job) {
		return job.service().isSetFound() && job.service().getFound() == PadState.SOUND;
	}

	private static void addFilm(KeySolution solution, RowWork row, FilmSet films, List<Withdrawal> takes) {
		FilmUse.in(row.job()).forEach(use -> addNoted(row.job(), use, takes));
		if (!row.stackNoted()) {
			addSolved(row, films, row.stack(), takes);
		}
		if (!row.piecesNoted()) {
			solution.level().ifPresent(answer -> addSolved(row, films, answer, takes));
		}
	}

	/** A full shim that is exchanged comes back whole. */
	private static void addSolved(RowWork row, FilmSet films, LevelAnswer answer, List<Withdrawal> takes) {
		addSolved(row, films, answer.films(), takes);
		answer.swap().out()
				.forEach(shim -> takes.remove(new Withdrawal(Article.film(films, shim), row.job(), row.stackNoted())));
	}

	/** A full shim that came back whole was not taken. */
	private static void addNoted(KeyJob job, FilmUse use, List<Withdrawal> takes) {
		Withdrawal take = new Withdrawal(Article.film(use.films(), use.thickness()), job, true);
		if (use.back()) {
			takes.remove(take);
		} else {
			takes.add(take);
		}
	}

	private static void addSolved(RowWork row, FilmSet films, List<Length> blanks, List<Withdrawal> takes) {
		blanks.forEach(blank -> takes.add(new Withdrawal(Article.film(films, blank), row.job(), false)));
	}
}
