package padwright.workbench.findings;

import java.util.List;

import org.eclipse.core.resources.IMarker;

/**
 * What is to be put right in one place: an instrument, a key.
 *
 * @param label of the place
 * @param parts narrower places, in the order of the text
 * @param found in the place itself, in the order of the text
 */
record FoundIn(String label, List<FoundIn> parts, List<Found> found) {

	FoundIn {
		parts = List.copyOf(parts);
		found = List.copyOf(found);
	}

	/** How many there are of a severity, in narrower places too. */
	long count(int severity) {
		return found.stream().filter(one -> one.severity() == severity).count()
				+ parts.stream().mapToLong(part -> part.count(severity)).sum();
	}

	/** The gravest severity here or in a narrower place. */
	int severity() {
		return Math.max(found.stream().mapToInt(Found::severity).max().orElse(IMarker.SEVERITY_INFO),
				parts.stream().mapToInt(FoundIn::severity).max().orElse(IMarker.SEVERITY_INFO));
	}

	boolean isEmpty() {
		return parts.isEmpty() && found.isEmpty();
	}
}
