package padwright.language.ide.facts;

import java.util.List;
import java.util.Optional;

import padwright.engine.height.HeightEquation;
import padwright.engine.length.Length;
import padwright.language.ide.words.Messages;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;

/** What the full shims of a row have to sum to, and what they do. */
public final class HeightFacts {

	private HeightFacts() {
	}

	/** For example {@code Full shims = depth 116.14 + gap 15 + sinks 2 − backing disc 20 − pad 98 = 15.14 thou}. */
	public static List<String> of(KeyJob job) {
		Optional<HeightWork> work = HeightWork.of(job);
		return work.map(known -> List.of(target(known), tolerance(known), measured(known), sum(job, known)))
				.orElseGet(() -> List.of(Messages.of("height.unknown")))
				.stream().filter(line -> !line.isEmpty()).toList();
	}

	private static String target(HeightWork work) {
		return work.equation().map(HeightFacts::equation)
				.orElseGet(() -> Messages.of("height.target", Figures.thou(work.target()), work.basis()));
	}

	private static String tolerance(HeightWork work) {
		return work.toleranceWords().map(words -> Messages.of("height.tolerance", words)).orElse("");
	}

	private static String measured(HeightWork work) {
		return work.isMeasured() ? Messages.of("height.measured") : "";
	}

	private static String equation(HeightEquation parts) {
		return Messages.of("height.equation", Figures.number(parts.cupDepth()), Figures.number(parts.emptyGap()),
				Figures.number(parts.seat()), Figures.number(parts.backing()), Figures.number(parts.pad()),
				Figures.thou(parts.fullShims()));
	}

	private static String sum(KeyJob job, HeightWork work) {
		return job.stack().isEmpty() ? "" : sum("height.sum", job, work);
	}

	/** What the stack sums to, in the text of {@code key}; in its {@code .high} or {@code .low} where it is off. */
	public static String sum(String key, KeyJob job, HeightWork work) {
		String sum = Figures.thou(job.stackSum());
		if (!work.isOff(job.stack())) {
			return Messages.of(key, sum);
		}
		Length error = job.stackSum().minus(work.target());
		return Messages.of(key + (error.signum() > 0 ? ".high" : ".low"), sum, Figures.thou(error.abs()));
	}
}
