package padwright.language.resource;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.eclipse.emf.ecore.resource.Resource.Diagnostic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.language.TestShop;

/** What is not finished is marked where it ends; what cannot stand where it does is marked itself. */
class UnfinishedTextTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			key A felt . . shim 0.5 from 2\\n key B    | 1
			key A felt . . shim 0.5 from 2\\n }        | 1
			key A felt . . shim\\n key B               | 1
			key A felt\\n key B                        | 1
			key A felt . .\\n kei B\\n key C           | 2
			key A felt . .\\n date 2026-01-01\\n key C | 2
			key A felt . . empty 15\\n key B           | 1
			""")
	void isFoundAtItsOwnLine(String rows, int line) {
		TestShop shop = TestShop.of("x.plan", "plan X for Y {" + rows.replace("\\n", "\n") + "\n}\n");
		assertEquals(List.of(line), shop.resource("x.plan").getErrors().stream()
				.filter(error -> !error.getMessage().contains("Y")).map(Diagnostic::getLine).limit(1).toList());
	}
}
