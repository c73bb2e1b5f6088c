package padwright.workup.rules;

import static padwright.workup.rules.PropertyType.HUMIDITY;
import static padwright.workup.rules.PropertyType.TEMPERATURE;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import padwright.model.Lengths;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Build;
import padwright.model.plan.CorkState;
import padwright.model.plan.Inspection;
import padwright.model.plan.MechanismPart;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.model.plan.TenonFit;
import padwright.model.plan.Tone;
import padwright.model.stock.Climate;
import padwright.model.stock.Stock;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.job.Cured;
import padwright.workup.service.KeyJob;

/** What rules can ask about instrument, player and climate. */
final class PlanProperties {

	private PlanProperties() {
	}

	static List<RuleProperty> all() {
		PropertyList list = new PropertyList(true);
		list.names("system", List.of(), PlanProperties::systems);
		list.oneOf("instrument.build", Build.VALUES,
				job -> inspection(job).filter(Inspection::isSetBuild).map(Inspection::getBuild));
		list.length("instrument.play", job -> Cured.left(job.plan().plan(), MechanismPart.END_PLAY)
				.or(() -> inspection(job).flatMap(seen -> Lengths.of(seen.getPlay(), seen))));
		list.length("instrument.wear", job -> Cured.left(job.plan().plan(), MechanismPart.WEAR)
				.or(() -> inspection(job).flatMap(seen -> Lengths.of(seen.getWear(), seen))));
		list.someOf("tenon", TenonFit.VALUES,
				job -> inspection(job).stream().flatMap(seen -> seen.getTenons().stream())
						.map(tenon -> Cured.fit(job.plan().plan(), tenon)));
		list.oneOf("head.cork", CorkState.VALUES,
				job -> inspection(job).filter(Inspection::isSetHeadCork)
						.map(seen -> Cured.headCork(job.plan().plan(), seen)));
		list.length("seat", job -> Optional.of(job.plan().tolerance()));
		list.oneOf("player.tone", Tone.VALUES, job -> player(job).filter(Player::isSetTone).map(Player::getTone));
		list.oneOf("player.saliva", Saliva.VALUES,
				job -> player(job).filter(Player::isSetSaliva).map(Player::getSaliva));
		addClimate(list);
		return list.properties();
	}

	private static void addClimate(PropertyList list) {
		list.quantity("home.temperature", TEMPERATURE, job -> home(job).map(Climate::getTemperature));
		list.quantity("home.humidity", HUMIDITY, job -> home(job).map(Climate::getHumidity));
		list.quantity("bench.temperature", TEMPERATURE, job -> bench(job).map(Climate::getTemperature));
		list.quantity("bench.humidity", HUMIDITY, job -> bench(job).map(Climate::getHumidity));
		list.quantity("home.warmer", TEMPERATURE, job -> homeLessBench(job, Climate::getTemperature));
		list.quantity("home.damper", HUMIDITY, job -> homeLessBench(job, Climate::getHumidity));
	}

	/** The plan's system and all that it extends, so that a rule on a base holds for what is made of it. */
	private static Stream<String> systems(KeyJob job) {
		return EffectiveSystem.lineage(job.plan().plan().getSystem()).stream().map(KeySystem::getName);
	}

	private static Optional<Inspection> inspection(KeyJob job) {
		return Optional.ofNullable(job.plan().plan().getInspection());
	}

	private static Optional<Player> player(KeyJob job) {
		return Optional.ofNullable(job.plan().plan().getPlayer());
	}

	private static Optional<Climate> home(KeyJob job) {
		return player(job).map(Player::getHome);
	}

	private static Optional<Climate> bench(KeyJob job) {
		return job.plan().stock().map(Stock::getClimate);
	}

	private static Optional<BigDecimal> homeLessBench(KeyJob job, Function<Climate, BigDecimal> part) {
		return home(job).map(part).flatMap(home -> bench(job).map(part).map(home::subtract));
	}
}
