package padwright.workup.mechanism;

import org.eclipse.emf.ecore.EObject;

import padwright.workup.checks.Advice;
import padwright.workup.checks.Severity;

/**
 * What the fingerings of a system show to be wanting.
 *
 * @param subject the key, touch or fingering that it is about
 */
record Shortcoming(Severity severity, String code, EObject subject, Advice advice) {
}
