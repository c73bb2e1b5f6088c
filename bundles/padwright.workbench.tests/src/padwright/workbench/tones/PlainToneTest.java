package padwright.workbench.tones;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainToneTest {

	/** A wave goes up through nought once in each of its turns. */
	@ParameterizedTest
	@ValueSource(doubles = { 261.6256, 440, 1975.5 })
	void itSwingsSoManyTimesASecondAndDoesNotClick(double hertz) {
		ShortBuffer wave = ByteBuffer.wrap(PlainTone.wave(hertz, 1000)).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
		assertEquals(PlainTone.RATE, wave.limit());
		int turns = 0;
		int highest = 0;
		for (int sample = 1; sample < wave.limit(); sample++) {
			turns += wave.get(sample - 1) < 0 && wave.get(sample) >= 0 ? 1 : 0;
			highest = Math.max(highest, Math.abs(wave.get(sample)));
		}
		assertEquals(hertz, turns, 1.5);
		assertTrue(highest > Short.MAX_VALUE / 5 && highest < Short.MAX_VALUE / 2, "" + highest);
		assertEquals(0, wave.get(0));
		assertTrue(Math.abs(wave.get(wave.limit() - 1)) < 60);
	}
}
