package padwright.views.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

class BenchKeysTest {

	private static BenchKeys with(BenchAction action, String said) {
		return BenchKeys.of(each -> each == action ? said : each.firstKeys());
	}

	@Test
	void aFootSwitchCanDoAnything() {
		BenchKeys keys = with(BenchAction.NEXT, "f9 Home +");
		assertEquals(Optional.of(BenchAction.NEXT), keys.action("F9"));
		assertEquals(Optional.of(BenchAction.NEXT), keys.action("Home"));
		assertEquals(Optional.empty(), keys.action("PageDown"));
		assertEquals("F9", keys.key(BenchAction.NEXT));
		assertEquals("", with(BenchAction.SAY, "").key(BenchAction.SAY));
	}

	@Test
	void keysThatCannotBeAreToldInWords() {
		for (String wrong : new String[] {"5", "Footswitch", "."}) {
			String told = assertThrows(IllegalArgumentException.class, () -> with(BenchAction.NEXT, wrong)).getMessage();
			assertTrue(told.startsWith(wrong + " "), told);
		}
	}
}
