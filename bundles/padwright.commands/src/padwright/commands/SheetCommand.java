package padwright.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import padwright.engine.coupling.CircularCouplingException;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
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
		description = "Draws the key-layout sheet of a key system: the map of its keys to scale, tables of keys, holes, "
				+ "cups and couplings, and the fingerings with the pads they close.")
final class SheetCommand implements Callable<Integer> {

	private static final char NAME_MARK = '#';

	@Parameters(paramLabel = "SYSTEM", description = "A .keys file; with several systems FILE#NAME.")
	private String system;

	@Mixin
	private PaperOptions paper;

	@Option(names = "--revision", paramLabel = "TEXT", description = "Printed in the head, as in --revision C.")
	private String revision;

	@Option(names = "--date", paramLabel = "TEXT", description = "Printed in the head; none is made up.")
	private String date;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		int mark = system.lastIndexOf(NAME_MARK);
		Path file = Path.of(mark < 0 ? system : system.substring(0, mark));
		LoadedShop shop = LoadedShop.around(file);
		KeySystem chosen = choose(shop, mark < 0 ? Optional.empty() : Optional.of(system.substring(mark + 1)));
		FindingLines.print(spec.commandLine().getErr(), shop.errors(shop.file()));
		LayoutSheet sheet = sheet(chosen, file);
		paper.write(chosen.getName() + "-key-layout", sheet.title(),
				new LayoutSheetPages(sheet, paper.paper()).pages(), spec.commandLine().getOut());
		return shop.errors(shop.file()).isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private static KeySystem choose(LoadedShop shop, Optional<String> name) {
		if (shop.chosen().size() != 1) {
			throw new InputException("name one .keys file; there are " + shop.chosen().size() + " files here");
		}
		Path file = shop.file();
		shop.shop().whyUnreadable(file).ifPresent(why -> {
			throw new InputException(file, why);
		});
		List<KeySystem> systems =
				shop.shop().document(file).<List<KeySystem>>map(Document::getSystems).orElse(List.of());
		List<KeySystem> meant =
				systems.stream().filter(each -> name.isEmpty() || name.get().equals(each.getName())).toList();
		if (meant.size() != 1) {
			throw new InputException(file, systems.isEmpty() ? "holds no key system"
					: "holds " + systems.stream().map(KeySystem::getName).collect(Collectors.joining(", "))
							+ "; name one behind the file, as in FILE#" + systems.get(0).getName());
		}
		return meant.get(0);
	}

	private LayoutSheet sheet(KeySystem chosen, Path file) {
		try {
			return SystemSheet.of(chosen, Optional.ofNullable(revision), Optional.ofNullable(date));
		} catch (CircularCouplingException circle) {
			throw new InputException(file, "cannot be drawn: " + circle.getMessage());
		} catch (IllegalArgumentException nothing) {
			throw new InputException(file, "has no key to draw; write key and its name");
		}
	}
}
