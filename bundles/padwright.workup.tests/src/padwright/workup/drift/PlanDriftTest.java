package padwright.workup.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import padwright.engine.drift.Climate;
import padwright.engine.drift.Drift;
import padwright.engine.drift.DriftVerdict;
import padwright.engine.drift.Layer;
import padwright.engine.drift.LayerDrift;
import padwright.engine.drift.MaterialRange;
import padwright.engine.length.Length;
import padwright.model.Measure;
import padwright.model.keysystem.Key;
import padwright.model.plan.KeyService;
import padwright.model.stock.LayerRole;
import padwright.model.stock.Material;
import padwright.workup.DemoPlan;

class PlanDriftTest {

	private static final Climate BENCH = Climate.of("20", "45");
	private static final Climate HOME = Climate.of("28", "70");

	private final DemoPlan demo = new DemoPlan();
	private final Key key = demo.key("F");
	private final KeyService row = demo.row(key);
	/** Invented figures. */
	private final Material acetal = demo.material("acetal", "100..110", "0.002..0.004");

	@Test
	void layersFromTheFloorUpGoToTheEngine() {
		demo.backing(acetal, "20");
		demo.plan.getFitting().getFilms().setMaterial(demo.material("polyester", "17", "0.001"));
		demo.layer(LayerRole.BASE, acetal, "32");
		row.setStack(demo.thicknesses("7.5 5 2"));
		MaterialRange expands = MaterialRange.of("100", "110");
		MaterialRange swells = MaterialRange.of("0.002", "0.004");
		List<Layer> layers = List.of(new Layer("backing acetal", Length.thou("20"), expands, swells),
				new Layer("full shims polyester", Length.thou("14.5"), MaterialRange.exactly("17"),
						MaterialRange.exactly("0.001")),
				new Layer("base acetal", Length.thou("32"), expands, swells));
		KeyDrift drift = drift(HOME);
		assertEquals(Optional.of(Drift.of(layers, BENCH, HOME)), drift.known());
		assertTrue(drift.complete());
		assertEquals(Optional.of(DriftVerdict.SURELY_WITHIN), drift.verdictOfKnown(Length.thou("0.5")));
	}

	@Test
	void withoutAStackTheTargetOfTheHeightCounts() {
		demo.plan.getFitting().getFilms().setMaterial(acetal);
		row.setEmpty(demo.thicknesses("15 15 14 16"));
		assertEquals(Length.thou("15"), drift(HOME).known().orElseThrow().layers().get(0).layer().thickness());
	}

	@Test
	void materialsWithoutDataAreNamedAndNotCounted() {
		demo.plan.getFitting().setFilms(null);
		demo.layer(LayerRole.BASE, acetal, "32");
		demo.layer(LayerRole.FACE, demo.material("felt", null, null), "80");
		KeyDrift drift = drift(HOME);
		assertEquals(List.of("base acetal"), names(drift));
		assertEquals(List.of("face felt (expansion, swelling)"), words(drift));
		assertFalse(drift.complete());
	}

	@Test
	void halfKnownLayersCountAndAreNamed() {
		demo.plan.getFitting().setFilms(null);
		demo.layer(LayerRole.FACE, demo.material("paper", null, "0.01..0.08"), "80");
		KeyDrift drift = drift(HOME);
		assertEquals(List.of("face paper"), names(drift));
		assertEquals(List.of("face paper (expansion)"), words(drift));
	}

	@Test
	void whatTheClimatesDoNotAskForIsNotMissed() {
		demo.plan.getFitting().setFilms(null);
		demo.layer(LayerRole.FACE, demo.material("paper", null, "0.01..0.08"), "80");
		assertTrue(drift(Climate.of("20.0", "70")).complete());
		assertEquals(List.of("face paper (expansion)"), words(drift(Climate.of("21", "45"))));
		assertTrue(drift(BENCH).complete());
	}

	@Test
	void aThicknessWithoutLayersIsUnknown() {
		demo.plan.getFitting().setFilms(null);
		demo.layer(LayerRole.BASE, acetal, "32");
		demo.pad.setThickness(Measure.valueOf("98 thou"));
		assertEquals(List.of("66 thou of the pad (material)"), words(drift(HOME)));
	}

	@Test
	void withoutAnyThicknessNothingIsKnown() {
		demo.plan.getFitting().getFilms().setMaterial(acetal);
		KeyDrift drift = drift(HOME);
		assertEquals(Optional.empty(), drift.known());
		assertEquals(Optional.empty(), drift.verdictOfKnown(Length.thou("0.5")));
		assertEquals(List.of("full shims acetal (thickness)", "pad (thickness, material)"), words(drift));
	}

	@Test
	void climatesComeFromStockAndPlayer() {
		assertEquals(Optional.empty(), PlanDrift.bench(demo.service()));
		assertEquals(Optional.empty(), PlanDrift.home(demo.service()));
		demo.stock.setClimate(demo.climate("20", "45"));
		demo.player("P-1", "2026-03-02");
		demo.plan.getPlayer().setHome(demo.climate("28", "70"));
		assertEquals(Optional.of(BENCH), PlanDrift.bench(demo.service()));
		assertEquals(Optional.of(HOME), PlanDrift.home(demo.service()));
		demo.stock.getClimate().setHumidity(null);
		assertEquals(Optional.empty(), PlanDrift.bench(demo.service()), "a part of it could not be read");
		demo.stock.setClimate(demo.climate("20", "145"));
		assertThrows(IllegalArgumentException.class, () -> PlanDrift.bench(demo.service()));
	}

	private KeyDrift drift(Climate home) {
		return PlanDrift.of(demo.service(), BENCH, home).keys().get(0);
	}

	private static List<String> names(KeyDrift drift) {
		return drift.known().orElseThrow().layers().stream().map(LayerDrift::layer).map(Layer::name).toList();
	}

	private static List<String> words(KeyDrift drift) {
		return drift.unknown().stream().map(UnknownLayer::toString).toList();
	}
}
