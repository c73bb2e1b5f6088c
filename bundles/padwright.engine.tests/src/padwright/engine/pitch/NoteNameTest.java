package padwright.engine.pitch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteNameTest {

	/** ISO 16 sets A4 to 440 Hz; the others computed from 440 · 2^((m − 69) / 12). */
	@ParameterizedTest
	@CsvSource({ "A4,440", "B3,246.942", "C4,261.626", "C5,523.251", "C7,2093.005" })
	void frequenciesAreThoseOfEqualTemperament(String note, double hertz) {
		assertEquals(hertz, NoteName.parse(note).frequency(), 0.0005);
	}

	@ParameterizedTest
	@CsvSource({ "C-1,0", "C4,60", "D4,62", "A4,69", "C♯5,73", "Cs5,73", "C#5,73", "Bb3,58", "B♭3,58", "B3,59", "Bs3,60",
			"Cb4,59", "G9,127" })
	void namesAreMidiNumbers(String note, int midi) {
		assertEquals(midi, NoteName.parse(note).midi());
	}

	@Test
	void everyMidiNumberComesBackThroughNameAndFrequency() {
		for (int midi = 0; midi <= 127; midi++) {
			NoteName note = NoteName.ofMidi(midi);
			assertEquals(midi, note.midi());
			assertEquals(note, NoteName.parse(note.toString()));
			assertEquals(note, NoteName.nearest(note.frequency()));
			assertEquals(note, NoteName.nearest(note.frequency() * StrictMath.pow(2, 0.49 / 12)));
			assertEquals(note, NoteName.nearest(note.frequency() * StrictMath.pow(2, -0.49 / 12)));
			assertEquals(midi, EqualTemperament.midi(note.frequency()), 1e-9);
		}
	}

	@Test
	void anOctaveDoublesTheFrequency() {
		for (int midi = 0; midi <= 115; midi++) {
			assertEquals(2, EqualTemperament.frequency(midi + 12) / EqualTemperament.frequency(midi), 1e-12);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "H4", "d4", "C", "C10", "Css4", "C♯-2", "", "4C", "Cb-1", "A9" })
	void otherNamesAreRefused(String note) {
		assertThrows(IllegalArgumentException.class, () -> NoteName.parse(note));
	}

	@Test
	void numbersOutOfRangeAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> NoteName.ofMidi(-1));
		assertThrows(IllegalArgumentException.class, () -> EqualTemperament.frequency(128));
		assertThrows(IllegalArgumentException.class, () -> NoteName.nearest(0));
		assertThrows(IllegalArgumentException.class, () -> NoteName.nearest(Double.NaN));
		assertThrows(IllegalArgumentException.class, () -> EqualTemperament.midi(0));
		assertThrows(IllegalArgumentException.class, () -> EqualTemperament.midi(Double.POSITIVE_INFINITY));
		assertThrows(IllegalArgumentException.class, () -> new NoteName('C', 2, 4));
	}
}
