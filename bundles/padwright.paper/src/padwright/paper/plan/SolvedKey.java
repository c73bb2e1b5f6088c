package padwright.paper.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.engine.length.Length;
import padwright.engine.rim.Contradiction;
import padwright.engine.rim.ProfileSplit;
import padwright.model.systems.EffectiveKey;
import padwright.paper.card.CardHeight;
import padwright.paper.card.CardKey;
import padwright.paper.card.CardNote;
import padwright.paper.card.CardSpread;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.parts.RowWork;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.ProfileWords;

/** A solved row of a plan as a key of a bench card. */
final class SolvedKey {

	private final KeySolution solution;
	private final KeyJob job;
	private final RowWork work;

	private SolvedKey(KeySolution solution) {
		this.solution = solution;
		this.job = solution.job();
		this.work = RowWork.of(solution);
	}

	static CardKey of(KeySolution solution, List<String> closes) {
		return new SolvedKey(solution).card(closes);
	}

	private CardKey card(List<String> closes) {
		return new CardKey(job.name(), job.key().map(EffectiveKey::label).orElse(job.name()),
				FitText.of(Optional.ofNullable(job.service().getFitting())), emptyText(),
				height(), RowReadings.of(job), solution.level().map(answer -> answer.rim().profile()), work.earlierPieces(),
				work.pieces(), spread(), proof(), notes(), closes);
	}

	private String emptyText() {
		return job.emptyGaps().stream().map(PlanBenchCard::thou).collect(Collectors.joining(" "));
	}

	/** The shims that the plan notes, else those that were solved. */
	private Optional<CardHeight> height() {
		Optional<Length> target = HeightWork.of(job).map(HeightWork::target);
		return work.stackNoted() || solution.height().isPresent() ? Optional.of(new CardHeight(target, work.stack()))
				: Optional.empty();
	}

	private Optional<CardSpread> spread() {
		if (work.piecesNoted()) {
			return job.lastRound().flatMap(round -> RoundEffect.of(job, round))
					.map(effect -> new CardSpread(effect.before(), effect.after()));
		}
		return solution.level().map(LevelAnswer::solution)
				.map(solved -> CardSpread.solved(solved.spreadBefore(), solved.spreadAfter()));
	}

	private String proof() {
		if (work.piecesNoted()) {
			return "as noted in the plan";
		}
		return solution.level().map(answer -> answer.solution().proof())
				.map(proof -> proof.optimal() ? "best possible" : proof.toString()).orElse("");
	}

	private List<CardNote> notes() {
		List<CardNote> notes = new ArrayList<>();
		solution.unsolved().forEach(reason -> notes.add(CardNote.warning(reason)));
		RecommendedWork.of(job).forEach(each -> notes.add(CardNote.warning(each.found() + ": " + each.work())));
		solution.level().ifPresent(answer -> addLevelNotes(answer, notes));
		Optional.ofNullable(job.service().getRemark()).ifPresent(remark -> notes.add(CardNote.remark(remark)));
		return notes;
	}

	private void addLevelNotes(LevelAnswer answer, List<CardNote> notes) {
		for (Contradiction contradiction : answer.rim().contradictions()) {
			notes.add(CardNote.warning("The reading at " + contradiction.reading().hour()
					+ " does not go with the others: feel it again"));
		}
		if (!answer.solution().pieces().isEmpty()) {
			notes.add(CardNote.remark(ProfileWords.of(ProfileSplit.of(answer.rim().profile()))));
		}
	}
}
