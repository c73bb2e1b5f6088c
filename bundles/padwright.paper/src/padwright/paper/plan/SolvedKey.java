package padwright.paper.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import padwright.engine.clock.ClockHour;
import padwright.engine.evidence.GapBand;
import padwright.engine.length.Length;
import padwright.model.systems.EffectiveKey;
import padwright.paper.card.CardHeight;
import padwright.paper.card.CardKey;
import padwright.paper.card.CardLevel;
import padwright.paper.card.CardNote;
import padwright.paper.card.CardStep;
import padwright.paper.card.CardWork;
import padwright.paper.words.Messages;
import padwright.workup.inspection.RecommendedWork;
import padwright.workup.job.DoneAtKey;
import padwright.workup.parts.RowWork;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;
import padwright.workup.solve.PadGap;
import padwright.workup.solve.RoundEffect;
import padwright.workup.solve.SeatWords;
import padwright.workup.words.Chance;
import padwright.workup.words.GapWords;
import padwright.workup.words.LengthWords;
import padwright.workup.words.Phrase;
import padwright.workup.words.Terms;

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

	/** @param isRegulated whether the plan says what light was left at all that it closes */
	static CardKey of(KeySolution solution, List<String> closes, boolean isRegulated) {
		return new SolvedKey(solution).card(closes, isRegulated);
	}

	private CardKey card(List<String> closes, boolean isRegulated) {
		return new CardKey(job.name(), job.key().map(EffectiveKey::label).orElse(job.name()),
				FitText.of(Optional.ofNullable(job.service().getFitting())), emptyText(),
				height(), RowReadings.of(job), effect().map(felt -> felt.felt().band()), work.earlierPieces(), cardWork(),
				level(), notes(), closes, found(), done(isRegulated));
	}

	private String found() {
		return job.service().isSetFound() ? Messages.of("card.found", Terms.of(job.service().getFound())) : "";
	}

	private Set<CardStep> done(boolean isRegulated) {
		Set<CardStep> done = EnumSet.noneOf(CardStep.class);
		if (work.stackNoted()) {
			done.add(CardStep.HEIGHT);
		}
		if (DoneAtKey.isFeltAsDelivered(job)) {
			done.add(CardStep.LEVEL);
		}
		if (isRegulated) {
			done.add(CardStep.REGULATE);
		}
		return done;
	}

	private String emptyText() {
		return job.emptyGaps().stream().map(LengthWords::figure).collect(Collectors.joining(" "));
	}

	/** The shims that the plan notes, else those that were solved. */
	private Optional<CardHeight> height() {
		Optional<Length> target = HeightWork.of(job).map(work -> work.shown().sum());
		return work.stackNoted() || solution.height().isPresent() ? Optional.of(new CardHeight(target, work.stack(),
				HeightWork.of(job).flatMap(HeightWork::toldTolerance).map(Phrase::words).orElse("")))
				: Optional.empty();
	}

	private Optional<RoundEffect> effect() {
		return job.lastRound().flatMap(round -> RoundEffect.of(job, round));
	}

	/** What the plan notes, else what was solved. */
	private Optional<CardWork> cardWork() {
		boolean isKnown = work.piecesNoted() || solution.level().filter(answer -> !answer.seat().heldOff()).isPresent();
		return isKnown ? Optional.of(new CardWork(
				work.fullChange().signum() == 0 ? "" : SeatWords.signed(work.fullChange()), work.takenOut(), work.pieces()))
				: Optional.empty();
	}

	private Optional<CardLevel> level() {
		return effect().map(effect -> new CardLevel(Chance.of(effect.felt().chance()), gap(effect.felt().band()),
				after(effect)));
	}

	private static String gap(GapBand band) {
		ClockHour hour = PadGap.widest(band);
		return Messages.of("card.gapAt", GapWords.range(band, hour), hour);
	}

	private Optional<String> after(RoundEffect effect) {
		return work.piecesNoted() ? effect.after().map(left -> Chance.of(left.chance()))
				: solution.level().map(LevelAnswer::seat).filter(seat -> !seat.nothing())
						.map(seat -> Chance.of(seat.chance()));
	}

	private List<CardNote> notes() {
		List<CardNote> notes = new ArrayList<>();
		solution.unsolved().forEach(reason -> notes.add(CardNote.warning(reason.words())));
		RecommendedWork.of(job).forEach(each -> notes.add(CardNote.warning(each.found() + ": " + each.work())));
		solution.level().ifPresent(answer -> addLevelNotes(answer, notes));
		Optional.ofNullable(job.service().getRemark()).ifPresent(remark -> notes.add(CardNote.remark(remark)));
		return notes;
	}

	/** What the chances say stands above already. */
	private void addLevelNotes(LevelAnswer answer, List<CardNote> notes) {
		SeatWords.warnings(job, answer).forEach(words -> notes.add(CardNote.warning(words)));
		if (!work.piecesNoted()) {
			SeatWords.hints(job, answer).forEach(words -> notes.add(CardNote.remark(words)));
		}
	}
}
