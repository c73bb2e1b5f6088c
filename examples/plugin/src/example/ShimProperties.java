package example;

import java.util.Comparator;

import padwright.workup.rules.PropertyExtension;
import padwright.workup.rules.PropertyList;

/** Lets rules ask for the thickest full shim of a key: {@code rule "tall" warn when stack.tallest > 5 thou}. */
public final class ShimProperties implements PropertyExtension {

	@Override
	public void addTo(PropertyList list) {
		list.length("stack.tallest", job -> job.stack().stream().max(Comparator.naturalOrder()));
	}
}
