package padwright.workup.regulate;

import java.util.Optional;

import padwright.engine.coupling.Coupling;
import padwright.engine.coupling.Regulation;

/**
 * One coupling to be regulated.
 *
 * @param found the light that the plan notes there, with its cure; empty where it notes none
 */
public record RegulationStep(Coupling coupling, Optional<Regulation> found) {
}
