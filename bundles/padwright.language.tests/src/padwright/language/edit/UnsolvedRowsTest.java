package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import padwright.language.TestShop;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.KeySolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** A row with an error that would mislead is not solved and says why; the sound row beside it is. */
class UnsolvedRowsTest {

	private static final String SHOP = """
			system Flute {
				key A cup 16.5 mm
				key B cup 16.5 mm
				key Shallow cup 16.5 mm deep 0.4 mm
			}
			stock Bench {
				levelling { enough 1 % }
				material polyester { }
				pad Soft { kind felt stiffness 0 }
				pad Bare { kind rigid stiffness 0 needs backing }
				backing Disc20 polyester 20 thou
				film Clear polyester { 0.5 1 2 5 7.5 thou }
				feeler Tape 0.5 thou
				feeler Leaf 1 thou
			}
			""";
	private static final String SOUND = "key B empty 15 15 felt . 1";

	private static List<KeySolution> solve(String rows, String hours) {
		TestShop shop = TestShop.of("shop.plan", text("Flute", "fit Soft with Clear", hours + rows));
		assertEquals(List.of(), shop.resource("shop.plan").getErrors());
		return solve(shop);
	}

	private static String text(String system, String fitting, String rows) {
		return SHOP + "plan P for " + system + " with Bench {\n\t" + fitting + "\n" + rows + "\n}\n";
	}

	private static List<KeySolution> solve(TestShop shop) {
		return PlanSolver.solve(new ServicePlan(shop.document("shop.plan").getPlans().get(0)), WrittenAnswers.KEEP, job -> {
		}).keys();
	}

	private static void assertSolved(KeySolution key) {
		assertEquals(List.of(), key.unsolved());
		assertTrue(key.height().isPresent() && key.level().isPresent());
	}

	private static void assertUnsolved(KeySolution key, String reason) {
		assertTrue(key.height().isEmpty() && key.level().isEmpty());
		assertEquals(1, key.unsolved().size(), key.unsolved()::toString);
		assertTrue(key.unsolved().get(0).words().contains(reason), key.unsolved()::toString);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '"', value = {
			"key A empty 15 400 felt . 1 | 400",
			"key A empty 15 14.00001 felt . 1 | 14.00001",
			"key A empty 15 15 15 felt . 1 | 3",
			"key A empty 15 15 felt . 1 1 | 3",
			"key A empty 15 15 felt . - | dash",
			"key A empty 15 15 felt . 1 out 0.5 from 12 to 3 | 0.5",
			"key A empty 15 15 felt . 0.7 | 0.7",
			"key A empty 15 15 felt at 12 12 : . 1 | 12",
			"key A fit Bare with Clear empty 15 15 felt . 1 | Bare",
			"key Shallow fit Soft on Disc20 with Clear empty 15 15 felt . 1 | 20",
	})
	void withItsReason(String row, String reason) {
		List<KeySolution> keys = solve(row + "\n" + SOUND, "\tread at 12 6\n");
		assertUnsolved(keys.get(0), reason);
		assertSolved(keys.get(1));
	}

	@Test
	void aKeyThatIsServedTwice() {
		List<KeySolution> keys = solve("key A empty 15 15 felt . 1\nkey A empty 14 14 felt . 1\n" + SOUND, "\tread at 12 6\n");
		assertEquals(List.of(true, false, true), keys.stream().map(key -> key.unsolved().isEmpty()).toList());
		assertTrue(keys.get(1).unsolved().get(0).words().contains("A"), keys.get(1).unsolved()::toString);
	}

	@Test
	void readingsWithoutHours() {
		List<KeySolution> keys = solve("key A felt . 1\nkey B felt at 12 6 : . 1", "");
		assertUnsolved(keys.get(0), "read at");
		assertTrue(keys.get(1).level().isPresent());
	}

	@Test
	void aKeyThatTheSystemDoesNotHave() {
		TestShop shop = TestShop.of("shop.plan",
				text("Flute", "fit Soft with Clear", "\tread at 12 6\nkey Nowhere empty 15 15 felt . 1\n" + SOUND));
		List<KeySolution> keys = solve(shop);
		assertUnsolved(keys.get(0), "the plan's key system has no such key");
		assertSolved(keys.get(1));
	}

	@Test
	void aSystemThatIsNotThere() {
		TestShop shop = TestShop.of("shop.plan",
				text("Nowhere", "fit Soft with Clear", "\tread at 12 6\n" + SOUND));
		assertUnsolved(solve(shop).get(0), "the plan's key system is not there");
	}

	@Test
	void aRowWithoutFilm() {
		TestShop shop = TestShop.of("shop.plan", text("Flute", "fit Soft", "\tread at 12 6\n" + SOUND));
		assertUnsolved(solve(shop).get(0), "no shim film is named");
	}
}
