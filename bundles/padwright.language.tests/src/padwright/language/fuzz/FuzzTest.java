package padwright.language.fuzz;

import java.io.IOException;

import org.junit.jupiter.api.Test;

/** Whatever a document holds, nothing fails over it. {@link FuzzRun} looks at more. */
class FuzzTest {

	private static final int CASES = 400;

	@Test
	void nothingFails() throws IOException {
		FuzzTarget target = new FuzzTarget();
		for (int number = 0; number < CASES; number++) {
			try {
				target.use(FuzzCase.of(number));
			} catch (RuntimeException | Error failure) {
				throw new AssertionError("case " + number + ":\n" + FuzzCase.of(number).text(), failure);
			}
		}
	}

	/** Once, its figures were sought to be changed one by one. */
	@Test
	void aHalfTypedPieceIsReplacedWhole() throws IOException {
		new FuzzTarget().use(new FuzzCase("fuzz.plan", "plan P for BoehmC with Bench {\n\tfit Felt with Clear\n"
				+ "\tread at 12 3 6 9\n\tkey G felt . 1 . . shim 5\n}\n"));
	}
}
