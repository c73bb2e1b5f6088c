package padwright.workup.forecast;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.PadState;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Phrase;

/**
 * A plan that has a date and names its player.
 *
 * @param date   of the service
 * @param player name, without blanks around
 */
public record PastService(ServicePlan plan, LocalDate date, String player) {

	public static final Comparator<PastService> OLDEST_FIRST = Comparator.comparing(PastService::date);

	/** Why a plan is no past service; empty if it is one. */
	public static Optional<Phrase> obstacle(ServicePlan plan) {
		if (plan.plan().getDate() == null) {
			return Optional.of(Phrase.of("past.noDate"));
		}
		return name(plan).isEmpty() ? Optional.of(Phrase.of("past.noPlayer")) : Optional.empty();
	}

	/** Of a plan without an {@link #obstacle}. */
	public static PastService of(ServicePlan plan) {
		return new PastService(plan, plan.plan().getDate(), name(plan).orElseThrow());
	}

	private static Optional<String> name(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getPlayer()).map(Player::getName).map(String::strip)
				.filter(name -> !name.isEmpty());
	}

	/** The serial number, or the key system of a player's instrument without one. */
	public String instrument() {
		return Optional.ofNullable(plan.plan().getSerial())
				.or(() -> Resolved.of(plan.plan().getSystem()).map(KeySystem::getName)).orElse("?");
	}

	/**
	 * Whether a row fits a new pad on a key that had one: where its empty cup was measured, where it names a pad of its
	 * own, and where the old pad was found torn, tacky or swollen. A row that only levels a pad leaves it in place.
	 */
	public static boolean isNewPad(KeyJob job) {
		return job.service().getEmpty() != null || job.service().getFitting() != null
				|| Stream.of(PadState.TORN, PadState.TACKY, PadState.SWOLLEN).anyMatch(state -> isFound(job, state));
	}

	/** How many pads it found torn. */
	public int torn() {
		return (int) plan.jobs().stream().filter(job -> isFound(job, PadState.TORN)).count();
	}

	/** As the plan says it. */
	public Optional<Saliva> saliva() {
		return Optional.of(plan.plan().getPlayer()).filter(Player::isSetSaliva).map(Player::getSaliva);
	}

	/** Whether the row says that the old pad was in this state. */
	public static boolean isFound(KeyJob job, PadState state) {
		return job.service().isSetFound() && job.service().getFound() == state;
	}
}
