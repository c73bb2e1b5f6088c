package padwright.language.ide.facts;

import java.util.List;
import java.util.Optional;

import padwright.engine.length.Length;
import padwright.language.ide.words.Messages;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;
import padwright.workup.words.LengthWords;
import padwright.workup.words.RoughSum;

/** What the full shims of a row have to sum to, and what they do. */
public final class HeightFacts {

	private HeightFacts() {
	}

	/** For example {@code Full shims = depth 116.1 + gap 15 + sinks 2 − backing disc 20 − pad 98 = 15.1 thou}. */
	public static List<String> of(KeyJob job) {
		Optional<HeightWork> work = HeightWork.of(job);
		return work.map(known -> List.of(target(known), tolerance(known), measured(known), sum(job, known)))
				.orElseGet(() -> List.of(Messages.of("height.unknown")))
				.stream().filter(line -> !line.isEmpty()).toList();
	}

	private static String target(HeightWork work) {
		RoughSum shown = work.shown();
		String sum = LengthWords.withUnit(shown.sum());
		if (work.equation().isEmpty()) {
			return Messages.of("height.target", sum, work.basis().words());
		}
		List<String> terms = shown.terms().stream().map(Length::abs).map(LengthWords::figure).toList();
		return Messages.of("height.equation", terms.get(0), terms.get(1), terms.get(2), terms.get(3), terms.get(4), sum);
	}

	private static String tolerance(HeightWork work) {
		return work.toldTolerance().map(told -> Messages.of("height.tolerance", told.words())).orElse("");
	}

	private static String measured(HeightWork work) {
		return work.isMeasured() ? Messages.of("height.measured") : "";
	}

	private static String sum(KeyJob job, HeightWork work) {
		return job.stack().isEmpty() ? "" : sum("height.sum", job, work);
	}

	/** What the stack sums to, in the text of {@code key}; in its {@code .high} or {@code .low} where it is off. */
	public static String sum(String key, KeyJob job, HeightWork work) {
		String sum = LengthWords.withUnit(job.stackSum());
		if (!work.isOff(job.stack())) {
			return Messages.of(key, sum);
		}
		Length error = work.shownError(job.stackSum());
		return Messages.of(key + (error.signum() > 0 ? ".high" : ".low"), sum, LengthWords.withUnit(error.abs()));
	}
}
