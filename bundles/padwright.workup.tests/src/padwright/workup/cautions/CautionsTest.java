package padwright.workup.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import padwright.model.Range;
import padwright.model.stock.Adhesive;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.model.stock.StockFactory;
import padwright.workup.DemoPlan;

class CautionsTest {

	private final DemoPlan demo = new DemoPlan();

	private List<String> cautions() {
		return Cautions.of(demo.service());
	}

	private boolean speaksOf(String word) {
		return cautions().stream().anyMatch(caution -> caution.contains(word));
	}

	private void glueWith(Adhesive glue) {
		demo.stock.getAdhesives().add(glue);
		demo.plan.getFitting().setAdhesive(glue);
	}

	@Test
	void someBelongOnEveryPaper() {
		List<String> always = cautions();
		assertEquals(3, always.size());
		assertTrue(speaksOf("saliva") && speaksOf("Never file a rim to level a pad"));
		assertEquals(Cautions.dataSheets(), always.get(2));
		demo.row(demo.key("A"));
		assertEquals(always, cautions());
	}

	@Test
	void materialsInTheCupAreNamedOnce() {
		Material skin = demo.material("bladder", null, null);
		skin.setAnimal(true);
		demo.layer(LayerRole.SKIN, skin, "1");
		demo.row(demo.key("A"));
		demo.row(demo.key("B"));
		assertEquals(1, cautions().stream().filter(caution -> caution.contains("bladder")).count());
		assertTrue(speaksOf("bladder is an animal product: mind allergies and import rules."));
	}

	@Test
	void materialsThatNoRowFitsAreNot() {
		Material skin = demo.material("bladder", null, null);
		skin.setAnimal(true);
		demo.layer(LayerRole.SKIN, skin, "1");
		assertFalse(speaksOf("bladder"));
	}

	@Test
	void labelsGoBeforeNames() {
		Material skin = demo.material("bladder", null, null);
		skin.setLabel("goldbeater's skin");
		skin.setAnimal(true);
		demo.layer(LayerRole.SKIN, skin, "1");
		demo.row(demo.key("A"));
		assertTrue(speaksOf("goldbeater's skin"));
		assertFalse(speaksOf("bladder"));
	}

	@Test
	void hazardsCarryTheirCodeAndWordingInOrder() {
		Adhesive glue = StockFactory.eINSTANCE.createAdhesive();
		glue.setName("Thin");
		glue.getHazards().addAll(List.of("H335", "H315", "H335", "X1"));
		glueWith(glue);
		demo.row(demo.key("A"));
		assertTrue(cautions().contains("Thin: H315 Causes skin irritation. H335 May cause respiratory irritation. "
				+ "X1 (wording: see the safety data sheet)"), cautions().toString());
	}

	@Test
	void heatIsNamedWhereTheGlueSoftens() {
		Adhesive glue = StockFactory.eINSTANCE.createAdhesive();
		glue.setName("Shellac");
		glueWith(glue);
		demo.row(demo.key("A"));
		assertFalse(speaksOf("Shellac"));
		glue.setSoftens(Range.valueOf("65..70"));
		assertTrue(speaksOf("65..70 °C"));
	}

	@Test
	void eachPaperCarriesWhatItNames() {
		Adhesive glue = StockFactory.eINSTANCE.createAdhesive();
		glue.setName("Thin");
		glue.getHazards().add("H315");
		glueWith(glue);
		Material film = demo.material("film", null, null);
		film.getHazards().add("H317");
		demo.stock.getFilms().get(0).setMaterial(film);
		demo.row(demo.key("A"));
		String ofGlue = "Thin: H315 Causes skin irritation.";
		String ofFilm = "film: H317 May cause an allergic skin reaction.";
		assertEquals(List.of(ofGlue, ofFilm, Cautions.dataSheets()), Cautions.ofMaterials(demo.service()));
		assertEquals(List.of(ofFilm, Cautions.dataSheets()), Cautions.ofFilm(demo.service()));
		assertEquals(List.of(ofGlue, ofFilm), Cautions.hazardsOf(demo.service()));
		assertTrue(cautions().containsAll(List.of(ofGlue, ofFilm, Cautions.dataSheets())));
	}
}
