package padwright.workup.regulate;

import java.util.Optional;

import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.Regulation;
import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.Resolved;
import padwright.model.keysystem.Key;
import padwright.model.plan.CouplingSide;
import padwright.workup.service.ServicePlan;

/** The light that a plan notes at its couplings. */
public final class FoundLight {

	private FoundLight() {
	}

	/** What was found at a coupling; the last note if there are several. */
	public static Optional<Regulation> at(ServicePlan plan, Coupling coupling) {
		return plan.plan().getRegulations().stream().filter(note -> isAt(note, coupling))
				.flatMap(note -> Lengths.of(note.getLight(), note)
						.map(light -> new Regulation(coupling, side(note.getSide()), light)).stream())
				.reduce((earlier, later) -> later);
	}

	/** What light was left there; nothing while that is not said. */
	public static Optional<Length> left(ServicePlan plan, Coupling coupling) {
		return plan.plan().getRegulations().stream().filter(note -> isAt(note, coupling))
				.reduce((earlier, later) -> later).flatMap(note -> Lengths.of(note.getLeft(), note));
	}

	private static boolean isAt(padwright.model.plan.Regulation note, Coupling coupling) {
		return isNamed(note.getDriver(), coupling.driver()) && isNamed(note.getDriven(), coupling.driven());
	}

	private static boolean isNamed(Key key, String name) {
		return Resolved.of(key).map(Key::getName).filter(name::equals).isPresent();
	}

	private static Regulation.Side side(CouplingSide side) {
		return side == CouplingSide.DRIVER ? Regulation.Side.DRIVER : Regulation.Side.DRIVEN;
	}
}
