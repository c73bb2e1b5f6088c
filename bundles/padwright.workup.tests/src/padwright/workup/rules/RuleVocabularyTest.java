package padwright.workup.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.model.stock.Material;
import padwright.workup.DemoPlan;

class RuleVocabularyTest {

	private final DemoPlan demo = new DemoPlan();

	@Test
	void onlyQuantitiesHaveUnitsAndOnlyNamesHaveValues() {
		for (String property : RuleVocabulary.properties()) {
			if (RuleVocabulary.isQuantity(property)) {
				assertTrue(RuleVocabulary.values(property, demo.stock).isEmpty(), property);
			} else {
				assertTrue(RuleVocabulary.units(property).isEmpty(), property);
			}
		}
	}

	@Test
	void valuesAreWhatAPropertyCanBe() {
		Material paper = demo.material("paper", "17", "0.1");
		assertTrue(RuleVocabulary.values("shim.material", demo.stock).contains("paper"));
		assertTrue(RuleVocabulary.names("shim.material", paper));
		assertFalse(RuleVocabulary.names("pad.kind", paper));
		assertEquals(List.of(demo.pad.getName()), List.copyOf(RuleVocabulary.values("pad", demo.stock)));
		assertEquals(List.of("soldered", "drawn"), List.copyOf(RuleVocabulary.values("hole.make", demo.stock)));
	}

	@Test
	void unknownPropertyHasNothing() {
		assertEquals(List.of(), RuleVocabulary.units("pad.colour"));
		assertFalse(RuleVocabulary.isQuantity("pad.colour"));
		assertTrue(RuleVocabulary.values("pad.colour", demo.stock).isEmpty());
	}
}
