package padwright.engine.drift;

/**
 * What one layer adds to the drift.
 *
 * @param layer the layer
 * @param change its change of thickness
 */
public record LayerDrift(Layer layer, HeightChange change) {
}
