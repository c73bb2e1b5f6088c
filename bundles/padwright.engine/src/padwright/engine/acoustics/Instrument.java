package padwright.engine.acoustics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

import org.hipparchus.complex.Complex;

/**
 * The air column of a flute, ready to be asked. It has no player: what a lip and a jet of air do to a pitch is not in
 * it, so differences between two states of one instrument are worth more than absolute pitches. Immutable.
 */
public final class Instrument {

	private static final double CENTS_PER_E = 1200 / StrictMath.log(2);

	private final Layout layout;
	private final SoundModel model;
	private final Assembly assembly;

	/** @throws IllegalArgumentException if a hole is wider than the bore */
	public Instrument(Layout layout, SoundModel model) {
		this.layout = layout;
		this.model = model;
		assembly = Assembly.of(layout, model);
	}

	public Layout layout() {
		return layout;
	}

	/** Of the embouchure hole, or of the upper end where there is none, in Pa·s/m³. */
	public double characteristicImpedance() {
		double diameter = layout.mouth().map(Mouth::diameter).orElse(layout.bore().get(0).diameter());
		return model.air().impedance(diameter / 2);
	}

	/**
	 * Seen from the rim of the embouchure hole into the instrument, or from its upper end.
	 *
	 * @param hertz above 0
	 */
	public Impedance impedance(Fingering fingering, double hertz) {
		Complex impedance = column(hertz).impedance(covered(fingering));
		return new Impedance(impedance.getReal(), impedance.getImaginary());
	}

	/** How one note sounds. */
	public NoteSound sound(TargetNote note) {
		return sound(List.of(note)).get(0);
	}

	/** How all notes of a scale sound, in their order: faster than one by one. */
	public List<NoteSound> sound(List<TargetNote> notes) {
		return sounds(notes, Spectrum::sound);
	}

	/** How all notes of a scale sound with the one resonance that each is played on: several times faster. */
	public List<NoteSound> played(List<TargetNote> notes) {
		return sounds(notes, Spectrum::played);
	}

	private List<NoteSound> sounds(List<TargetNote> notes, BiFunction<Spectrum, TargetNote, NoteSound> how) {
		if (notes.isEmpty()) {
			return List.of();
		}
		Spectrum spectrum = new Spectrum(this, notes);
		return notes.stream().map(note -> how.apply(spectrum, note)).toList();
	}

	/**
	 * By how many cents each dimension would move a resonance, for each metre that it grows.
	 *
	 * @param hertz a resonance of that fingering
	 */
	public Map<Dimension, Double> centsPerMetre(Fingering fingering, double hertz) {
		Slopes slopes = slopes(fingering, hertz);
		double byLogarithm = slopes.byOmega().getImaginary() * 2 * Math.PI * hertz;
		Map<Dimension, Double> cents = new LinkedHashMap<>();
		List<Dimension> dimensions = assembly.variables().dimensions();
		for (int index = 0; index < dimensions.size(); index++) {
			cents.put(dimensions.get(index), -CENTS_PER_E * slopes.by(index).getImaginary() / byLogarithm);
		}
		return cents;
	}

	Slopes slopes(Fingering fingering, double hertz) {
		return new Slopes(assembly.parts(fingering), assembly.end(), assembly.variables().dimensions().size(),
				hertz, model.air());
	}

	/** With the air outside the embouchure hole. */
	Complex sounding(Fingering fingering, double hertz) {
		return column(hertz).sounding(covered(fingering));
	}

	ResonanceSearch search(List<Part> covered) {
		return new ResonanceSearch(hertz -> column(hertz).sounding(covered), characteristicImpedance());
	}

	List<Part> covered(Fingering fingering) {
		return assembly.covered(fingering);
	}

	Column column(double hertz) {
		return new Column(assembly, model.air(), hertz);
	}
}
