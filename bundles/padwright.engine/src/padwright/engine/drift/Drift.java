package padwright.engine.drift;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

import padwright.engine.closing.Hinge;
import padwright.engine.length.Length;

/**
 * How a stack of layers changes its height from the bench to the player's home:
 * Σ thickness × (expansion × ΔT + swelling × ΔRH), in exact interval arithmetic, every layer varying on its own. A model
 * for slow changes, with every layer in balance with the air.
 *
 * @param layers what each layer adds, in the order given
 * @param total the change of the whole stack; narrower than the sum of the rounded layers may be
 * @param largest the layer that may change most, either way; the first of equals
 */
public record Drift(List<LayerDrift> layers, HeightChange total, LayerDrift largest) {

	public Drift {
		layers = List.copyOf(layers);
	}

	/** @throws IllegalArgumentException if there is no layer */
	public static Drift of(List<Layer> stack, Climate bench, Climate home) {
		if (stack.isEmpty()) {
			throw new IllegalArgumentException("a stack without layers has no drift");
		}
		List<MaterialRange> changes = stack.stream().map(layer -> layer.exactChange(bench, home)).toList();
		List<LayerDrift> layers = stack.stream()
				.map(layer -> new LayerDrift(layer, HeightChange.outward(layer.exactChange(bench, home)))).toList();
		MaterialRange total = changes.stream().reduce(MaterialRange::plus).orElseThrow();
		return new Drift(layers, HeightChange.outward(total), layers.get(indexOfLargest(changes)));
	}

	/**
	 * The verdict on a pad that lay level, whose gap may become as wide as the seat.
	 *
	 * @throws IllegalArgumentException if the seat is negative
	 */
	public DriftVerdict against(Length seat, Hinge hinge) {
		if (seat.signum() < 0) {
			throw new IllegalArgumentException("a seat of " + seat + " is below zero");
		}
		return total.opened(hinge).against(seat);
	}

	private static int indexOfLargest(List<MaterialRange> changes) {
		BigDecimal most = changes.stream().map(MaterialRange::magnitude).max(Comparator.naturalOrder()).orElseThrow();
		int index = 0;
		while (changes.get(index).magnitude().compareTo(most) < 0) {
			index++;
		}
		return index;
	}
}
