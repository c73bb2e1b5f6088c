package padwright.paper.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import padwright.drawing.clock.RimReading;
import padwright.engine.clock.ClockHour;
import padwright.engine.length.Length;
import padwright.engine.rim.Contradiction;
import padwright.engine.rim.ProfileSplit;
import padwright.engine.rim.ProfileWords;
import padwright.model.FeelerReading;
import padwright.model.Lengths;
import padwright.model.plan.Round;
import padwright.model.systems.EffectiveKey;
import padwright.paper.card.CardHeight;
import padwright.paper.card.CardKey;
import padwright.paper.card.CardNote;
import padwright.paper.card.CardSpread;
import padwright.workup.parts.RowWork;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightAnswer;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.LevelAnswer;

/** A solved row of a plan as a key of a bench card. */
final class SolvedKey {

	private final KeySolution solution;
	private final KeyJob job;

	private SolvedKey(KeySolution solution) {
		this.solution = solution;
		this.job = solution.job();
	}

	static CardKey of(KeySolution solution, List<String> closes) {
		return new SolvedKey(solution).card(closes);
	}

	private CardKey card(List<String> closes) {
		return new CardKey(job.name(), job.key().map(EffectiveKey::label).orElse(job.name()),
				FitText.of(Optional.ofNullable(job.service().getFitting())), emptyText(),
				solution.height().map(SolvedKey::height), readings(),
				solution.level().map(answer -> answer.rim().profile()), RowWork.earlierPieces(job),
				solution.level().map(answer -> answer.solution().pieces()).orElse(List.of()),
				solution.level().map(answer -> new CardSpread(answer.solution().spreadBefore(),
						Optional.of(answer.solution().spreadAfter()))),
				solution.level().map(SolvedKey::proof).orElse(""), notes(), closes);
	}

	private String emptyText() {
		return job.emptyGaps().stream().map(PlanBenchCard::thou).collect(Collectors.joining(" "));
	}

	private static CardHeight height(HeightAnswer answer) {
		return new CardHeight(Optional.of(answer.work().target()), answer.solution().pieces());
	}

	private static String proof(LevelAnswer answer) {
		return answer.solution().proof().optimal() ? "best possible" : answer.solution().proof().toString();
	}

	private List<RimReading> readings() {
		return job.lastRound().map(this::readings)
				.orElseGet(() -> job.plan().plan().getHours().stream().map(RimReading::blank).toList());
	}

	private List<RimReading> readings(Round round) {
		List<ClockHour> hours = job.hours(round);
		List<RimReading> readings = new ArrayList<>();
		for (int index = 0; index < Math.min(hours.size(), round.getReadings().size()); index++) {
			readings.add(reading(hours.get(index), round.getReadings().get(index), round));
		}
		return readings;
	}

	private static RimReading reading(ClockHour hour, FeelerReading reading, Round round) {
		Optional<Length> leaf = reading.free()
				.flatMap((BigDecimal free) -> Lengths.exact(free, Lengths.unit(round.getUnit(), round)));
		return leaf.map(free -> RimReading.free(hour, PlanBenchCard.thou(free))).orElseGet(() -> RimReading.drag(hour));
	}

	private List<CardNote> notes() {
		List<CardNote> notes = new ArrayList<>();
		solution.unsolved().forEach(reason -> notes.add(CardNote.warning(reason)));
		solution.level().ifPresent(answer -> addLevelNotes(answer, notes));
		Optional.ofNullable(job.service().getRemark()).ifPresent(remark -> notes.add(CardNote.remark(remark)));
		return notes;
	}

	private void addLevelNotes(LevelAnswer answer, List<CardNote> notes) {
		for (Contradiction contradiction : answer.rim().contradictions()) {
			notes.add(CardNote.warning("The reading at " + contradiction.reading().hour()
					+ " does not go with the others: feel it again"));
		}
		if (answer.solution().excess().signum() > 0) {
			notes.add(CardNote.warning("Film alone leaves more than the seat allows: true the cup or the key first; "
					+ "never file the rim"));
		}
		if (!answer.solution().pieces().isEmpty()) {
			notes.add(CardNote.remark(ProfileWords.of(ProfileSplit.of(answer.rim().profile()))));
		}
	}
}
