package padwright.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

import padwright.engine.drift.Drift;
import padwright.workup.drift.PlanDrift;
import padwright.workup.service.ServicePlan;

class DriftCommandTest {

	private static final String BODY = """
			seat within 0.05 thou
			player "P-1" { home 28 °C 70 %RH }
			fit Felt on Disc with Clear
			read at 12 3 6 9
			key Fs stack 7.5 7.5
			key F stack 7.5 5
			key Ds
			""";

	@TempDir
	private Path folder;

	@Test
	void programsGetWhatTheEngineSays() {
		Path file = DemoShop.in(folder).plan("Spring", BODY);
		JsonObject json = CommandRun.padwright("drift", file, "--json").json();
		ServicePlan plan = LoadedShop.around(file).plan();
		Drift engine = PlanDrift.of(plan, PlanDrift.bench(plan).orElseThrow(), PlanDrift.home(plan).orElseThrow())
				.keys().get(0).known().orElseThrow();
		JsonObject first = json.getAsJsonArray("keys").get(0).getAsJsonObject();
		assertEquals("Fs", first.get("key").getAsString());
		assertEquals("[" + Json.thou(engine.total().low()) + "," + Json.thou(engine.total().high()) + "]",
				first.getAsJsonArray("known").toString());
		assertEquals(engine.layers().size(), first.getAsJsonArray("layers").size());
		assertEquals("surely exceeds", first.get("verdictOfKnown").getAsString());
		assertEquals("unknown", first.get("verdict").getAsString());
		assertEquals("[\"face felt (expansion, swelling)\"]", first.get("unknown").toString());
	}

	@Test
	void theTableTellsIntervalsVerdictsAndWhatIsMissing() {
		CommandRun run = CommandRun.padwright("drift", DemoShop.in(folder).plan("Spring", BODY));
		assertEquals(ExitStatus.CLEAN, run.status(), run.err());
		// Derived here, twice 20 thou of acetal: 40 × (8 K × 100..110 ppm/K + 25 %RH × 0.002..0.004 %/%RH), and
		// 15 thou of polyester: 15 × (8 × 17 ppm + 25 × 0.0008 %); rounded outward to hundredths.
		assertEquals("F♯|+0.05 to +0.09|about 0.2 thou|backing acetal|leaves the seat, as far as known", run.line("F♯"));
		assertEquals("|backing acetal|20|+0.02 to +0.04", run.line("  backing"));
		assertTrue(run.out().contains("not known: face felt (expansion, swelling)"), run.out());
		assertTrue(run.out().contains("full shims polyester (thickness)"), run.out());
	}

	@Test
	void aMissingOrImpossibleClimateIsSaid() {
		DemoShop shop = DemoShop.in(folder);
		CommandRun homeless = CommandRun.padwright("drift", shop.plan("Spring", "key Fs"));
		assertEquals(ExitStatus.UNUSABLE, homeless.status());
		assertTrue(homeless.err().contains("write home 24 °C 60 %RH into player"), homeless.err());
		CommandRun drowned = CommandRun.padwright("drift",
				shop.plan("Spring", "player { home 20 °C 170 %RH } key Fs"));
		assertEquals(ExitStatus.UNUSABLE, drowned.status());
		assertTrue(drowned.err().contains("humidity 170 %RH is not 0 to 100"), drowned.err());
		CommandRun.write(folder, "bare.stock", "stock Bare { }");
		CommandRun benchless = CommandRun.padwright("drift", CommandRun.write(folder, "Bare.plan",
				"plan Bare for Duo with Bare { player { home 20 °C 50 %RH } }"));
		assertEquals(ExitStatus.UNUSABLE, benchless.status());
		assertTrue(benchless.err().contains("write bench 20 °C 45 %RH"), benchless.err());
	}
}
