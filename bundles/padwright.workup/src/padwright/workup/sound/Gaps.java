package padwright.workup.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import padwright.workup.checks.Advice;

/** What is missing of a system, gathered while it is read. */
final class Gaps {

	private final List<MissingSize> found = new ArrayList<>();

	List<MissingSize> found() {
		return List.copyOf(found);
	}

	/** Tells of a size that is not there, and hands it on. */
	<T> Optional<T> need(Optional<T> size, EObject element, Advice advice) {
		if (size.isEmpty()) {
			tell(element, advice);
		}
		return size;
	}

	void tell(EObject element, Advice advice) {
		found.add(new MissingSize(element, advice));
	}
}
