package padwright.language.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.language.TestShop;
import padwright.model.keysystem.KeySystem;
import padwright.model.systems.EffectiveSystem;

/** What an heir writes of what it inherits: what it is based on stays as it is. */
class InheritedElementTest {

	private static final String BASE = """
			unit mm
			system Base {
				touch T
				key A open by T closes B through screw ratio 0.5, C hole 13 rim 1 cup 16 at 100
				key B
				key C
			}
			""";
	private static final String HEIR = "unit mm\nsystem Heir based on Base {\n\tkey D\n}\n";

	/** The text of the heir, whose first key of the base it is about. */
	private record Heir(String base, String text) {

		private KeySystem system() {
			return TestShop.of("base.keys", base).with("heir.keys", text).document("heir.keys").getSystems().get(0);
		}

		InheritedElement element() {
			KeySystem system = system();
			KeySystem outermost = EffectiveSystem.lineage(system).iterator().next();
			return new InheritedElement(system, outermost.getKeys().get(0));
		}

		private static ElementField field(InheritedElement element, String clause, String feature) {
			return element.fields().stream().filter(each -> each.feature().getName().equals(feature))
					.filter(each -> feature.equals(clause) || each.element().eContainingFeature().getName().equals(clause))
					.findFirst().orElseThrow(() -> new AssertionError(clause + "." + feature));
		}

		String value(String clause, String feature) {
			return field(element(), clause, feature).text();
		}

		Heir with(String clause, String feature, String value) {
			InheritedElement element = element();
			ElementField field = field(element, clause, feature);
			assertEquals(Optional.empty(), element.fault(field, value));
			return new Heir(base, TextEdit.apply(element.edit(field, value), text));
		}

		ListRows rows(InheritedElement element, String list) {
			return ListRows.of(field(element, list, list)).orElseThrow();
		}

		ElementField inRow(InheritedElement element, int row, String feature) {
			return element.fields(rows(element, "closes"), row).stream().filter(each -> each.feature().getName().equals(feature))
					.findFirst().orElseThrow();
		}

		Heir inRow(int row, String feature, String value) {
			InheritedElement element = element();
			return new Heir(base, TextEdit.apply(element.edit(inRow(element, row, feature), value), text));
		}
	}

	private static void says(String change, Heir heir) {
		assertEquals(HEIR.replace("}", "\tchange A " + change + "\n}"), heir.text());
		assertFalse(TestShop.of("a.keys", heir.text()).resource("a.keys").getParseResult().hasSyntaxErrors());
	}

	private static Heir heir() {
		return new Heir(BASE, HEIR);
	}

	@Test
	void whatIsInheritedIsShown() {
		assertEquals("100", heir().value("position", "position"));
		assertEquals("1", heir().value("hole", "rimWidth"));
		assertEquals("B through screw ratio 0.5, C", heir().value("closes", "closes"));
	}

	@Test
	void theFirstEditWritesAChangeAndTheNextIntoIt() {
		Heir once = heir().with("position", "position", "102");
		says("at 102", once);
		assertEquals("102", once.value("position", "position"));
		assertEquals("open", once.value("posture", "posture"));
		says("closed at 102", once.with("posture", "posture", "closed"));
		says("at 103", once.with("position", "position", "103"));
	}

	@Test
	void fieldsStayInTheirOrder() {
		assertEquals(names(heir()), names(heir().with("position", "position", "102").with("posture", "posture", "closed")));
	}

	private static List<String> names(Heir heir) {
		return heir.element().fields().stream().map(field -> field.feature().getName()).toList();
	}

	@Test
	void aPartIsSaidWithWhatItNeeds() {
		Heir wider = heir().with("hole", "rimWidth", "1.2");
		says("hole 13 rim 1.2", wider);
		says("hole 13 rim 1.2 chimney 2", wider.with("hole", "chimney", "2"));
	}

	@Test
	void everyClauseOfACouplingIsAFieldOfItsOwn() {
		Heir heir = heir();
		assertEquals(List.of("driven", "kind", "thread", "pitch", "ratio", "play", "condition"),
				heir.rows(heir.element(), "closes").fields(0).stream().map(each -> each.feature().getName()).toList());
		says("closes B through screw ratio 0.75, C", heir.inRow(0, "ratio", "0.75"));
		says("closes B through screw ratio 0.5, C through cork", heir.inRow(1, "kind", "cork"));
		says("closes B through screw ratio 0.5, C when B is pressed", heir.inRow(1, "condition", "B"));
		says("closes B through felt ratio 0.5, C", heir.inRow(0, "ratio", "0.5").inRow(0, "kind", "felt"));
		says("closes B through screw, C", heir.inRow(0, "ratio", ""));
		assertTrue(heir.inRow(heir.element(), 0, "driven").choices().contains("B"));
	}

	@Test
	void aCouplingCanMoveAKeyOfTheHeir() {
		says("closes B through screw ratio 0.5, D", heir().inRow(1, "driven", "D"));
	}

	@Test
	void theLastCouplingTakenOutLeavesNothing() {
		InheritedElement element = heir().element();
		ListRows rows = heir().rows(element, "closes");
		String one = TextEdit.apply(element.edit(rows, rows.remove(0)), HEIR);
		says("closes C", new Heir(BASE, one));
		Heir left = new Heir(BASE, one);
		InheritedElement changed = left.element();
		ListRows last = left.rows(changed, "closes");
		assertTrue(changed.canBeEmpty(last));
		assertEquals(HEIR, TextEdit.apply(changed.edit(last, last.remove(0)), one));
		says("by nothing", heir().with("touches", "touches", ""));
		says("by T", heir().with("touches", "touches", "").with("touches", "touches", "T"));
	}

	@Test
	void aChangeGoesWithItsLastClause() {
		assertEquals(HEIR, heir().with("position", "position", "102").with("position", "position", "").text());
		assertEquals(HEIR, TextEdit.apply(heir().with("position", "position", "102").element().asInherited(),
				heir().with("position", "position", "102").text()));
	}

	@Test
	void whatIsInheritedCannotBeTakenAway() {
		InheritedElement element = heir().element();
		assertTrue(element.fault(Heir.field(element, "position", "position"), "").isPresent());
		assertTrue(element.fault(Heir.field(element, "hole", "rimWidth"), "").isPresent());
	}

	@Test
	void lengthsKeepTheirUnitInADocumentOfAnother() {
		Heir other = new Heir(BASE, HEIR.replace("unit mm", "unit thou"));
		assertTrue(other.with("hole", "rimWidth", "1.2").text().contains("change A hole 13 mm rim 1.2 mm\n"));
		assertTrue(other.with("position", "position", "102").text().contains("change A at 102 mm\n"));
		assertTrue(other.with("posture", "posture", "closed").with("position", "position", "102").text()
				.contains("change A closed at 102 mm\n"));
	}

	@Test
	void whatAChangeInBetweenSaysCounts() {
		String between = BASE + "system Between based on Base {\n\tchange A hole 14 at 101\n}\n";
		Heir heir = new Heir(between, HEIR.replace("on Base", "on Between"));
		assertEquals("101", heir.value("position", "position"));
		assertEquals("14", heir.value("hole", "diameter"));
		assertEquals("1", heir.value("hole", "rimWidth"));
		assertEquals(HEIR.replace("on Base", "on Between").replace("}", "\tchange A hole 14 rim 1.2\n}"),
				heir.with("hole", "rimWidth", "1.2").text());
	}
}
