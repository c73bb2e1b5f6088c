package padwright.workup.rules;

import static padwright.workup.rules.PropertyType.HUMIDITY;
import static padwright.workup.rules.PropertyType.LENGTH;
import static padwright.workup.rules.PropertyType.MATERIAL;
import static padwright.workup.rules.PropertyType.NAME;
import static padwright.workup.rules.PropertyType.NUMBER;
import static padwright.workup.rules.PropertyType.TEMPERATURE;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Present;
import padwright.model.keysystem.CupStyle;
import padwright.model.keysystem.HoleMake;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Titled;
import padwright.model.plan.PadState;
import padwright.model.plan.Player;
import padwright.model.plan.Saliva;
import padwright.model.plan.Tone;
import padwright.model.stock.Climate;
import padwright.model.stock.FilmSet;
import padwright.model.stock.Layer;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.model.stock.Pad;
import padwright.model.stock.PadKind;
import padwright.model.stock.Stabiliser;
import padwright.model.stock.Stock;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.workup.service.KeyJob;

/** All properties that rules can ask about. */
final class RuleProperties {

	private static final Map<String, RuleProperty> BY_NAME = new LinkedHashMap<>();

	static {
		named("pad", job -> job.fitting().pad());
		oneOf("pad.kind", PadKind.VALUES, job -> job.fitting().pad().filter(Pad::isSetKind).map(Pad::getKind));
		materials("pad.material", job -> layers(job, LayerRole.values()));
		materials("pad.base", job -> layers(job, LayerRole.BASE));
		materials("pad.face", job -> layers(job, LayerRole.FACE));
		materials("pad.skin", job -> layers(job, LayerRole.SKIN));
		length("pad.thick", job -> job.fitting().pad().flatMap(pad -> Lengths.of(pad.getThickness(), pad)));
		quantity("pad.stiffness", NUMBER, job -> job.fitting().pad().map(Pad::getStiffness));
		named("stabiliser", job -> job.fitting().stabiliser());
		materials("stabiliser.material", job -> job.fitting().stabiliser().map(Stabiliser::getMaterial).stream());
		named("shim", job -> job.fitting().films());
		materials("shim.material", job -> job.fitting().films().map(FilmSet::getMaterial).stream());
		named("glue", job -> job.fitting().adhesive());
		named("key", job -> job.key().map(EffectiveKey::definition));
		oneOf("key.posture", Posture.VALUES, job -> job.key().map(EffectiveKey::posture));
		oneOf("key.joint", Joint.VALUES, job -> job.key().map(EffectiveKey::joint));
		length("cup.diameter", job -> job.key().flatMap(EffectiveKey::cupDiameter));
		length("cup.deep", job -> job.key().flatMap(EffectiveKey::cupDepth));
		oneOf("cup.style", CupStyle.VALUES, job -> job.key().flatMap(EffectiveKey::cupStyle));
		length("hole.diameter", job -> job.key().flatMap(EffectiveKey::holeDiameter));
		oneOf("hole.make", HoleMake.VALUES, job -> job.key().flatMap(EffectiveKey::holeMake));
		add("system", NAME, List.of(), RuleProperties::systems);
		oneOf("player.tone", Tone.VALUES,
				job -> player(job).filter(Player::isSetTone).map(Player::getTone));
		oneOf("player.saliva", Saliva.VALUES,
				job -> player(job).filter(Player::isSetSaliva).map(Player::getSaliva));
		quantity("home.temperature", TEMPERATURE, job -> home(job).map(Climate::getTemperature));
		quantity("home.humidity", HUMIDITY, job -> home(job).map(Climate::getHumidity));
		quantity("bench.temperature", TEMPERATURE, job -> bench(job).map(Climate::getTemperature));
		quantity("bench.humidity", HUMIDITY, job -> bench(job).map(Climate::getHumidity));
		oneOf("found", PadState.VALUES,
				job -> Optional.of(job.service()).filter(row -> row.isSetFound()).map(row -> row.getFound()));
		length("stack.sum", job -> Optional.of(job.stackSum()).filter(sum -> sum.signum() > 0));
		quantity("stack.pieces", NUMBER,
				job -> Optional.of(BigDecimal.valueOf(job.stack().size())).filter(count -> count.signum() > 0));
	}

	private RuleProperties() {
	}

	static Optional<RuleProperty> byName(String name) {
		return Optional.ofNullable(BY_NAME.get(name));
	}

	static Collection<RuleProperty> all() {
		return BY_NAME.values();
	}

	private static void add(String name, PropertyType type, List<String> names, Function<KeyJob, List<?>> values) {
		BY_NAME.put(name, new RuleProperty(name, type, names, values));
	}

	private static void named(String name, Function<KeyJob, Optional<? extends Titled>> article) {
		add(name, NAME, List.of(), job -> article.apply(job).map(Titled::getName).stream().toList());
	}

	private static void oneOf(String name, List<? extends Enumerator> literals,
			Function<KeyJob, Optional<? extends Enumerator>> literal) {
		add(name, NAME, literals.stream().map(Enumerator::getLiteral).toList(),
				job -> literal.apply(job).map(Enumerator::getLiteral).stream().toList());
	}

	private static void materials(String name, Function<KeyJob, Stream<Material>> materials) {
		add(name, MATERIAL, List.of(), job -> materials.apply(job)
				.flatMap(material -> Present.of(material).stream()).map(Material::getName).toList());
	}

	private static void length(String name, Function<KeyJob, Optional<Length>> length) {
		quantity(name, LENGTH, job -> length.apply(job).map(Length::nanometres).map(BigDecimal::valueOf));
	}

	private static void quantity(String name, PropertyType type, Function<KeyJob, Optional<BigDecimal>> quantity) {
		add(name, type, List.of(), job -> quantity.apply(job).stream().toList());
	}

	private static Stream<Material> layers(KeyJob job, LayerRole... roles) {
		return job.fitting().pad().stream().flatMap(pad -> pad.getLayers().stream())
				.filter(layer -> Arrays.asList(roles).contains(layer.getRole())).map(Layer::getMaterial);
	}

	/** The plan's system and all that it extends, so that a rule on a base holds for what is made of it. */
	private static List<String> systems(KeyJob job) {
		return EffectiveSystem.lineage(job.plan().plan().getSystem()).stream().map(KeySystem::getName).toList();
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
}
