package padwright.workup.regulate;

import padwright.engine.evidence.FilmInPlace;
import padwright.engine.length.Length;
import padwright.workup.solve.FilmInCup;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PadEvidence;

/**
 * By how much sooner a key will meet its rim by work that is still to be regulated: the way of the middle of its cup, since a
 * key turns on its hinge until the face first touches. Below zero where later.
 *
 * @param key name of the key
 * @param byStack by full shims, where the noted stack is off by more than the seat allows and the solved one takes its
 *     place; nothing where no stack is noted, since there is none to compare with
 * @param byFilm by what is done after the last readings: pieces, pieces taken out and a change of the full shims
 */
public record BedChange(String key, Length byStack, Length byFilm) {

	static BedChange of(KeySolution solution) {
		PadEvidence evidence = PadEvidence.of(solution.job(), unsaid -> {
		}).orElseGet(() -> PadEvidence.unfelt(solution.job()));
		FilmInPlace felt = evidence.film();
		FilmInPlace after = FilmInCup.after(solution).inPlace();
		Length more = solution.height().filter(answer -> isReplaced(solution, answer))
				.map(answer -> answer.solution().sum().minus(solution.job().stackSum())).orElse(Length.ZERO);
		FilmInPlace restacked = new FilmInPlace(after.pieces(), after.fullShims().plus(more));
		return new BedChange(solution.job().name(), evidence.sooner(after, restacked), evidence.sooner(felt, after));
	}

	private static boolean isReplaced(KeySolution solution, HeightAnswer answer) {
		return !solution.job().stack().isEmpty() && answer.work().isOff(solution.job().stack());
	}

	/** Both together. */
	public Length total() {
		return byStack.plus(byFilm);
	}
}
