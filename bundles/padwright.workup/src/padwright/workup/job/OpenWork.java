package padwright.workup.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.Regulation;
import padwright.model.systems.EffectiveKey;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/** What a plan begins and does not say as done. An instrument that leaves with it would be promised more than is known. */
public final class OpenWork {

	private OpenWork() {
	}

	/** One sentence each, without a full stop; nothing where all that was begun is said as done. */
	public static List<Phrase> of(ServicePlan plan) {
		List<Phrase> open = new ArrayList<>();
		keys(plan, job -> DoneAtKey.isPadPlanned(job) && !DoneAtKey.isPadIn(job))
				.ifPresent(keys -> open.add(Phrase.of("open.pads", keys)));
		keys(plan, DoneAtKey::isUnanswered).ifPresent(keys -> open.add(Phrase.of("open.readings", keys)));
		String couplings = plan.plan().getRegulations().stream().filter(note -> note.getLeft() == null)
				.map(note -> pair(plan, note)).collect(Collectors.joining(", "));
		if (!couplings.isEmpty()) {
			open.add(Phrase.of("open.couplings", couplings));
		}
		PadAtRest.of(plan).forEach(pad -> open.add(
				Phrase.of("open.rest", Labels.ofKey(plan, pad.key().getName()), pad.morning())));
		JobRecord.of(plan.plan()).waiting().forEach(waiting -> open.add(WaitWords.phrase(waiting)));
		return open;
	}

	private static Optional<String> keys(ServicePlan plan, Predicate<KeyJob> isOpen) {
		return Optional.of(plan.jobs().stream().filter(isOpen).map(OpenWork::label).collect(Collectors.joining(", ")))
				.filter(keys -> !keys.isEmpty());
	}

	private static String label(KeyJob job) {
		return job.key().map(EffectiveKey::label).orElse(job.name());
	}

	private static String pair(ServicePlan plan, Regulation note) {
		return name(plan, note.getDriver()) + " > " + name(plan, note.getDriven());
	}

	private static String name(ServicePlan plan, Key key) {
		return Resolved.of(key).map(known -> Labels.ofKey(plan, known.getName())).orElse("?");
	}
}
