package padwright.views.map;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import padwright.model.Resolved;
import padwright.model.keysystem.Coupling;
import padwright.model.keysystem.HingeSide;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Posture;
import padwright.model.keysystem.Touch;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.EffectiveKey;
import padwright.model.systems.EffectiveSystem;
import padwright.views.Figures;
import padwright.views.Messages;
import padwright.views.map.MapCoupling.Effect;
import padwright.workup.checks.Finding;
import padwright.workup.parts.Labels;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.RoundEffect;
import padwright.workup.words.Chance;

/**
 * All that the key map shows of a plan, or of a system alone.
 *
 * @param title the name of the plan or system
 * @param keys in the order of the system
 * @param couplings that have both ends among the keys
 * @param joints from the upper end down
 */
public record KeyMapState(String title, List<MapKey> keys, List<MapCoupling> couplings, List<MapJoint> joints) {

	/** Drawn for a cup whose size is not known: as wide as a small one. */
	private static final double UNKNOWN_CUP = 9;

	public KeyMapState {
		keys = List.copyOf(keys);
		couplings = List.copyOf(couplings);
		joints = List.copyOf(joints);
	}

	/** A map without a key. */
	public static KeyMapState empty() {
		return new KeyMapState("", List.of(), List.of(), List.of());
	}

	/**
	 * The map of a plan. Fits every round: not for the window's thread.
	 *
	 * @param findings of all checks on the plan
	 */
	public static KeyMapState of(ServicePlan plan, List<Finding> findings) {
		Map<String, KeyJob> jobs = plan.jobs().stream().filter(job -> job.key().isPresent())
				.collect(Collectors.toMap(KeyJob::name, Function.identity(), (first, again) -> first));
		return of(plan.plan().getName(), plan.system(),
				key -> key(key, Optional.ofNullable(jobs.get(key.name())), findings));
	}

	/**
	 * The map of a system alone, as its maker draws it.
	 *
	 * @param findings of all checks on the system
	 */
	public static KeyMapState of(KeySystem system, List<Finding> findings) {
		return of(system.getName(), EffectiveSystem.of(system), key -> {
			List<Finding> own = RowFindings.of(key, findings);
			KeyState state = KeyState.of(own);
			return key(key, state, detail(state == KeyState.DRAWN ? key.label()
					: Messages.of("map.key", key.label(), state.inWords()), key, Optional.empty(), own));
		});
	}

	private static KeyMapState of(String name, EffectiveSystem system, Function<EffectiveKey, MapKey> drawn) {
		return new KeyMapState(name == null ? "" : name, system.keys().stream().map(drawn).toList(),
				couplings(system), system.joints().stream().map(joint -> joint(joint, system)).toList());
	}

	/** With the rods of which both posts are known. */
	private static MapJoint joint(EffectiveJoint joint, EffectiveSystem system) {
		List<MapJoint.Rod> rods = system.rods().stream()
				.filter(rod -> rod.joint().map(EffectiveJoint::name).equals(Optional.of(joint.name())))
				.flatMap(rod -> rod.from().flatMap(from -> rod.to().map(to -> new MapJoint.Rod(Figures.mm(from),
						Figures.mm(to), rod.around().map(Number::doubleValue).orElse(0.0)))).stream())
				.toList();
		return new MapJoint(joint.name(), joint.bore().stream().map(EffectiveJoint.Width::diameter).map(Figures::mm)
				.reduce((upper, lower) -> lower).orElseGet(() -> MapJoint.unknown(joint.name()).bore()), rods, holes(joint, system));
	}

	/** Those under fingers, of which it is known where they lie and how wide they are. */
	private static List<MapJoint.FingerHole> holes(EffectiveJoint joint, EffectiveSystem system) {
		return system.holes().stream().filter(hole -> hole.joint().map(EffectiveJoint::name).equals(Optional.of(joint.name())))
				.filter(hole -> !hole.touches().isEmpty())
				.flatMap(hole -> hole.position().flatMap(place -> hole.diameter().map(Figures::mm).filter(wide -> wide > 0)
						.map(wide -> new MapJoint.FingerHole(Figures.mm(place), wide, hole.around().doubleValue(),
								touches(hole.touches()), Messages.of("map.hole", hole.label(), touches(hole.touches()))))).stream())
				.toList();
	}

	/** What is known of a joint. */
	MapJoint joint(String name) {
		return joints.stream().filter(joint -> joint.name().equals(name)).findFirst()
				.orElseGet(() -> MapJoint.unknown(name));
	}

	private static List<MapCoupling> couplings(EffectiveSystem system) {
		Set<MapCoupling> couplings = new LinkedHashSet<>();
		for (EffectiveKey driver : system.keys()) {
			for (Effect effect : Effect.values()) {
				driven(driver, effect).filter(driven -> system.key(driven).isPresent())
						.map(driven -> new MapCoupling(driver.name(), effect, driven.getName()))
						.filter(coupling -> !coupling.driver().equals(coupling.driven())).forEach(couplings::add);
			}
		}
		return List.copyOf(couplings);
	}

	private static Stream<Key> driven(EffectiveKey driver, Effect effect) {
		List<Coupling> couplings = switch (effect) {
		case CLOSES -> driver.closes();
		case OPENS -> driver.opens();
		case HOLDS -> driver.holds();
		};
		return couplings.stream().flatMap(coupling -> Resolved.of(coupling.getDriven()).stream());
	}

	private static MapKey key(EffectiveKey key, Optional<KeyJob> job, List<Finding> findings) {
		List<Finding> own = job.map(row -> RowFindings.of(row, findings)).orElse(List.of());
		KeyState state = job.map(row -> KeyState.of(row, own)).orElse(KeyState.ABSENT);
		return key(key, state, detail(Messages.of("map.key", key.label(), state.inWords()), key, job, own));
	}

	private static MapKey key(EffectiveKey key, KeyState state, String detail) {
		Optional<Double> hole = key.holeDiameter().map(Figures::mm);
		return new MapKey(key.name(), key.label(), key.joint().map(EffectiveJoint::name).orElse(""), key.position().map(Figures::mm),
				key.cupDiameter().map(Figures::mm).filter(cup -> cup > 0).or(() -> hole).filter(cup -> cup > 0)
						.orElse(UNKNOWN_CUP),
				hole.filter(diameter -> diameter > 0), key.hinge().map(KeyMapState::side), key.around().doubleValue(),
				key.posture() == Posture.CLOSED, touches(key.touches()), state,
				detail);
	}

	private static String touches(List<Touch> touches) {
		return touches.stream().flatMap(touch -> Resolved.of(touch).stream()).map(Touch::getName)
				.collect(Collectors.joining(" "));
	}

	private static MapKey.Side side(HingeSide side) {
		return side == HingeSide.FAR ? MapKey.Side.FAR : MapKey.Side.NEAR;
	}

	private static String detail(String title, EffectiveKey key, Optional<KeyJob> job, List<Finding> findings) {
		List<String> lines = new ArrayList<>();
		lines.add(title);
		for (Effect effect : Effect.values()) {
			String driven = driven(key, effect).map(Labels::of).collect(Collectors.joining(", "));
			if (!driven.isEmpty()) {
				lines.add(words(effect, driven));
			}
		}
		key.cupDiameter().ifPresent(cup -> lines.add(Messages.of("map.cup", Figures.millimetres(cup))));
		job.flatMap(row -> row.lastRound().flatMap(round -> RoundEffect.of(row, round)))
				.ifPresent(effect -> lines.add(level(effect)));
		findings.stream().map(Finding::advice).map(advice -> advice.what().words()).distinct().forEach(lines::add);
		return String.join("\n", lines);
	}

	private static String words(Effect effect, String driven) {
		return switch (effect) {
		case CLOSES -> Messages.of("map.closes", driven);
		case OPENS -> Messages.of("map.opens", driven);
		case HOLDS -> Messages.of("map.holds", driven);
		};
	}

	private static String level(RoundEffect effect) {
		return effect.after()
				.map(after -> Messages.of("map.levels", Chance.of(effect.felt().chance()), Chance.of(after.chance())))
				.orElseGet(() -> Messages.of("map.level", Chance.of(effect.felt().chance())));
	}
}
