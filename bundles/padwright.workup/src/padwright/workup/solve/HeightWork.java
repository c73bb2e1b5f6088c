package padwright.workup.solve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.engine.film.FilmSupply;
import padwright.engine.height.FlushPad;
import padwright.engine.height.HeightEquation;
import padwright.engine.height.HeightSolution;
import padwright.engine.height.HeightSolver;
import padwright.engine.height.HeightTolerance;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.stock.Pad;
import padwright.model.stock.Backing;
import padwright.model.stocks.PadFigures;
import padwright.workup.checks.Severity;
import padwright.workup.service.KeyJob;
import padwright.workup.words.Phrase;
import padwright.workup.words.Rough;
import padwright.workup.words.RoughFigure;
import padwright.workup.words.RoughSum;

/**
 * What the full shims under one pad have to sum to. Where the depth of the cup and the thickness of the pad are known,
 * the height equation says it; else the trade's shortcut, by which pad and backing disc lie flush with the lip and the
 * shims make up the empty-cup gap (common practice, no source). The mean gap is taken to the nanometre.
 */
public final class HeightWork {

	private final KeyJob job;
	private final Length target;
	private final Optional<HeightEquation> equation;

	private HeightWork(KeyJob job, Length gap, Optional<HeightEquation> equation) {
		this.job = job;
		this.target = equation.map(HeightEquation::fullShims).orElse(gap);
		this.equation = equation;
	}

	/** The work of a row; nothing where the empty cup was not measured. */
	public static Optional<HeightWork> of(KeyJob job) {
		List<Length> gaps = job.emptyGaps();
		if (gaps.isEmpty() || gaps.stream().anyMatch(gap -> gap.signum() < 0)) {
			return Optional.empty();
		}
		Length gap = FlushPad.fullShims(gaps);
		return Optional.of(new HeightWork(job, gap, equation(job, gap)));
	}

	private static Optional<HeightEquation> equation(KeyJob job, Length gap) {
		Optional<Pad> pad = job.fitting().pad();
		Optional<Length> thickness = measured(job)
				.or(() -> pad.flatMap(article -> Lengths.of(article.getThickness(), article)))
				.filter(length -> length.signum() > 0);
		Length seat = pad.flatMap(PadFigures::sinks).orElse(Length.ZERO);
		Length backing = job.fitting().backing().flatMap(disc -> Lengths.of(disc.getThickness(), disc))
				.orElse(Length.ZERO);
		return job.key().flatMap(key -> key.cupDepth()).filter(length -> length.signum() > 0).flatMap(
				depth -> thickness.map(pads -> new HeightEquation(depth, gap, seat, backing, pads)));
	}

	/** The thickness of the pad that went in, where it was measured. */
	private static Optional<Length> measured(KeyJob job) {
		return Lengths.of(job.service().getMeasured(), job.service()).filter(length -> length.signum() > 0);
	}

	/** What the full shims have to sum to; below zero where pad and backing disc are too much for the cup. */
	public Length target() {
		return target;
	}

	/** The parts of the target; nothing where it is the empty-cup gap alone. */
	public Optional<HeightEquation> equation() {
		return equation;
	}

	/** The parts of the target and the target, no finer than they are known; disc and pad below zero. */
	public RoughSum shown() {
		return RoughSum.of(equation.map(parts -> List.of(parts.cupDepth(), parts.emptyGap(), parts.seat(),
				parts.backing().negated(), parts.pad().negated())).orElseGet(() -> List.of(target)));
	}

	/** By how much full shims are too high, or below zero too low, as it is shown beside {@link #shown()}. */
	public Length shownError(Length stack) {
		return stack.minus(shown().sum());
	}

	/** What the target rests on. */
	public Phrase basis() {
		return equation.isEmpty() ? Phrase.of("basis.gap") : Phrase.of("basis.height");
	}

	public boolean isOff(List<Length> stack) {
		return error(stack).isLongerThan(job.plan().tolerance());
	}

	/** An error where no pad or backing disc within its own tolerance could make up for the stack; else a warning. */
	public Severity severity(List<Length> stack) {
		Length worst = job.plan().tolerance().plus(tolerance().worstCase());
		return error(stack).isLongerThan(worst) ? Severity.ERROR : Severity.WARNING;
	}

	private Length error(List<Length> stack) {
		return stack.stream().reduce(Length.ZERO, Length::plus).minus(target).abs();
	}

	/**
	 * How far the sum may be off by what the articles are allowed to be off: the disc, and the pad unless it was measured.
	 */
	public HeightTolerance tolerance() {
		Optional<Length> pad = measured(job).isPresent() ? Optional.empty()
				: job.fitting().pad().flatMap((Pad article) -> Lengths.of(article.getTolerance(), article));
		Optional<Length> disc = job.fitting().backing()
				.flatMap((Backing article) -> Lengths.of(article.getTolerance(), article));
		return HeightTolerance.ofParts(Stream.of(pad, disc).flatMap(Optional::stream).toList());
	}

	/** The tolerance, as in {@code ± 1.3 thou at worst, ± 1 likely}; nothing where there is none. */
	public Optional<Phrase> toldTolerance() {
		HeightTolerance off = tolerance();
		return off.worstCase().signum() == 0 ? Optional.empty()
				: Optional.of(off.worstCase().equals(off.rootSumSquare())
						? Phrase.of("height.tolerance.one", new Rough(off.worstCase()))
						: Phrase.of("height.tolerance", new Rough(off.worstCase()), new RoughFigure(off.rootSumSquare())));
	}

	/** Whether the pad's own thickness was measured. */
	public boolean isMeasured() {
		return equation.isPresent() && measured(job).isPresent();
	}

	/** The best stack from all that the film set holds; without pieces where there is no film. */
	public Optional<HeightSolution> solution() {
		return solution(job.fitting().films().map(films -> FilmStore.of(films).supply()).orElse(List.of()));
	}

	/** The best stack from what is on hand; nothing where the target is far beyond any instrument. */
	public Optional<HeightSolution> solution(List<FilmSupply> supply) {
		try {
			return Optional.of(HeightSolver.solve(target, supply));
		} catch (IllegalArgumentException beyondAnyInstrument) {
			return Optional.empty();
		}
	}
}
