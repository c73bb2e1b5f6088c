package padwright.workup.sound;

import java.util.Map;

import padwright.engine.acoustics.Measure;

/**
 * What one size of a hole does to the notes.
 *
 * @param hole its name
 * @param measure place (farther down), diameter (wider) or chimney (deeper)
 * @param cents by which 0.1 mm more sharpens each note, by its name; in the order of the scale
 */
public record HoleEffect(String hole, Measure measure, Map<String, Double> cents) {
}
