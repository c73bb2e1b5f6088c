package padwright.workup.forecast;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

import padwright.model.Present;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.PadState;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;

/** A plan that has a date and names its player. */
record PastService(ServicePlan plan, LocalDate date, String player) {

	static final Comparator<PastService> OLDEST_FIRST = Comparator.comparing(PastService::date);

	/** Why a plan is no past service; empty if it is one. */
	static Optional<String> obstacle(ServicePlan plan) {
		if (plan.plan().getDate() == null) {
			return Optional.of("it has no date");
		}
		return name(plan).isEmpty() ? Optional.of("it names no player") : Optional.empty();
	}

	static PastService of(ServicePlan plan) {
		return new PastService(plan, plan.plan().getDate(), name(plan).orElseThrow());
	}

	private static Optional<String> name(ServicePlan plan) {
		return Optional.ofNullable(plan.plan().getPlayer()).map(Player::getName).map(String::strip)
				.filter(name -> !name.isEmpty());
	}

	/** The serial number, or the key system of a player's instrument without one. */
	String instrument() {
		return Optional.ofNullable(plan.plan().getSerial())
				.or(() -> Present.of(plan.plan().getSystem()).map(KeySystem::getName)).orElse("?");
	}

	int torn() {
		return (int) plan.jobs().stream().filter(job -> isFound(job, PadState.TORN)).count();
	}

	Optional<Saliva> saliva() {
		return Optional.of(plan.plan().getPlayer()).filter(Player::isSetSaliva).map(Player::getSaliva);
	}

	static boolean isFound(KeyJob job, PadState state) {
		return job.service().isSetFound() && job.service().getFound() == state;
	}
}
