package padwright.commands;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

import padwright.engine.coupling.CircularCouplingException;
import padwright.model.keysystem.KeySystem;
import padwright.paper.sheet.LayoutDrawing;
import padwright.paper.sheet.LayoutSheet;
import padwright.paper.sheet.LayoutSheetPages;
import padwright.paper.system.SystemSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws the key-layout sheet of a key system. */
@Command(name = "sheet", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the sheet was drawn", "1:it was drawn, but the file has errors",
				"2:the system cannot be used at all" },
		description = "Draws the key-layout sheet of a key system: each joint from the side and unrolled, with cups, holes and rods, "
				+ "tables of keys, couplings, joints, touches and rods, and the fingerings with the holes they close.")
final class SheetCommand implements Callable<Integer>, DrawsPaper {

	@Parameters(paramLabel = "SYSTEM", description = ChosenSystem.DESCRIPTION)
	private String system;

	@Mixin
	private PaperOptions paper;

	@Option(names = "--revision", paramLabel = "TEXT",
			description = "Printed in the head, as in --revision C (default: the last revision in the text).")
	private String revision;

	@Option(names = "--date", paramLabel = "TEXT",
			description = "Printed in the head (default: the day of that revision); none is made up.")
	private String date;

	@Option(names = "--dxf", description = "Also writes joints and sections in life size as NAME-key-layout.dxf, for drawing "
			+ "programs: one unit is one millimetre.")
	private boolean dxf;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		ChosenSystem chosen = ChosenSystem.of(system);
		FindingLines.print(spec.commandLine().getErr(), chosen.errors());
		LayoutSheet sheet = sheet(chosen.system(), chosen.file());
		String name = chosen.system().getName() + "-key-layout";
		PageFiles files = paper.files(spec.commandLine().getOut());
		files.write(name, sheet.title(), new LayoutSheetPages(sheet, paper.paper()).pages());
		if (dxf) {
			files.writeDxf(name, LayoutDrawing.of(sheet));
		}
		return chosen.errors().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private LayoutSheet sheet(KeySystem chosen, Path file) {
		try {
			return SystemSheet.of(chosen, Optional.ofNullable(revision), Optional.ofNullable(date));
		} catch (CircularCouplingException circle) {
			throw new InputException(file, "cannot be drawn: " + circle.getMessage());
		} catch (IllegalArgumentException nothing) {
			throw new InputException(file, "has nothing to draw; write key and its name, or hole, its name and its place");
		}
	}
}
