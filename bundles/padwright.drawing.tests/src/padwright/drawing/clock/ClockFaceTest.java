package padwright.drawing.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import padwright.engine.clock.ClockHour;

class ClockFaceTest {

	@ParameterizedTest
	@ValueSource(ints = { 0, 6, 17 })
	void theHourUnderAPointIsTheOneDrawnThere(int atTop) {
		ClockFace face = new ClockFace(40, new ClockHour(atTop));
		for (int station = 0; station < ClockHour.STATIONS; station++) {
			ClockHour hour = new ClockHour(station);
			for (double off : new double[] { -0.12, 0, 0.12 }) {
				double angle = face.angle(hour) + off;
				assertEquals(hour, face.hourAt(face.x(5, angle), face.y(5, angle)));
			}
		}
	}
}
