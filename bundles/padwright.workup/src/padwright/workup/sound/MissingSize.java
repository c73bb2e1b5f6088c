package padwright.workup.sound;

import org.eclipse.emf.ecore.EObject;

import padwright.workup.checks.Advice;

/**
 * A size without which no pitch can be computed, or that cannot be.
 *
 * @param element the joint, hole or key that should say it, or the system
 * @param advice which size, what it is needed for, and what to write
 */
public record MissingSize(EObject element, Advice advice) {

	/** Of the finding that tells of it. */
	public static final String CODE = "sound-size";
}
