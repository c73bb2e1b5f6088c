package padwright.language.ide.facts;

import java.util.List;
import java.util.Optional;

import padwright.engine.height.HeightEquation;
import padwright.engine.length.Length;
import padwright.workup.service.KeyJob;
import padwright.workup.solve.HeightWork;

/** What the full shims of a row have to sum to, and what they do. */
public final class HeightFacts {

	private HeightFacts() {
	}

	/** For example {@code Full shims = depth 116.14 + gap 15 + sinks 2 − stabiliser 20 − pad 98 = 15.14 thou}. */
	public static List<String> of(KeyJob job) {
		Optional<HeightWork> work = HeightWork.of(job);
		return work.map(known -> List.of(target(known), sum(job, known)))
				.orElse(List.of("Height: write the gap around the empty cup behind empty"))
				.stream().filter(line -> !line.isEmpty()).toList();
	}

	private static String target(HeightWork work) {
		return work.equation().map(HeightFacts::equation)
				.orElseGet(() -> "Full shims = " + Figures.thou(work.target()) + ", " + work.basis());
	}

	private static String equation(HeightEquation parts) {
		return "Full shims = depth " + Figures.number(parts.cupDepth()) + " + gap " + Figures.number(parts.emptyGap())
				+ " + sinks " + Figures.number(parts.seat()) + " − stabiliser " + Figures.number(parts.stabiliser())
				+ " − pad " + Figures.number(parts.pad()) + " = " + Figures.thou(parts.fullShims());
	}

	private static String sum(KeyJob job, HeightWork work) {
		return job.stack().isEmpty() ? "" : "The stack sums to " + Figures.thou(job.stackSum()) + off(job, work);
	}

	/** How far the stack is off, as in {@code , 2 thou too low}; nothing where it is within the seat's tolerance. */
	public static String off(KeyJob job, HeightWork work) {
		Length error = job.stackSum().minus(work.target());
		return work.isOff(job.stack())
				? ", " + Figures.thou(error.abs()) + (error.signum() > 0 ? " too high" : " too low") : "";
	}
}
