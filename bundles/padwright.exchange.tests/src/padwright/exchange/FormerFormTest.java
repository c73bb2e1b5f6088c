package padwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import padwright.exchange.tree.ExchangeException;

/** What was written before backing discs were called so is read as it was meant. */
class FormerFormTest {

	private static final Exchange EXCHANGE = ExampleDocuments.LANGUAGE.getInstance(Exchange.class);

	@Test
	void namesAreRenewedAndAllElseIsKept() throws ExchangeException {
		String former = """
				{"format": "padwright/1",
				"stocks": [{"name": "Bench", "label": "stabiliser",
				"materials": [{"name": "engineered"}],
				"pads": [{"name": "Rigid", "kind": "engineered", "needsStabiliser": true}],
				"stabilisers": [{"name": "Disc", "material": "engineered", "thickness": "0.5 mm"}]}]}""";
		String now = """
				{"format": "padwright/2",
				"stocks": [{"name": "Bench", "label": "stabiliser",
				"materials": [{"name": "engineered"}],
				"pads": [{"name": "Rigid", "kind": "rigid", "needsBacking": true}],
				"backings": [{"name": "Disc", "material": "engineered", "thickness": "0.5 mm"}]}]}""";
		assertEquals(EXCHANGE.read(now, Format.JSON), EXCHANGE.read(former, Format.JSON));
	}
}
