package padwright.workup.regulate;

import padwright.engine.length.Length;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.NewPieces;

/**
 * How much thicker the contents of a cup become by work that is still to be regulated.
 *
 * @param key name of the key
 * @param byStack by full shims, where the noted stack is off by more than the seat allows and the solved one takes its
 *     place; nothing where no stack is noted, since there is none to compare with
 * @param byPieces mean lift of the pieces placed since the last readings
 */
public record BedChange(String key, Length byStack, Length byPieces) {

	static BedChange of(KeySolution solution) {
		Length noted = solution.job().stackSum();
		Length byStack = solution.height().filter(answer -> isReplaced(solution, answer))
				.map(answer -> answer.solution().sum().minus(noted)).orElse(Length.ZERO);
		return new BedChange(solution.job().name(), byStack, NewPieces.of(solution).meanLift());
	}

	private static boolean isReplaced(KeySolution solution, HeightAnswer answer) {
		return !solution.job().stack().isEmpty() && answer.work().isOff(solution.job().stack());
	}

	/** Both together; negative where they become thinner. */
	public Length total() {
		return byStack.plus(byPieces);
	}
}
