package padwright.commands;

import java.nio.file.Path;

/** A small shop in a folder for tests. All invented. */
final class DemoShop {

	private static final String SYSTEM = """
			system Duo "two keys" {
				touch R1
				touch R2
				touch R4
				touch Side by R3
				key Fs "F♯" open by Side hole 13 mm rim 1 mm cup 17.5 mm
				key F open by R1 closes Fs through screw "UNM 1.00" hole 13 mm rim 1 mm cup 17.5 mm
				key E open by R2 closes Fs through cork hole 13 mm cup 17.5 mm
				key Ds "D♯" closed by R4 cup 17.5 mm
				note E4 : R1 R2 R4
				note F4 : R1 R4
				note F♯4 : R2
				note F♯4 "side" : Side
				note G4 : R4
			}
			""";

	private static final String STOCK = """
			stock Bench {
				bench 20 °C 45 %RH
				material acetal { expands 100..110 ppm/K swells 0.002..0.004 %/%RH }
				material felt { lasts 10 years }
				material polyester { expands 17 ppm/K swells 0.0008 %/%RH }
				kind felt { }
				pad Felt { kind felt base acetal 20 thou face felt 80 thou thick 100 thou stiffness 0.003 }
				backing Disc acetal 20 thou
				film Clear polyester { 0.5 1 2 3 5 7.5 thou }
				feeler Half 0.5 thou
				feeler One 1 thou
				feeler OneAndHalf 1.5 thou
				feeler Two 2 thou
				feeler Three 3 thou
				feeler Four 4 thou
			}
			""";

	private final Path folder;

	private DemoShop(Path folder) {
		this.folder = folder;
	}

	static DemoShop in(Path folder) {
		CommandRun.write(folder, "padwright.shop", "");
		CommandRun.write(folder, "duo.keys", SYSTEM);
		CommandRun.write(folder, "bench.stock", STOCK);
		return new DemoShop(folder);
	}

	/** Writes the plan {@code name} with this body. */
	Path plan(String name, String body) {
		return CommandRun.write(folder, name + ".plan",
				"plan " + name + " for Duo serial \"X-1\" with Bench {\n" + body + "\n}\n");
	}
}
