package padwright.commands;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

import padwright.paper.sound.SoundPages;
import padwright.paper.system.SystemSoundSheet;
import padwright.workup.report.SoundReport;
import padwright.workup.sound.SystemSound;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how the notes of a key system sound. */
@Command(name = "sound", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:it was told, but the file has errors",
				"2:the system cannot be used at all, or lacks sizes" },
		description = "Tells for every fingering of a key system by how many cents it is off, and how strong its resonance is "
				+ "against the next; then how even the octaves are. A model of the air column, without a player.")
final class SoundCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "SYSTEM", description = ChosenSystem.DESCRIPTION)
	private String system;

	@Option(names = "--holes", description = "Tell, too, what 0.1 mm does at every hole: farther down, wider, deeper.")
	private boolean holes;

	@Option(names = "--json", description = "Print it for programs.")
	private boolean json;

	@Option(names = "--csv", description = "Print the notes for spreadsheets.")
	private boolean csv;

	@Option(names = "--svg", description = "Draw cents and strengths by note as an SVG.")
	private boolean svg;

	@Mixin
	private PaperOptions paper;

	@Mixin
	private ImpedanceOptions impedance;

	@Mixin
	private FitOptions fit;

	@Mixin
	private VentingOptions venting;

	@Spec
	private CommandSpec spec;

	@Override
	public boolean draws() {
		return svg;
	}

	@Override
	public Integer call() {
		ChosenSystem chosen = ChosenSystem.of(system);
		boolean isImpedance = impedance.isAsked();
		boolean isFit = fit.isAsked();
		boolean isVenting = venting.isAsked();
		SystemSound sound = SoundSystem.of(chosen, spec.commandLine().getErr());
		PrintWriter out = spec.commandLine().getOut();
		if (isImpedance) {
			out.println(ShownPath.of(impedance.write(sound)));
		} else if (isFit) {
			fit(chosen, sound);
		} else if (isVenting) {
			venting.print(sound, out, json);
		} else if (svg) {
			draw(sound);
		} else if (json) {
			Json.print(out, SoundJson.of(sound, holes));
		} else if (csv) {
			out.print(SoundCsv.of(sound));
			out.flush();
		} else {
			TextTable.print(out, SoundReport.of(sound, holes));
			out.flush();
		}
		return chosen.errors().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private void draw(SystemSound sound) {
		try {
			paper.files(spec.commandLine().getOut()).writeSvg(sound.system().getName() + "-sound",
					new SoundPages(SystemSoundSheet.of(sound), paper.paper()).pages());
		} catch (IllegalArgumentException silent) {
			throw new InputException(sound.system().getName() + " was not drawn: " + silent.getMessage());
		}
	}

	private void fit(ChosenSystem chosen, SystemSound sound) {
		SoundFit tuned = SoundFit.of(chosen, sound, fit.room());
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, SoundFitText.json(sound, tuned));
		} else {
			SoundFitText.print(out, sound, tuned);
		}
		fit.file().ifPresent(copy -> {
			tuned.write(copy);
			spec.commandLine().getErr().println("wrote the text with these changes to " + ShownPath.of(copy));
		});
	}
}
