package padwright.workup.rules;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import padwright.model.plan.PadState;
import padwright.model.plan.Regulation;
import padwright.workup.service.KeyJob;

/** The steps of the work on a key, as far as its row tells them. */
final class Steps {

	/** All of them, in the order of the work. */
	static final List<String> ALL = List.of("fit", "glue", "stack", "shim", "regulate");

	private Steps() {
	}

	static Stream<String> of(KeyJob job) {
		boolean isNew = !job.service().isSetFound() || job.service().getFound() != PadState.SOUND;
		return Stream.of(
				step("fit", isNew && job.fitting().pad().isPresent()),
				step("glue", isNew && job.fitting().adhesive().isPresent()),
				step("stack", !job.stack().isEmpty()),
				step("shim", job.service().getRounds().stream().anyMatch(round -> !round.getPieces().isEmpty())),
				step("regulate", job.plan().plan().getRegulations().stream().anyMatch(each -> isAt(each, job))))
				.flatMap(steps -> steps);
	}

	private static boolean isAt(Regulation regulation, KeyJob job) {
		Object key = job.service().getKey();
		return key != null && (Objects.equals(regulation.getDriver(), key) || Objects.equals(regulation.getDriven(), key));
	}

	private static Stream<String> step(String name, boolean isDone) {
		return isDone ? Stream.of(name) : Stream.empty();
	}
}
