package padwright.commands;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Optional;

import padwright.language.edit.EstimateEdits;
import padwright.language.edit.PlanFile;
import padwright.paper.plan.PlanEstimateSheet;
import padwright.workup.money.EstimateDraft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws the estimate for the player, or drafts one. */
@Command(name = "estimate", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:the page was drawn, or the estimate drafted",
				"1:it was drawn, but the plan has errors; or something found has no price and is in no option of the draft",
				"2:the plan cannot be used, or has no estimate; or, with --draft, has one or nothing that has a price" },
		description = "Draws the estimate of a plan for the player, under the letterhead of the shop: what was found, each "
				+ "option with its lines, tax and total, and which one was agreed on. With --draft it prints an estimate instead, "
				+ "with options from what the inspection found: the pads that were not found sound, and all pads, at the prices of "
				+ "the stock and with the usual minutes of the plan's process at the rate of the letterhead.")
final class EstimateCommand extends PlayerPaper {

	@Option(names = "--draft", description = "Print options drafted from what was found.")
	private boolean draft;

	@Option(names = "--write", description = "With --draft, put them into the job of the plan.")
	private boolean write;

	@Option(names = "--on", paramLabel = "DATE", converter = Day.class,
			description = "With --draft, the day of the estimate, as in 2026-03-02 (default: today).")
	private LocalDate day;

	EstimateCommand() {
		super("estimate", PlanEstimateSheet::of);
	}

	@Override
	public Integer call() {
		if (write && !draft) {
			throw new InputException("--write goes with --draft");
		}
		return draft ? draft() : super.call();
	}

	private int draft() {
		PrintWriter err = spec.commandLine().getErr();
		LoadedShop shop = LoadedShop.around(file);
		EstimateDraft drafted = EstimateDraft.of(shop.plan());
		if (drafted.options().isEmpty()) {
			throw new InputException(ShownPath.of(shop.file()) + ": nothing in the plan has a price: write a price into the stock, or "
					+ "name a process in the job and a rate in the letterhead");
		}
		LocalDate today = Optional.ofNullable(day).orElseGet(LocalDate::now);
		spec.commandLine().getOut().println(EstimateEdits.text(drafted, today, ""));
		drafted.open().forEach(found -> err.println("in no option, since it has no price: " + found));
		if (write) {
			write(shop, drafted, today, err);
		}
		return drafted.open().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private static void write(LoadedShop shop, EstimateDraft drafted, LocalDate today, PrintWriter err) {
		if (EstimateEdits.isThere(shop.plan().plan())) {
			throw new InputException(ShownPath.of(shop.file()) + ": the plan has an estimate already; change that, or take it out");
		}
		try {
			PlanFile.Written result = PlanFile.write(Language.services(), shop.shop(), shop.file(),
					EstimateEdits.of(shop.plan().plan(), drafted, today));
			result.backup().ifPresent(backup -> err.println("wrote the estimate into " + ShownPath.of(shop.file())
					+ "; the old text is in " + ShownPath.of(backup)));
		} catch (IOException failed) {
			throw new InputException(shop.file(), "was not written: " + Reasons.of(failed));
		}
	}
}
