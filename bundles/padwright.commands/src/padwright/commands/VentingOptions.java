package padwright.commands;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

import padwright.workup.report.VentingReport;
import padwright.workup.sound.PadVenting;
import padwright.workup.sound.SystemSound;
import picocli.CommandLine.Option;

/** What raised pads do to the notes. */
final class VentingOptions {

	@Option(names = "--venting", description = "Tell instead what every raised pad does to the notes by hanging over its hole: "
			+ "how flat and weak, what 0.1 mm more does, and from which rise on nothing changes any more.")
	private boolean venting;

	@Option(names = "--key", paramLabel = "KEY",
			description = "With --venting: one pad at several rises, note by note.")
	private String key;

	/** @throws InputException if a key stands without it */
	boolean isAsked() {
		if (key != null && !venting) {
			throw new InputException("--key names the pad that --venting tells of; give both");
		}
		return venting;
	}

	void print(SystemSound system, PrintWriter out, boolean json) {
		List<PadVenting> pads = PadVenting.of(system);
		if (key == null && json) {
			Json.print(out, VentingJson.of(system, pads));
		} else if (key == null) {
			TextTable.print(out, VentingReport.of(system, pads));
		} else if (json) {
			Json.print(out, VentingJson.of(system, pad(pads)));
		} else {
			TextTable.print(out, VentingReport.of(system, pad(pads)));
		}
		out.flush();
	}

	private PadVenting pad(List<PadVenting> pads) {
		return pads.stream().filter(pad -> pad.key().equals(key)).findFirst()
				.orElseThrow(() -> new InputException("no usual note opens a pad of key " + key + "; there are "
						+ pads.stream().map(PadVenting::key).collect(Collectors.joining(", "))));
	}
}
